/** Export of everything as a file, and import with a plan first. */
import { html, nothing } from 'lit-html';
import { Incomplete, Unread, download, exportAll, importAll } from '../backup.js';
import { count } from '../words/names.js';
import { recordName } from '../words/record.js';
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

/** How this device is set is not replaced without a word; where nothing was done yet, the file's is offered first. */
const NO_CHOICE = /** @type {const} */ ({ settings: 'mine' });
/** So many of each kind are shown; more at a touch. */
const IN_SIGHT = 40;

export class Transfer {
  /** @type {Plan | null} */
  #plan = null;
  /** @type {string | null} */
  #refusal = null;
  /** @type {Record<string, 'mine' | 'theirs'>} */
  #choices = { ...NO_CHOICE };
  #inSight = IN_SIGHT;
  /** @type {string | null} what was done with the last file */
  #did = null;
  /** @type {{ what: string, share: number, stop: AbortController } | null} what takes its time now */
  #busy = null;

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
      ${this.#busy ? this.#progress(this.#busy) : nothing}
      ${this.#refusal ? html`<div class="gap">${strip('care', 'Not done', this.#refusal)}</div>` : nothing}
      ${this.#did ? html`<div class="gap" role="status" id="transfer-did">${strip('ok', 'Done', this.#did)}</div>` : nothing}
      ${this.#plan ? this.#shown(this.#plan) : nothing}`;
  }

  /** @param {{ what: string, share: number, stop: AbortController }} busy */
  #progress({ what, share, stop }) {
    return html`<div class="gap" role="group" aria-label=${what}>
      <p class="near" id="busy-says">${what}: ${Math.floor(share * 100)} %</p>
      <progress class="wide" aria-labelledby="busy-says" max="1" .value=${share}></progress>
      <button type="button" class="btn quiet" @click=${() => stop.abort()}>Cancel</button>
    </div>`;
  }

  /**
   * Does something that takes its time, with its progress in sight.
   * @template T
   * @param {string} what
   * @param {(watch: import('../backup.js').Watch) => Promise<T>} work
   * @returns {Promise<T>}
   */
  async #watched(what, work) {
    const stop = new AbortController();
    const progress = (/** @type {number} */ share) => {
      if (stop.signal.aborted) return;
      this.#busy = { what, share, stop };
      this.app.draw();
    };
    try {
      return await work({ progress, signal: stop.signal });
    } finally {
      this.#busy = null;
      this.app.draw();
    }
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
        ${asked.slice(0, this.#inSight).map((row) => this.#choice(row))}
        ${fresh.slice(0, this.#inSight).map((row) => html`<li><b>${nameOf(row)}</b>: ${row.replaces ? 'in place of the starter here.' : 'new here, will be stored.'}</li>`)}
        ${unreadable
          .slice(0, this.#inSight)
          .map((row) => html`<li><b>${nameOf(row)}</b>: cannot be read, since ${row.reason}. It is left out.</li>`)}
      </ul>
      ${
        Math.max(fresh.length, asked.length, unreadable.length) > this.#inSight
          ? html`<button
              type="button"
              class="btn quiet wide gap"
              @click=${() => {
                this.#inSight += IN_SIGHT * 5;
                this.app.draw();
              }}
            >
              Show more of them
            </button>`
          : nothing
      }
      ${asked.length > 1 ? this.#all(asked) : nothing}
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

  /** @param {Row[]} rows */
  #all(rows) {
    const set = (/** @type {'mine' | 'theirs'} */ now) => {
      for (const { key } of rows) this.#choices[key] = now;
      this.app.draw();
    };
    return html`<div class="acts gap">
      <button type="button" class="btn quiet" @click=${() => set('mine')}>Mine for all ${rows.length}</button>
      <button type="button" class="btn quiet" @click=${() => set('theirs')}>The file's for all ${rows.length}</button>
    </div>`;
  }

  /** What is new in the file comes in unless somebody says otherwise; what differs does not. @param {Row} row */
  #chosen({ key, kind }) {
    return this.#choices[key] ?? (kind === 'new' ? 'theirs' : 'mine');
  }

  /** @param {Row} row */
  #choice(row) {
    const choice = this.#chosen(row);
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
    const { shelf } = this.app;
    this.#did = this.#refusal = null;
    await this.app.act(async () => {
      try {
        const file = await this.#watched('Writing the file', (watch) =>
          exportAll(shelf.store, { shown: shelf.shown, ...watch }),
        );
        download(file);
        const { batches, recipes, stock } = file.holds;
        this.#did =
          `The file holds ${count(batches, 'batch', 'batches')} of ${shelf.shown.batches}, ` +
          `${count(recipes, 'recipe')} of ${shelf.shown.recipes} and ${stock} of ${shelf.shown.stock} in the stock.`;
      } catch (error) {
        if (!(error instanceof Incomplete || error instanceof Unread)) throw error;
        this.#refusal = error.message;
      }
    });
    this.app.say(this.#did ?? this.#refusal ?? '');
    this.done();
  }

  /** @param {HTMLInputElement} input */
  async #look(input) {
    const file = input.files?.[0];
    if (!file) return;
    this.#drop();
    const { plan, problem } = await this.#watched('Reading the file', async (watch) =>
      importAll(this.app.shelf.store, await file.text(), { ...watch, starters: this.app.starters.recipes }),
    );
    this.#plan = plan ?? null;
    if (plan?.untouched) this.#choices = {};
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
    this.#did = says;
    this.app.draw();
    this.app.say(says);
    this.done();
  }

  #drop() {
    this.#plan = null;
    this.#refusal = null;
    this.#did = null;
    this.#inSight = IN_SIGHT;
    this.#choices = { ...NO_CHOICE };
    this.app.draw();
  }
}

/** @param {Row} row */
function nameOf({ key, theirs, mine, called }) {
  const record = theirs ?? mine;
  if (!record) return recordName(key, { name: called });
  const day = key.startsWith('batch/') ? `, ${fullDate(Date.parse(record.at))}` : '';
  return recordName(key, record.data) + day;
}

/** @param {import('../records.js').Rec | undefined} record */
function whenOf(record) {
  if (!record) return 'no date';
  const ms = Date.parse(record.at);
  return `${fullDate(ms)}, ${clock(ms)}`;
}
