/** Name, tag, day of the kill and remarks of a batch; putting it away and deleting it. */
import { html, nothing } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { ask } from '../ask.js';
import { field } from './field.js';
import { Form } from './form.js';
import { takenUp } from './thrown-out.js';
import { ABOUT } from '../../words/en/batches.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */

/** @param {App} app @param {string} id */
export function aboutBatch(app, id) {
  const form = new Form('about', `about.${id}`);
  const begun = form.typed.length > 0;

  /** @param {Partial<Batch>} part */
  const change = (part) => app.act(() => app.shelf.changeBatch(id, (batch) => ({ ...batch, ...part })));

  /**
   * @param {'name' | 'tag'} key
   * @param {(what: string) => string} says what is wrong
   */
  const left = (key, says) => async () => {
    const stored = app.shelf.batches.get(id)?.[key];
    const batch = app.shelf.batches.get(id);
    if (!batch) return;
    const now = form.text(key, stored).trim();
    const part = { [key]: key === 'tag' ? now.toUpperCase() : now };
    const { problems } = ask('check', { batch: { ...batch, ...part } });
    if (problems) form.mark(problems.map((one) => ({ ...one, field: key, message: says(one.message) })));
    else if (await change(part)) form.drop(key);
    app.draw();
  };

  // What stood there when the typing began: what another tab writes meanwhile is kept beside it.
  const typed = (/** @type {string} */ text) => {
    if (!form.typed.includes('notes')) form.type('notes-were', app.shelf.batches.get(id)?.notes ?? '');
    form.type('notes', text);
  };
  const noted = async () => {
    const batch = app.shelf.batches.get(id);
    if (!batch || !form.typed.includes('notes')) return;
    const [notes, were] = [form.text('notes'), form.text('notes-were')];
    const work = () => app.shelf.changeBatch(id, (one) => ({ ...one, notes }), { ...batch, notes: were });
    if (!(await app.act(work))) return;
    if (form.text('notes') === notes) for (const key of ['notes', 'notes-were']) form.drop(key);
    else form.type('notes-were', notes);
    app.draw();
  };

  const takeUp = () => app.act(() => app.shelf.changeBatch(id, takenUp));

  const remove = async () => {
    const batch = app.shelf.batches.get(id);
    if (!batch) return;
    app.go('#/today');
    await app.act(() => app.shelf.remove(`batch/${id}`), {
      says: ABOUT.removed(batch.name),
    });
  };

  /** @param {Batch} batch */
  return (batch) =>
    html`<details class="block noprint" ?open=${begun}>
      <summary>${ABOUT.head}</summary>
      ${field(form, { key: 'name', label: ABOUT.name, stored: batch.name, look: 'words' }, { typed: app.draw, left: left('name', ABOUT.wrongName) })}
      ${field(
        form,
        {
          key: 'tag',
          label: ABOUT.tag,
          hint: ABOUT.tagHint,
          stored: batch.tag,
          look: 'words',
        },
        { typed: app.draw, left: left('tag', ABOUT.wrongTag) },
      )}
      <div class="field">
        <label for="about-killed">${ABOUT.killed}<span class="opt">${ABOUT.empty}</span></label>
        <input
          id="about-killed"
          class="plainfield"
          type="date"
          .value=${batch.killed ?? ''}
          @change=${(/** @type {{ target: HTMLInputElement }} */ { target }) => change({ killed: target.value })}
        />
      </div>
      <div class="field">
        <label for="about-notes">${ABOUT.remarks}<span class="opt">${ABOUT.empty}</span></label>
        <textarea
          id="about-notes"
          rows="3"
          .value=${live(form.text('notes', batch.notes))}
          @input=${(/** @type {{ target: HTMLTextAreaElement }} */ { target }) => typed(target.value)}
          @change=${noted}
        ></textarea>
      </div>
      <div class="block acts">
        ${
          batch.closed
            ? html`<button type="button" class="btn quiet" @click=${takeUp}>
                ${batch.thrown_out ? ABOUT.notThrown : ABOUT.takeUp}
              </button>`
            : nothing
        }
        <button type="button" class="btn quiet" @click=${remove}>${ABOUT.remove}</button>
      </div>
    </details>`;
}
