/** Steps of a recipe in words, and what begins and turns a batch by its method. */

/** @typedef {import('../../app/types').Told} Told */
/** @typedef {import('../../app/types').Method} Method */

/** A step as a job. @type {Record<import('../../app/types').Do, string>} */
export const STEPS = {
  cure: 'Keep cold in the cure',
  rinse: 'Rinse off the cure',
  soak: 'Soak in cold water',
  dry: 'Dry uncovered until tacky',
  smoke: 'Smoke',
  cook: 'Cook through',
  dry_out: 'Dry out',
  rest: 'Rest off the heat',
  chill: 'Chill',
  pack: 'Pack and label',
};

/** The same while it is done, or once it is. @type {Record<import('../../app/types').Do, string>} */
export const DOING = {
  cure: 'In the cure',
  rinse: 'Rinsed',
  soak: 'Soaking',
  dry: 'Drying until tacky',
  smoke: 'In the smoke',
  cook: 'Cooking through',
  dry_out: 'Drying out',
  rest: 'Resting',
  chill: 'Chilling',
  pack: 'Packed',
};

/** `36 h at 3 °C, turned every 12 h.` and the note behind it. @param {Told} step */
export function stepText({ lasts, at, turn_every, until, note }) {
  const parts = [
    [lasts, at && `at ${at}`].filter(Boolean).join(' '),
    turn_every && `turned every ${turn_every}`,
    until && `until the coldest piece reads ${until}`,
  ];
  const text = parts.filter(Boolean).join(', ');
  return [text && `${text.charAt(0).toUpperCase()}${text.slice(1)}.`, note].filter(Boolean).join(' ');
}

const UNDER = 'All is weighed. The clock starts when the meat is under.';

/** What starts the clock: its heading, and how. @type {Record<Method, [string, string]>} */
export const STARTS = {
  rub: ['Rub it in', 'All is weighed. The clock starts when the rub is on.'],
  cover_brine: ['Put the meat in the brine', UNDER],
  ground: ['Mix it in', 'All is weighed. The clock starts when it is mixed in.'],
  pick_up: ['Put the meat in the brine', UNDER],
  pumped: ['Inject it', 'All is weighed. The clock starts when the brine is in.'],
  pumped_and_covered: ['Inject it, then cover it', UNDER],
};

/** @type {[string, string]} */
const IN_BRINE = ['Turn the pieces in the brine', 'Stir, and see that every piece is under.'];

/** The turning job: its heading, and how. @type {Record<Method, [string, string]>} */
export const TURNS = {
  rub: ['Turn the pieces', 'Rub the liquid over them again and look for leaks.'],
  cover_brine: IN_BRINE,
  ground: ['Mix it once more', 'Cold hands, cold meat.'],
  pick_up: IN_BRINE,
  pumped: ['Turn the pieces', 'Look for leaks, and that the liquid reaches all of it.'],
  pumped_and_covered: IN_BRINE,
};
