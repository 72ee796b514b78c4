/** Words for what the record of the fire shows. */

/** @typedef {import('../types').Demand} Demand */

/** Who asks for what has to be read. @type {Record<Demand, string>} */
export const ASKED = {
  consumer: 'The consumer temperature.',
  choice: 'Chosen for whole cuts, with nobody at risk: 3 minutes of rest at least before it is cut.',
  jerky: 'Strips are that hot before they are dried. USDA FSIS, Jerky and Food Safety (published).',
  recipe: 'The recipe asks for more than the rule.',
};
