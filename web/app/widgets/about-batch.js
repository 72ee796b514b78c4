/** Name, tag, day of the kill and remarks of a batch; putting it away and deleting it. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { field } from './field.js';
import { Form } from './form.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */

/** @param {App} app @param {string} id */
export function aboutBatch(app, id) {
  const form = new Form('about');

  /** @param {Partial<Batch>} part */
  const change = (part) => app.act(() => app.shelf.changeBatch(id, (batch) => ({ ...batch, ...part })));

  /**
   * @param {'name' | 'tag'} key
   * @param {string} label
   */
  const left = (key, label) => async () => {
    const stored = app.shelf.batches.get(id)?.[key];
    const batch = app.shelf.batches.get(id);
    if (!batch) return;
    const now = form.text(key, stored).trim();
    const part = { [key]: key === 'tag' ? now.toUpperCase() : now };
    const { problems } = ask('check', { batch: { ...batch, ...part } });
    if (problems) form.mark(problems.map((one) => ({ ...one, field: key, message: `${label}: ${one.message}` })));
    else if (await change(part)) form.drop(key);
    app.draw();
  };

  const remove = async () => {
    const batch = app.shelf.batches.get(id);
    if (!batch) return;
    app.go('#/today');
    await app.act(() => app.shelf.store.remove(`batch/${id}`), {
      says: `${batch.name} is deleted.`,
      back: () => app.shelf.store.put(`batch/${id}`, batch),
    });
  };

  /** @param {Batch} batch */
  return (batch) =>
    html`<details class="block noprint">
      <summary>About this batch: name, tag, day of the kill</summary>
      ${field(form, { key: 'name', label: 'Name', stored: batch.name, look: 'words' }, { typed: app.draw, left: left('name', 'The name') })}
      ${field(
        form,
        {
          key: 'tag',
          label: 'Tag',
          hint: 'Two capital letters, to write on the bag.',
          stored: batch.tag,
          look: 'words',
        },
        { typed: app.draw, left: left('tag', 'The tag') },
      )}
      <div class="field">
        <label for="about-killed">Day of the kill<span class="opt"> (may be left empty)</span></label>
        <input
          id="about-killed"
          class="plainfield"
          type="date"
          .value=${batch.killed ?? ''}
          @change=${(/** @type {{ target: HTMLInputElement }} */ { target }) => change({ killed: target.value })}
        />
      </div>
      <div class="field">
        <label for="about-notes">Remarks<span class="opt"> (may be left empty)</span></label>
        <textarea
          id="about-notes"
          rows="3"
          .value=${batch.notes ?? ''}
          @change=${(/** @type {{ target: HTMLTextAreaElement }} */ { target }) => change({ notes: target.value })}
        ></textarea>
      </div>
      <div class="block acts">
        ${
          batch.closed
            ? html`<button type="button" class="btn quiet" @click=${() => change({ closed: false })}>
                Take it up again
              </button>`
            : nothing
        }
        <button type="button" class="btn quiet" @click=${remove}>Delete this batch</button>
      </div>
    </details>`;
}
