/** What is known of a dose before anything is typed: of its batch, or of what stands on the first screen. */
import { ask } from '../ask.js';
import { Form } from './form.js';
import { HOW_MUCH, USUAL_NITRITE, bare, weightText } from './weight-field.js';
import { cutName } from '../../words/en/cuts.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Method} Method */
/** @typedef {import('../types').Eaten} Eaten */

/**
 * What is known of the meat and the cure: of the batch, or of what stands on the first screen.
 * @param {App} app
 * @param {string} id
 * @returns {{ green?: string, nitrite?: string, cut?: string, method?: Method, eaten?: Eaten, name?: string }} name: of the batch
 */
export function knownOf(app, id) {
  const batch = app.shelf.batches.get(id);
  if (batch) {
    const sheet = batch.pieces.length ? ask('pieces', { pieces: batch.pieces, settings: app.settings }).ok : undefined;
    const green = sheet?.weighed ? sheet.green.text : undefined;
    const cuts = new Set(batch.pieces.map(({ cut }) => cut));
    const [cut] = cuts.size === 1 ? cuts : [];
    const nitrite = batch.recipe.cures[0]?.nitrite.replace(/\s*%$/, '');
    const { method, eaten } = batch.recipe;
    return {
      method,
      eaten,
      ...(green && { green }),
      ...(nitrite && { nitrite }),
      ...(cutName(cut) && { cut }),
      name: batch.name,
    };
  }
  const first = new Form('f', HOW_MUCH);
  const units = /** @type {'us' | 'metric'} */ (first.text('units', app.settings.units));
  const typed = weightText(first, units);
  if (!typed) return {};
  const green = units === 'metric' && bare(typed) ? `${typed} g` : typed;
  const cut = cutName(first.text('cut')) ? first.text('cut') : undefined;
  const nitrite = first.text('nitrite', USUAL_NITRITE);
  return { green, nitrite, ...(cut && { cut }) };
}
