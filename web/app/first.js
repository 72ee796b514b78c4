/** On which place the page opens where the address names none. */
import { ask } from './ask.js';

const DAY_MS = 86_400_000;

/**
 * How much, until there is a batch; Batches, where something of one is due within a day or waits to be weighed.
 * @param {import('./app.js').App} app
 * @returns {'how-much' | 'today'}
 */
export function opensOn(app) {
  const batches = app.shelf.open().map(([id, batch]) => ({ id, batch }));
  if (batches.length === 0) return 'how-much';
  const now = app.now();
  const { ok } = ask('next', { batches, now, settings: app.settings });
  // What the core cannot say is looked at where the batches are.
  if (!ok) return 'today';
  const soon = ok.jobs.some(({ due }) => due === null || due - now < DAY_MS);
  return soon || ok.batches.some(({ held }) => held) ? 'today' : 'how-much';
}
