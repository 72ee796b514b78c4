/** Export of everything as a file, and import with a plan first. */
import { html, nothing } from 'lit-html';
import { exportAll, importAll } from '../backup.js';
import { count } from '../words/names.js';
import { clock, fullDate } from '../words/time.js';
import { icon } from './icon.js';
import { strip } from './verdict.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../backup.js').Plan} Plan */
/** @typedef {import('../backup.js').Row} Row */

/** @type {Record<Plan['sum'], string>} */
const SUMS = {
  matches: 'Its checksum is right.',
  differs: 'Its checksum is wrong: the file was changed or damaged after it was made. Look at each record.',
  unchecked: 'Its checksum could not be checked here.',
};

/** How this device is set is not replaced without a word, not even where nothing was set yet. */
const NO_CHOICE = /** @type {const} */ ({ settings: 'mine' });

export class Transfer {
  /** @type {Plan | null} */
  #plan = null;
  /** @type {string | null} */
  #refusal = null;
  /** @type {Record<string, 'mine' | 'theirs'>} */
  #choices = { ...NO_CHOICE };

  /** @param {App} app @param {() => unknown} done called when something was exported or imported */
  constructor(app, done) {
    this.app = app;
    this.done = done;
  }

  draw() {
    return html`<div class="gap">
        <button type="button" class="btn main wide" @click=${() => this.#export()}>Export everything</button>
      </div>
      <div class="field">
        <label for="f-import">Import a file</label>
        <span class="hint" id="f-import-hint">You see what is in it before anything is stored.</span>
        <input
          id="f-import"
          class="plainfield"
          type="file"
          accept=".json,application/json"
          aria-describedby="f-import-hint"
          @change=${(/** @type {{ target: HTMLInputElement }} */ { target }) => this.#look(target)}
        />
      </div>
      ${this.#refusal ? html`<div class="gap">${strip('care', 'Not taken', this.#refusal)}</div>` : nothing}
      ${this.#plan ? this.#shown(this.#plan) : nothing}`;
  }

  /** @param {Plan} plan */
  #shown(plan) {
    const of = (/** @type {Row['kind']} */ kind) => plan.rows.filter((row) => row.kind === kind);
    const fresh = of('new').filter(({ key }) => key !== 'settings');
    const asked = plan.rows.filter((row) => row.kind === 'different' || (row.kind === 'new' && !fresh.includes(row)));
    const [same, unreadable] = [of('same'), of('unreadable')];
    const made = Date.parse(plan.made);
    return html`<section class="block" aria-labelledby="plan-h">
      <h3 id="plan-h" tabindex="-1">What is in the file</h3>
      <p class="near">
        ${Number.isNaN(made) ? nothing : `Made ${fullDate(made)}. `}${SUMS[plan.sum]} ${count(fresh.length, 'record')}
        new here, ${same.length} the same as here, ${asked.length} to choose, ${unreadable.length} that cannot be read.
      </p>
      <ul class="rows">
        ${fresh.map((row) => html`<li><b>${nameOf(row)}</b>: new here, will be stored.</li>`)}
        ${asked.map((row) => this.#choice(row))}
        ${unreadable.map((row) => html`<li><b>${row.key}</b>: cannot be read, since ${row.reason}. It is left out.</li>`)}
      </ul>
      <div class="pair gap">
        <button type="button" class="btn quiet" @click=${() => this.#drop()}>Leave all as it is</button>
        ${
          fresh.length + asked.length
            ? html`<button type="button" class="btn" @click=${() => this.#apply(plan)}>Store what is chosen</button>`
            : nothing
        }
      </div>
    </section>`;
  }

  /** @param {Row} row */
  #choice(row) {
    const choice = this.#choices[row.key] ?? 'mine';
    const set = (/** @type {'mine' | 'theirs'} */ now) => {
      this.#choices[row.key] = now;
      this.app.draw();
    };
    const radio = (/** @type {'mine' | 'theirs'} */ which, /** @type {string} */ word) =>
      html`<label
        ><input
          type="radio"
          name="choice-${row.key}"
          .checked=${choice === which}
          @change=${() => set(which)}
        />${icon('s-tick', 'tick')}<span>${word}</span></label
      >`;
    return html`<li>
      <fieldset>
        <legend><b>${nameOf(row)}</b> is different here and in the file.</legend>
        <div class="pick near">
          ${radio('mine', row.mine ? `Mine, of ${whenOf(row.mine)}` : 'Mine')}
          ${radio('theirs', `The file's, of ${whenOf(row.theirs)}`)}
        </div>
      </fieldset>
    </li>`;
  }

  async #export() {
    await this.app.act(async () => {
      const { name, text } = await exportAll(this.app.shelf.store);
      const url = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
      const link = Object.assign(document.createElement('a'), { href: url, download: name });
      link.click();
      // The browser has begun to read it by then.
      setTimeout(() => URL.revokeObjectURL(url), 60_000);
    });
    this.done();
  }

  /** @param {HTMLInputElement} input */
  async #look(input) {
    const file = input.files?.[0];
    if (!file) return;
    this.#drop();
    const { plan, problem } = await importAll(this.app.shelf.store, await file.text());
    this.#plan = plan ?? null;
    this.#refusal = problem?.message ?? null;
    input.value = '';
    this.app.draw();
    document.getElementById('plan-h')?.focus();
    if (problem) this.app.say(problem.message);
  }

  /** @param {Plan} plan */
  async #apply(plan) {
    let says = '';
    const kept = await this.app.act(async () => {
      const { written, skipped } = await plan.apply(this.#choices);
      says = `${count(written.length, 'record')} stored.${skipped.length ? ` ${skipped.length} left, since they have changed here meanwhile.` : ''}`;
    });
    if (!kept) return;
    this.#drop();
    this.#refusal = null;
    this.app.forgetUndo();
    this.app.say(says);
    this.done();
  }

  #drop() {
    this.#plan = null;
    this.#refusal = null;
    this.#choices = { ...NO_CHOICE };
    this.app.draw();
  }
}

/** @param {Row} row */
function nameOf({ key, theirs, mine }) {
  const data = theirs?.data ?? mine?.data;
  const kind = key.startsWith('batch/')
    ? 'Batch'
    : key.startsWith('recipe/')
      ? 'Recipe'
      : key.startsWith('stock/')
        ? 'Stock'
        : 'Settings';
  const day = kind === 'Batch' ? `, ${fullDate(Date.parse((theirs ?? mine)?.at ?? ''))}` : '';
  return typeof data?.name === 'string' ? `${kind} ${data.tag} ${data.name}${day}` : kind;
}

/** @param {import('../records.js').Rec | undefined} record */
function whenOf(record) {
  if (!record) return 'no date';
  const ms = Date.parse(record.at);
  return `${fullDate(ms)}, ${clock(ms)}`;
}
