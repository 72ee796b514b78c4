/**
 * Bytes as the text of a page in windows-1252, where each is a letter of its own. Those that an element of a script
 * would not give back, or that would end it, stand behind a mark; `scripts/one-file.mjs` writes them.
 */

export const MARK = '=';
/** How far a byte behind the mark is from what it stands for. */
export const SHIFT = 64;

/**
 * @param {string} text
 * @returns {Uint8Array<ArrayBuffer>}
 */
export function bytesOf(text) {
  const letters = new TextDecoder('windows-1252').decode(Uint8Array.from({ length: 256 }, (_, byte) => byte));
  const bytes = new Uint8Array(0x10000);
  for (let byte = 0; byte < 256; byte += 1) bytes[letters.charCodeAt(byte)] = byte;
  const found = new Uint8Array(text.length);
  const mark = MARK.charCodeAt(0);
  let length = 0;
  for (let at = 0; at < text.length; at += 1, length += 1) {
    const letter = text.charCodeAt(at);
    found[length] = letter === mark ? text.charCodeAt((at += 1)) - SHIFT : /** @type {number} */ (bytes[letter]);
  }
  return found.subarray(0, length);
}
