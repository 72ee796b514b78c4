/** Export of everything as a file, and import with a plan first. */
import { html, nothing } from 'lit-html';
import { Incomplete, Unread, download, exportAll, importAll } from '../backup.js';
import { recordName } from '../../words/en/record.js';
import { clock, fullDate } from '../../words/time.js';
import { icon } from './icon.js';
import { strip } from './verdict.js';
import {
  FILE,
  PLAN,
  comes,
  dayAndTime,
  differs,
  exported,
  imported,
  inFile,
  leftOut,
  progress,
} from '../../words/en/backup.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../backup.js').Plan} Plan */
/** @typedef {import('../backup.js').Row} Row */

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
        <button type="button" class="btn main wide" @click=${() => this.#export()}>${FILE.export}</button>
      </div>
      <div class="field">
        <label for="f-import">${FILE.import}</label>
        <span class="hint" id="f-import-hint">${FILE.importHint}</span>
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
      ${this.#refusal ? html`<div class="gap">${strip('care', FILE.notDone, this.#refusal)}</div>` : nothing}
      ${this.#did ? html`<div class="gap" id="transfer-did">${strip('ok', FILE.done, this.#did)}</div>` : nothing}
      ${this.#plan ? this.#shown(this.#plan) : nothing}`;
  }

  /** @param {{ what: string, share: number, stop: AbortController }} busy */
  #progress({ what, share, stop }) {
    return html`<div class="gap" role="group" aria-label=${what}>
      <p class="near" id="busy-says">${progress(what, share)}</p>
      <progress class="wide" aria-labelledby="busy-says" max="1" .value=${share}></progress>
      <button type="button" class="btn quiet" @click=${() => stop.abort()}>${FILE.cancel}</button>
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
      <h3 id="plan-h" tabindex="-1">${PLAN.head}</h3>
      <p class="near">
        ${inFile(Number.isNaN(made) ? '' : fullDate(made), plan.sum, { fresh: fresh.length, same: same.length, asked: asked.length, unreadable: unreadable.length })}
      </p>
      <ul class="rows">
        ${asked.slice(0, this.#inSight).map((row) => this.#choice(row))}
        ${fresh.slice(0, this.#inSight).map((row) => html`<li>${comes(nameOf(row), Boolean(row.replaces))}</li>`)}
        ${unreadable.slice(0, this.#inSight).map((row) => html`<li>${leftOut(nameOf(row), row.reason)}</li>`)}
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
              ${PLAN.more}
            </button>`
          : nothing
      }
      ${asked.length > 1 ? this.#all(asked) : nothing}
      <div class="pair gap">
        <button type="button" class="btn quiet" @click=${() => this.#drop()}>${PLAN.leave}</button>
        ${
          fresh.length + asked.length
            ? html`<button type="button" class="btn" @click=${() => this.#apply(plan)}>${PLAN.store}</button>`
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
      <button type="button" class="btn quiet" @click=${() => set('mine')}>${PLAN.allMine(rows.length)}</button>
      <button type="button" class="btn quiet" @click=${() => set('theirs')}>${PLAN.allTheirs(rows.length)}</button>
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
        <legend>${differs(nameOf(row))}</legend>
        <div class="pick near">
          ${radio('mine', row.mine ? PLAN.mineOf(whenOf(row.mine)) : PLAN.mine)}
          ${radio('theirs', PLAN.theirsOf(whenOf(row.theirs)))}
        </div>
      </fieldset>
    </li>`;
  }

  async #export() {
    const { shelf } = this.app;
    this.#did = this.#refusal = null;
    await this.app.act(async () => {
      try {
        const file = await this.#watched(FILE.writing, (watch) =>
          exportAll(shelf.store, { shown: shelf.shown, ...watch }),
        );
        download(file);
        this.#did = exported(file.holds, shelf.shown);
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
    const { plan, problem } = await this.#watched(FILE.reading, async (watch) =>
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
      says = imported(written.length, skipped.length);
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
  if (!record) return PLAN.noDate;
  const ms = Date.parse(record.at);
  return dayAndTime(fullDate(ms), clock(ms));
}
