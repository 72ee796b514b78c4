/** What came out of a batch, for next time; and what was noted last time. */
import { html, nothing } from 'lit-html';
import { field } from './field.js';
import { Form } from './form.js';
import { fullDate } from '../../words/time.js';
import { CAME_OUT, LAST } from '../../words/en/packing.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').CameOut} CameOut */

/** @param {App} app @param {string} id */
export function outcome(app, id) {
  const form = new Form('after', `after.${id}`);

  /** @param {keyof CameOut} key */
  const left = (key) => async () => {
    if (!form.typed.includes(key)) return;
    let text = form.text(key).trim();
    if (key === 'out' && text) {
      const read = form.read([{ key, label: CAME_OUT.weight, kind: 'mass', unit: 'g' }], app.settings.units);
      if (!read) return app.draw();
      text = read[key] ?? '';
    }
    const batch = app.shelf.batches.get(id);
    if (!batch) return;
    const put = (/** @type {string} */ now) => (/** @type {Batch} */ one) => ({
      ...one,
      after: { ...one.after, [key]: now || undefined },
    });
    // What stood there when the typing began: what another tab writes meanwhile is kept beside it.
    const seen = put(form.text(`${key}-was`))(batch);
    if (await app.act(() => app.shelf.changeBatch(id, put(text), seen)))
      [key, `${key}-was`].forEach((one) => form.drop(one));
    app.draw();
  };

  /** @param {keyof CameOut} key */
  const typed = (key) => () => {
    if (!form.typed.includes(`${key}-was`)) form.type(`${key}-was`, app.shelf.batches.get(id)?.after?.[key] ?? '');
    app.draw();
  };

  /** @param {Batch} batch */
  return ({ after }) => {
    const words = (/** @type {'cut' | 'taste' | 'change'} */ key, /** @type {string} */ label, hint = '') =>
      field(
        form,
        { key, label, hint, stored: after?.[key], look: 'words', optional: true },
        { typed: typed(key), left: left(key) },
      );
    return html`<details class="block noprint" ?open=${Boolean(after)}>
      <summary>${CAME_OUT.head}</summary>
      ${field(
        form,
        {
          key: 'out',
          label: CAME_OUT.weight,
          unit: 'g',
          stored: after?.out ?? '',
          look: 'small',
          optional: true,
        },
        { typed: typed('out'), left: left('out') },
      )}
      ${words('cut', CAME_OUT.cut)} ${words('taste', CAME_OUT.taste)}
      ${words('change', CAME_OUT.change, CAME_OUT.changeHint)}
    </details>`;
  };
}

/**
 * What was noted with the batch before this one of the same recipe.
 * @param {App} app
 * @param {string} id
 * @param {Batch} batch
 */
export function lastTime(app, id, batch) {
  const before = [...app.shelf.batches].filter(
    ([other, one]) => other < id && one.recipe.name === batch.recipe.name && one.after,
  );
  const [, last] = before.sort(([a], [b]) => (a < b ? 1 : -1))[0] ?? [];
  if (!last?.after) return nothing;
  const { change, taste, cut, out } = last.after;
  const when = last.ticks.find(({ of }) => of === 'rub')?.at;
  const said = [out && LAST.out(out), taste && LAST.taste(taste), cut && LAST.cut(cut)].filter(Boolean).join(' ');
  return html`<aside class="caution last-time" aria-label=${LAST.label}>
    <b>${LAST.head(when ? fullDate(when) : undefined)}</b>${change ? html`<br />${LAST.change(change)}` : nothing}${
      said ? html`<br />${said}` : nothing
    }
  </aside>`;
}
