// Bytes inside a page of windows-1252, in which nearly each is a letter that a browser gives back as it is: the single file
// grows by a hundredth so, and by a third as base64. web/app/latin.js reads them.
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { MARK, SHIFT } from '../web/app/latin.js';

const { compress } = createRequire(fileURLToPath(new URL('../web/package.json', import.meta.url)))('lzma1');
const BEST = 9;

/** Packs parts behind each other, for web/app/unpack.js, and says where each but the last ends. */
export function packed(parts) {
  const ends = parts.slice(0, -1).map((_, at) => parts.slice(0, at + 1).reduce((sum, part) => sum + part.length, 0));
  return { ends, bytes: latin(compress(Buffer.concat(parts), BEST)) };
}

/** Bytes as they may stand inside an element of a script. */
export function latin(bytes) {
  const mark = MARK.charCodeAt(0);
  const [open, ...next] = Buffer.from('</!');
  // A browser replaces nothing by a sign for what is broken, and makes one line end of each kind.
  const unkept = new Set([0, 0x0d, mark]);
  return Buffer.from(
    Array.from(bytes, (byte, at) =>
      // `</script` ends the element, `<!--` makes another sort of text of it.
      unkept.has(byte) || (byte === open && next.includes(bytes[at + 1])) ? [mark, (byte + SHIFT) & 0xff] : [byte],
    ).flat(),
  );
}
