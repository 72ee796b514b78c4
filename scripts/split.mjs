// Splits the core in two that answer as one: what a first visit asks (first-questions.mjs), and the rest. Both number
// their functions alike. For a function of the other that is called, each has one that calls it through the table of
// functions; the rest puts its own there when it comes. What nothing calls is left to wasm-opt to take away.
// `node scripts/split.mjs core.wasm glue.js first.wasm rest.wasm`
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { askAll } from './first-questions.mjs';
import { bodiesOf, file, leb, list, number, section, sectionsOf, signed, text } from './wasm.mjs';

const [TYPES, IMPORTS, FUNCTIONS, TABLES, MEMORY, GLOBALS, EXPORTS, ELEMENTS, CODE] = [1, 2, 3, 4, 5, 6, 7, 9, 10];
/** What an import or an export is. */
const IS = { function: 0, table: 1, memory: 2, global: 3 };
const [GET, CONSTANT, STORE, CALL_INDIRECT, UNREACHABLE, END] = [0x20, 0x41, 0x3a, 0x11, 0x00, 0x0b];
/** Under which name the rest asks for what both have. */
const FIRST = 'first';

const [from, glue, first, rest] = process.argv.slice(2);
const wasm = readFileSync(from);
const sections = new Map(
  sectionsOf(wasm)
    .filter(({ id }) => id !== 0)
    .map(({ id, from, to }) => [id, wasm.subarray(from, to)]),
);
const bodies = bodiesOf(sections.get(CODE), { from: 0 });
const takes = items(TYPES, parameters);
const typeOf = items(FUNCTIONS, (at) => leb(sections.get(FUNCTIONS), at));
const imports = items(IMPORTS, importedType);
const tables = items(TABLES, (at) => limited(TABLES, at, at + 1));
const [memory] = items(MEMORY, (at) => limited(MEMORY, at, at));
const globals = items(GLOBALS, globalType);
const [inTable] = items(ELEMENTS, elementsAt);

const isFirst = await asked();
const calls = callsOf();
// The functions of either part that the other calls, each with its place in the table of functions.
const callsFrom = (part) => calls.filter((_, caller) => isFirst[caller] === part).flat();
const ofFirst = unique(callsFrom(false)).filter((which) => isFirst[which]);
const ofRest = unique([...callsFrom(true), ...inTable]).filter((which) => !isFirst[which]);
const least = leb(tables[0], 2)[0];
const places = new Map([...ofFirst, ...ofRest].map((which, at) => [which, least + at]));
tables[0] = [tables[0][0], 0, ...number(least + places.size)];

writeFileSync(first, firstPart());
writeFileSync(rest, restPart());

function firstPart() {
  const shared = [
    ...imports.map((_, which) => [...text(`f${which}`), IS.function, ...number(which)]),
    ...tables.map((_, which) => [...text(`t${which}`), IS.table, ...number(which)]),
    ...globals.map((_, which) => [...text(`g${which}`), IS.global, ...number(which)]),
  ];
  const changed = new Map([
    [TABLES, list(tables)],
    [EXPORTS, added(EXPORTS, shared)],
    [ELEMENTS, added(ELEMENTS, [elements(least, ofFirst)])],
    [CODE, codeOf(true)],
  ]);
  return file([...sections].map(([id, content]) => section(id, changed.get(id) ?? content)));
}

function restPart() {
  const shared = (name, kind, type) => [...text(FIRST), ...text(name), kind, ...type];
  const all = [
    ...imports.map((type, which) => shared(`f${which}`, IS.function, number(type))),
    ...tables.map((type, which) => shared(`t${which}`, IS.table, type)),
    shared('memory', IS.memory, memory),
    ...globals.map((type, which) => shared(`g${which}`, IS.global, type)),
  ];
  return file([
    section(TYPES, sections.get(TYPES)),
    section(IMPORTS, list(all)),
    section(FUNCTIONS, sections.get(FUNCTIONS)),
    section(ELEMENTS, list([elements(least + ofFirst.length, ofRest)])),
    section(CODE, codeOf(false)),
  ]);
}

/** The functions of one part, and in the places of the others what stands in for them. */
function codeOf(part) {
  return list(bodies.map((body, which) => sized(isFirst[which] === part ? body : standIn(which))));
}

/** Calls the function that is at its place in the table by then. What is never called has no place there. */
function standIn(which) {
  if (!places.has(which)) return [0, UNREACHABLE, END];
  const given = Array.from({ length: takes[typeOf[which]] }, (_, at) => [GET, ...number(at)]).flat();
  return [0, ...given, CONSTANT, ...signed(places.get(which)), CALL_INDIRECT, ...number(typeOf[which]), 0, END];
}

function sized(body) {
  return Buffer.concat([Buffer.from(number(body.length)), Buffer.from(body)]);
}

/** Functions from this place of the table on. */
function elements(place, functions) {
  return [0, CONSTANT, ...signed(place), END, ...list(functions.map((which) => number(imports.length + which)))];
}

/** Whether each function was called while all that a first visit asks was asked: each then leaves a mark in the memory,
 * at the far end of the stack, where nothing else comes. */
async function asked() {
  const marked = bodies.map((body, which) => {
    const at = behindLocals(body);
    const mark = Buffer.from([CONSTANT, ...signed(which), CONSTANT, 1, STORE, 0, 0]);
    return sized(Buffer.concat([body.subarray(0, at), mark, body.subarray(at)]));
  });
  const traced = file([...sections].map(([id, content]) => section(id, id === CODE ? list(marked) : content)));
  const { default: init, reckon } = await import(pathToFileURL(resolve(glue)));
  const { memory } = await init({ module_or_path: traced });
  askAll(reckon);
  return Array.from(new Uint8Array(memory.buffer, 0, bodies.length), (mark) => mark === 1);
}

/** The functions that each calls, by their places among those that are not imported. */
function callsOf() {
  const tool = fileURLToPath(new URL('../web/node_modules/.bin/wasm-dis', import.meta.url));
  const written = execFileSync(tool, [from], { encoding: 'utf8', maxBuffer: 2 ** 30 });
  const [, ...functions] = written.split(/^ \(func \$/m);
  return functions.map((one) => unique([...one.matchAll(/\(call \$(\d+)/g)].map(([, which]) => Number(which))));
}

function behindLocals(body) {
  let [groups, at] = leb(body, 0);
  for (; groups > 0; groups -= 1) at = leb(body, at)[1] + 1;
  return at;
}

/** What stands in a section: each is read from where it begins, and says where the next does. */
function items(id, read) {
  let [count, at] = leb(sections.get(id), 0);
  return Array.from({ length: count }, () => {
    const [item, next] = read(at);
    at = next;
    return item;
  });
}

/** The content of a section with more at its end. */
function added(id, more) {
  const [count, at] = leb(sections.get(id), 0);
  return Buffer.concat([
    Buffer.from(number(count + more.length)),
    sections.get(id).subarray(at),
    ...more.map((one) => Buffer.from(one)),
  ]);
}

/** How many parameters a function of a type takes. */
function parameters(at) {
  const [count, behind] = leb(sections.get(TYPES), at + 1);
  const [results, end] = leb(sections.get(TYPES), behind + count);
  return [count, end + results];
}

function importedType(at) {
  const bytes = sections.get(IMPORTS);
  for (let names = 0; names < 2; names += 1) {
    const [length, behind] = leb(bytes, at);
    at = behind + length;
  }
  if (bytes[at] !== IS.function) throw new Error('The core imports functions alone.');
  return leb(bytes, at + 1);
}

/** What has a least size, and perhaps a most: its bytes. */
function limited(id, at, limits) {
  const bytes = sections.get(id);
  let end = leb(bytes, limits + 1)[1];
  if (bytes[limits] & 1) [, end] = leb(bytes, end);
  return [[...bytes.subarray(at, end)], end];
}

function globalType(at) {
  const bytes = sections.get(GLOBALS);
  if (bytes[at + 2] !== CONSTANT) throw new Error('A global of the core begins as a constant.');
  return [[...bytes.subarray(at, at + 2)], leb(bytes, at + 3)[1] + 1];
}

function elementsAt(at) {
  const bytes = sections.get(ELEMENTS);
  if (bytes[at] !== 0) throw new Error('The core has one list of functions for its table.');
  const content = leb(bytes, at + 2)[1] + 1;
  let [count, next] = leb(bytes, content);
  const functions = Array.from({ length: count }, () => {
    const [which, behind] = leb(bytes, next);
    next = behind;
    return which - imports.length;
  });
  return [functions, next];
}

function unique(all) {
  return [...new Set(all)].sort((a, b) => a - b);
}
