/** Keeps a number and its unit on one line: `380 g` and `3 lb 4 oz` never break. */

const SPACE = /(\d[½¼¾⅓⅔⅛]?) (?=(?:g|kg|mg|oz|lb|mm|cm|in|°C|°F|%|ppm|h|d|min|tsp|tbsp)\b|%|°)|(?<=\blb) (?=\d)/g;

/** @param {string} text */
export function glue(text) {
  return text.replace(SPACE, (_, number = '') => `${number}\u00a0`);
}
