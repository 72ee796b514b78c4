/** A dose as it is drawn and judged: between too little and over, and what stands below. */
import { html } from 'lit-html';

/** The marks of the axis. */
export const MARKS = {
  /** @param {number} ppm */
  least: (ppm) => `Needs ${ppm}`,
  /** @param {number} ppm */
  limit: (ppm) => `Limit ${ppm}`,
  /** @param {number} ppm */
  end: (ppm) => `${ppm} ppm`,
  tooLittle: 'too little',
  over: 'too much',
  unit: 'ppm',
};

/**
 * The picture for who does not see it.
 * @param {string} basis what is counted on what
 * @param {import('../../app/types').Verdict} verdict
 * @param {import('../../app/types').Ppm} ppm
 */
export const picture = (basis, { least, limit }, { low, typical, high }) =>
  `${basis}: ${low} to ${high} ppm, usually ${typical}. Needs ${least}, limit ${limit} ppm.`;

/** @param {import('../../app/types').Ppm} ppm */
export const nitrateIn = ({ low, high }) => html`Nitrate going in: <b class="nowrap">${low} – ${high} ppm</b>`;

export const NEXT = 'What to do next';
export const CARE = 'Take care';
