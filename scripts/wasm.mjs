// What a WebAssembly file is made of: its sections, the bodies of its functions, numbers of variable length.

/** A number of variable length, and where the next thing begins. */
export function leb(bytes, at) {
  let value = 0;
  for (let shift = 0; ; shift += 7) {
    const byte = bytes[at++];
    value += (byte & 127) * 2 ** shift;
    if (byte < 128) return [value, at];
  }
}

/** The same written. */
export function number(value) {
  const bytes = [];
  for (; value > 127; value >>>= 7) bytes.push((value & 127) | 128);
  return [...bytes, value];
}

/** The same with a sign, as constants have it. */
export function signed(value) {
  const bytes = [];
  for (; value < -64 || value > 63; value >>= 7) bytes.push((value & 127) | 128);
  return [...bytes, value & 127];
}

export function text(letters) {
  const bytes = Buffer.from(letters);
  return [...number(bytes.length), ...bytes];
}

/** Every section: what it is, and from where to where its content lies. */
export function sectionsOf(wasm) {
  const sections = [];
  for (let at = 8; at < wasm.length;) {
    const [size, from] = leb(wasm, at + 1);
    sections.push({ id: wasm[at], from, to: from + size });
    at = from + size;
  }
  return sections;
}

/** The functions, each without its length. @param {{ from: number }} code the section of them */
export function bodiesOf(wasm, { from }) {
  let [count, at] = leb(wasm, from);
  return Array.from({ length: count }, () => {
    const [size, inside] = leb(wasm, at);
    at = inside + size;
    return wasm.subarray(inside, at);
  });
}

/** How many functions are imported: they are numbered first. */
export function importedBy(wasm) {
  const imports = WebAssembly.Module.imports(new WebAssembly.Module(wasm));
  return imports.filter(({ kind }) => kind === 'function').length;
}

/** A section of this content. @param {Iterable<number>} content */
export function section(id, content) {
  const bytes = Buffer.from(content);
  return Buffer.concat([Buffer.from([id, ...number(bytes.length)]), bytes]);
}

/** A list as it stands in a section: how many, and one after the other. @param {Iterable<number>[]} items */
export function list(items) {
  return Buffer.concat([Buffer.from(number(items.length)), ...items.map((item) => Buffer.from(item))]);
}

/** A file of these sections. @param {Buffer[]} sections */
export function file(sections) {
  return Buffer.concat([Buffer.from([0, 0x61, 0x73, 0x6d, 1, 0, 0, 0]), ...sections]);
}
