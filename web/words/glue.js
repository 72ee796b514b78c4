/** Keeps a number and its unit on one line: `380 g` never breaks between the two. */

const SPACE = /(\d[½¼¾⅓⅔⅛]?) (?=(?:g|kg|mg|oz|lb|mm|cm|in|°C|°F|%|ppm|h|d|min|tsp|tbsp)\b|%|°)/g;

/** @param {string} text */
export function glue(text) {
  return text.replace(SPACE, '$1\u00a0');
}
