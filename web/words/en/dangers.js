/** Words for the dangers that a text tells to do, each with its figure and the rule's. */
import { degrees as own } from '../degrees.js';

/** @typedef {import('../../app/types').Danger} Danger */

/** In the person's scale, to the tenth, of °F as they come: 71 °C is under 71.1 °C. @param {string | null} fahrenheit */
const degrees = (fahrenheit) =>
  fahrenheit === null ? '' : own(Math.round((Number(fahrenheit) - 32) / 0.18) / 10, Number(fahrenheit));

/** Stands in the notes of a recipe whose heat was raised. @param {Danger} danger */
export const heatRaised = ({ figure, rule }) =>
  `The text said ${degrees(figure)}: this meat needs ${degrees(rule)}, and the step says so.`;

/** @type {Record<import('../../app/types').DangerKey, (danger: Danger) => string>} */
export const DANGERS = {
  temperature_danger: ({ figure, rule }) =>
    `${degrees(figure)} for hours: germs grow above ${degrees(rule)}. Keep it colder, or do not eat it.`,
  botulism: () => 'Without air and without cold the botulism germ grows. Keep it cold, or freeze it.',
  cook_low: ({ figure, rule }) => `${degrees(figure)} is under ${degrees(rule)} for this meat. Cook it to that.`,
  cure_over: ({ figure, rule }) => `Up to ${figure} ppm, over the limit of ${rule}.`,
  cure_under: ({ figure, rule }) => `${figure} ppm: it needs ${rule}.`,
  two_agents: () => 'More than one cure in it: all of it counts.',
  pure_agent: () => 'Pure nitrite: one gram too much can poison. Use a cure mix with its % printed on the bag.',
  nitrate_present: () => 'Nitrate works slowly, and the rule names no minimum for it. Nitrite is not the same.',
  not_cooked: () => 'Nothing in it cooks the meat. Cook it through before anyone eats it.',
  parasite: () => 'This meat can hold parasites. Only heat is sure to kill them.',
  cold_smoke: ({ figure }) =>
    figure === null ? 'Cold smoke cooks nothing.' : `${degrees(figure)} is cold smoke: it cooks nothing.`,
  cure_unread: () => 'This may be a cure, and it is not counted.',
};

/** @type {Record<import('../../app/types').Tongue, string>} */
export const TONGUES = {
  english: '',
  german: 'This text is German. Some of it may be read wrongly. Check every line.',
  french: 'This text is French. Some of it may be read wrongly. Check every line.',
  other: 'This text is not English. Some of it may be read wrongly. Check every line.',
};
