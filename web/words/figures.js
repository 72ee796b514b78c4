/** Figures in a text that runs right to left: a range, a sign and a unit keep their order only where they are set apart. */

const NUMBER = '[−+-]?(?:\\d+(?:[.,:/\u202f]\\d+)*[½¼¾⅓⅔⅛]?|[½¼¾⅓⅔⅛])';
const UNIT = '°[CF]?|%|(?:kg|mg|g|oz|lb|mm|cm²|cm|in|ppm|h|d|min|ml|l|tsp|tbsp)(?!\\p{L})';
/** `3.5 g`, `2–4 °C`, `−10`, `10 000`, `36 to` without its word. What stands within a code or an address is none. */
const FIGURE = new RegExp(
  `(?<![\\p{L}\\d#/.:_\u2066-])${NUMBER}(?:[ \u00a0]?[–−-][ \u00a0]?${NUMBER})*(?:[ \u00a0]?(?:${UNIT}))?`,
  'gu',
);

/**
 * What stands between the figures of a text as `between` says it, the figures as `figure` does.
 * @param {string} text
 * @param {(part: string) => string} between
 * @param {(part: string) => string} figure
 */
export function around(text, between, figure) {
  let at = 0;
  let out = '';
  for (const { 0: found, index } of text.matchAll(FIGURE)) {
    out += between(text.slice(at, index)) + figure(found);
    at = index + found.length;
  }
  return out + between(text.slice(at));
}

/** Each figure set apart, left to right. @param {string} text */
export const isolated = (text) =>
  around(
    text,
    (part) => part,
    (figure) => `\u2066${figure}\u2069`,
  );
