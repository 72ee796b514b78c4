/** The chill in words, and the published tables that nothing is judged by. */
import { inUnits } from '../degrees.js';
import { E } from './english.js';
import { say } from '../fact.js';
import { both } from './fire.js';
import { statusWords } from './names.js';

/** @typedef {import('../../app/types').ChillStage} ChillStage */

/** What follows where the chill was too slow, or nobody read it. The rule is that of the published options. */
export const LOST = `${E.throwAwayHead}. Heating it again does not undo it.`;
export const UNSEEN = `Read in time? Log it with the time it was read. If not, ${E.throwAway}: heating it again does not undo it.`;
/** What it is for, in one line. */
export const MISSED = `If missed: ${E.throwAway}.`;
/** How it is in time. */
export const IN_TIME = 'Heating it again does not undo it. One layer, no stacking, a fan or an ice bath.';

/** `57.2 °C to 21.1 °C in 2 h`, `21.1 °C to 5 °C, 6 h in all` @param {ChillStage} stage */
export const stageWords = ({ start, end, within, also }) => {
  const all = also?.is === 'in_all' && within === null ? `, ${also.within} in all` : '';
  return `${start.text} to ${end.text}${within === null ? all : ` in ${within}`}`;
};

/** @type {Record<import('../../app/types').Cooling, (stage: ChillStage) => string>} */
const WAYS = {
  food_code: () => 'Any cooked food',
  option1: () => 'Any meat, option 1',
  option2: () => 'Whole pieces, plant option 2',
  cured2021: () => 'Cured, with erythorbate or ascorbate',
  cured1999: () => 'Cured, as it was until 2022',
  salty_a: ({ brine }) => `Cured, salt in its water ${brine} %`,
  salty_b: ({ brine }) => `Cured, salt in its water ${brine} %`,
  salty_c: ({ activity }) => `Salt-cured, water activity ${activity}`,
};

/** @type {import('../fact.js').Words<import('../../app/types').ChillAlso>} */
const ALSO = {
  in_all: ({ within, from, to }) => `${within} in all, from ${from.text} to ${to.text}`,
  continuous: () => 'continuous cooling',
  soon: ({ minutes }) => `begins within ${minutes} min of the end of cooking`,
  no_pause: () => 'cooled on without a pause',
  outer_limit: () => 'an outer limit for plants',
  withdrawn: () => 'not accepted since 14 December 2022',
  no_linger: ({ from, to, over }) =>
    `a continuous drop, or a surface not between ${from.text} and ${to.text} for over ${over}`,
};

/** @param {ChillStage} stage */
const published = ({ source, status }) => `${source} (${statusWords(status)})`;

/** Which way to chill it is, what else must hold, and where it is published. @param {ChillStage} stage */
export const wayWords = (stage) =>
  `${WAYS[stage.of](stage)}. ${stage.also === null ? '' : `${say(ALSO, stage.also)}; `}${published(stage)}.`;

/** @type {import('../fact.js').Words<import('../../app/types').StageLeft>} */
const LEFT = {
  not_begun: () => 'not started',
  running: ({ left }) => `${left} left`,
  done: ({ took }) => `done in ${took}`,
  late: ({ least, most }) => `too slow: ${least} at least, ${most} allowed`,
  unseen: ({ took, most }) => `its time is over and no reading shows it was met: up to ${took}, ${most} allowed`,
};

/** Where a stage stands. @param {import('../../app/types').StageLeft} left */
export const leftWords = (left) => say(LEFT, left);

/** @param {Degrees} cooked @typedef {import('../../app/types').Degrees} Degrees */
const never = (cooked) =>
  `For pork from a farm only. Never enough for wild boar, bear, cougar or walrus, however long: their parasites live through frost, cure and smoke. Those are cooked to ${both(cooked)} everywhere.`;
const TRICHINAE =
  'Former 9 CFR 318.10, removed in 2018, guideline since (published); for wild meat CDC, MMWR 73(20), 2024 (published).';

/**
 * What each table is called, how it is taken, and where it is published.
 * @type {import('../fact.js').Words<import('../../app/types').PublishedAbout, { title: string, says: string, source: string }>}
 */
const ABOUT = {
  jerky: () => ({
    title: 'Jerky: heat first, then dry',
    says: 'Strips that are dried before they are hot keep alive what is on them. A moisture to protein ratio of 0.75 does not show that it was killed.',
    source:
      'USDA FSIS, jerky and food safety (published); the figure for vacuum packs from memory. Water activity is measured, not worked out.',
  }),
  vacuum: ({ grows }) => ({
    title: 'Vacuum packs',
    says: `Some clostridia grow without air from ${both(grows)} on, with no smell. Hot-smoked and cured birds do not keep on a shelf.`,
    source: 'Non-proteolytic Clostridium botulinum (published).',
  }),
  plants: () => ({
    title: 'Chilling: options for plants',
    says: 'Nothing here is judged by these: they need a measurement or a watch that a home does not have.',
    source: 'FSIS Stabilization Guideline 2021 and Directive 7110.3; each row says how far it is published.',
  }),
  history: () => ({
    title: 'Chilling cured meat: withdrawn',
    says: 'History: FSIS stopped accepting it on 14 December 2022. Older books and pages still have it. Nothing here is judged by it.',
    source: '86 FR 71007 (14 December 2021) and FSIS Notice 66-22 (published).',
  }),
  trichinae_heat: ({ cooked }) => ({ title: 'Trichinae by heat', says: never(cooked), source: TRICHINAE }),
  trichinae_frost: ({ cooked }) => ({ title: 'Trichinae by frost', says: never(cooked), source: TRICHINAE }),
};

/** @param {import('../../app/types').Published} table */
export const aboutWords = ({ about }) => say(ABOUT, about);

/** @type {Record<import('../../app/types').Frozen, () => string>} */
const PIECES = {
  to6_in: () => `up to ${inUnits('152 mm', '6 in')} thick`,
  to27_in: () => inUnits('152 to 685 mm thick', '6 to 27 in thick'),
  middle: () => 'read in its middle',
};

/** @type {import('../fact.js').Words<import('../../app/types').PublishedRow, [string, string]>} */
const ROWS = {
  heat_meat: ({ to }) => ['Heat meat to', to.text],
  heat_birds: ({ to }) => ['Heat birds to', to.text],
  dry: ({ from, to }) => ['Then dry between', `${from.text} and ${to.text}`],
  activity: ({ air, vacuum }) => ['Water activity at most', `${air}; vacuum-packed ${vacuum}`],
  keep_cold: ({ at }) => ['Keep at or below', at.text],
  keep_frozen: () => ['Or', 'frozen; open the pack before it thaws'],
  chill: ({ stage }) => {
    const parts = [
      stageWords(stage),
      stage.also && say(ALSO, stage.also),
      stage.nitrite !== null && `${stage.nitrite} ppm of nitrite or more`,
      stage.erythorbate !== null && `${stage.erythorbate} ppm of erythorbate or ascorbate or more`,
    ];
    return [WAYS[stage.of](stage), `${parts.filter(Boolean).join('; ')}. ${published(stage)}`];
  },
  heat: ({ at, held }) => [at.text, held ?? 'at once'],
  frost: ({ at, piece, held }) => [`${at.text}, ${PIECES[piece]()}`, held],
};

/** A row: what, and the figure. @param {import('../../app/types').PublishedRow} row */
export const rowWords = (row) => say(ROWS, row);
