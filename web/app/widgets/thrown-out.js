/** A batch that was thrown out: it is put away, and nothing is assured of it any more. */
import { thrownOut as says } from '../../words/en/batches.js';

/**
 * Resolves to true once it is kept so.
 * @param {import('../app.js').App} app
 * @param {string} id
 * @param {string} [why] what happened, for its remarks
 */
export function thrownOut(app, id, why = '') {
  const work = () =>
    app.shelf.changeBatch(id, (one) => ({
      ...one,
      thrown_out: app.now(),
      closed: true,
      ...(why && { notes: [one.notes, why].filter(Boolean).join('\n') }),
    }));
  return app.act(work, { says: says(app.shelf.batches.get(id)?.name) });
}

/** Takes it up again, thrown out or not. @param {import('../types').Batch} batch */
export function takenUp({ thrown_out: _, ...batch }) {
  return { ...batch, closed: false };
}
