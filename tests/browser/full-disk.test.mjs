// A disk that is full in earnest, under a browser that has begun: what was told as kept is there when the browser is
// killed and opened anew, and what was held is written once there is room. `TIMES=20 SEED=7` in front is the long run.
// It needs the right to mount a small file system in memory; where nobody has it, it is skipped.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import {
  appendFileSync,
  closeSync,
  mkdirSync,
  openSync,
  readFileSync,
  readdirSync,
  rmSync,
  truncateSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { barePage } from './bare.mjs';
import { chance } from './chance.mjs';
import { cutPower, open, pause, scratch, visit } from './harness.mjs';

const TIMES = Number(process.env.TIMES ?? 2);
const SEED = Number(process.env.SEED ?? 1);
/** What a fresh profile takes, and as much again. */
const ROOM = '96m';

test(`${TIMES} times the disk is full: nothing that was told as kept is lost (seed ${SEED})`, async (t) => {
  const address = (await barePage(t))['from a host'];
  const disk = scratch(t);
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${ROOM}`, 'tmpfs', disk], { stdio: 'ignore' });
  } catch {
    return t.skip('no right to mount');
  }
  const dice = chance(SEED);
  const told = { kept: 0, held: 0, killed: 0, freed: 0, kinds: {} };
  try {
    for (let n = 0; n < TIMES; n++) await once(t, { n, dice, disk, address, told });
  } finally {
    execFileSync('umount', ['-l', disk]);
  }
  const { kept, held, killed, freed, kinds } = told;
  t.diagnostic(
    `${TIMES} times full, told as ${JSON.stringify(kinds)}: ${kept} changes told as kept, ${held} held, ` +
      `${killed} times killed while full, ${freed} times given room, 0 lost`,
  );
  assert.equal(
    Object.values(kinds).reduce((sum, times) => sum + times, 0),
    TIMES,
    'each time it was told',
  );
});

test('half an entry at the end of the log, as a dead battery leaves it, costs nothing at the next two starts', async (t) => {
  const address = (await barePage(t))['from a host'];
  const profile = scratch(t);
  const kept = [];
  for (const line of ['first', 'second', 'third', 'last']) {
    const context = await open(t, { profile });
    const page = await begun(context, address);
    assert.deepEqual(await page.evaluate(lines), kept.toSorted(), `before the ${line}`);
    assert.equal(await page.evaluate(add, [line, 100]), null);
    kept.push(line);
    await cutPower(context, profile);
    if (line !== 'first') continue;
    const all = join(profile, 'Default/IndexedDB');
    const log = join(
      all,
      readdirSync(all, { recursive: true }).find((name) => name.endsWith('.log')),
    );
    appendFileSync(log, readFileSync(log).subarray(0, 20));
  }
});

async function once(t, { n, dice, disk, address, told }) {
  const profile = join(disk, `profile-${n}`);
  mkdirSync(profile);
  let context = await open(t, { profile });
  let page = await begun(context, address);
  const kept = [];
  const held = [];
  /** One more line in the record, with so much text that the disk cannot but notice. */
  const change = async (line, long) => {
    const trouble = await page.evaluate(add, [line, long]);
    (trouble === null ? kept : held).push(line);
    return trouble;
  };
  for (let line = 0; line < 3; line++) await change(`before-${line}`, 100);
  assert.equal(held.length, 0, 'there was room');

  fill(join(disk, 'filler'), dice.below(200_000));
  let trouble = null;
  for (let line = 0; line < 60 && trouble === null; line++)
    trouble = await change(`full-${line}`, dice.one([100, 20_000, 200_000]));
  assert.ok(trouble, 'a full disk is told');
  told.kinds[trouble] = (told.kinds[trouble] ?? 0) + 1;
  for (let line = 0; line < 3; line++) await change(`after-${line}`, 100);
  // What the page shows has all of it, and so has the file.
  assert.deepEqual(await page.evaluate(lines), [...kept, ...held].sort());
  assert.deepEqual(await page.evaluate(inFile), [...kept, ...held].sort());

  const isKilled = n % 2 === 0;
  if (isKilled) {
    told.killed++;
    await cutPower(context, profile);
    rmSync(join(disk, 'filler'));
  } else {
    told.freed++;
    rmSync(join(disk, 'filler'));
    for (let tries = 0; (await page.evaluate(() => store.retry())) !== null; tries++) {
      assert.ok(tries < 120, 'it is written once there is room');
      await pause(500);
    }
    await cutPower(context, profile);
  }
  context = await open(t, { profile });
  page = await begun(context, address);
  // What a full disk has left half written may come out only at the start after the next one.
  const must = isKilled ? kept : [...kept, ...held];
  for (const again of ['once', 'twice', '']) {
    const found = await page.evaluate(lines);
    assert.deepEqual(
      must.filter((line) => !found.includes(line)),
      [],
      `lost at ${n}, of ${must.length}, before ${again}`,
    );
    if (!again) break;
    await page.evaluate(add, [again, 100]);
    must.push(again);
    await cutPower(context, profile);
    context = await open(t, { profile });
    page = await begun(context, address);
  }
  told.kept += kept.length;
  told.held += held.length;
  await context.close();
  rmSync(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 100 });
}

async function begun(context, address) {
  const page = await visit(context, address);
  // As the page does it, all of it is read at the start.
  await page.evaluate(async () => {
    window.store = await openStore();
    await store.all('');
  });
  return page;
}

/** In the page: adds a line; says what trouble there is. */
async function add([line, long]) {
  const text = Array.from({ length: long }, () => String.fromCharCode(97 + Math.random() * 26)).join('');
  await store.change('batch/one', (data) => ({ lines: { ...data?.lines, [line]: text } }));
  return store.trouble?.kind ?? null;
}

/** In the page: the lines that it shows. */
async function lines() {
  return Object.keys((await store.get('batch/one'))?.lines ?? {}).sort();
}

/** In the page: the lines that the file has. */
async function inFile() {
  const { records } = JSON.parse((await backup.exportAll(store)).text);
  return Object.keys(records.find(({ key }) => key === 'batch/one').data.lines).sort();
}

/** Takes all the room but so many bytes. */
function fill(name, left) {
  const file = openSync(name, 'w');
  let full = 0;
  for (const size of [1 << 20, 4096]) {
    const block = Buffer.alloc(size, 7);
    try {
      for (;;) full += writeSync(file, block);
    } catch (error) {
      if (error.code !== 'ENOSPC') throw error;
    }
  }
  closeSync(file);
  if (left > 0) truncateSync(name, Math.max(0, full - left));
}
