/** A reading in two taps with a cold thumb: which piece, the keys, and log. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { clock, dayTime } from '../words/time.js';
import { icon } from './icon.js';
import { strip } from './verdict.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').FireReading} FireReading */
/** @typedef {import('../types').FireSheet} FireSheet */

const MINUTE = 60_000;
const KEYS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0'];
const MOST = 5;

export class FirePad {
  /** @type {number | null} place of the class, null for the cabinet */
  #of = 0;
  #digits = '';
  /** @type {number | null} when, or null for now */
  #at = null;
  #wrong = '';
  /** What was most likely meant, where a decimal point is missing. */
  #meant = '';
  /** @type {number | null} the reading that the next one stands in for */
  #corrects = null;

  /**
   * @param {App} app
   * @param {(reading: FireReading, corrects: number | null) => Promise<boolean>} log
   */
  constructor(app, log) {
    this.app = app;
    this.log = log;
  }

  /** @param {FireReading} reading @param {number} place */
  correct(reading, place) {
    this.#of = reading.class ?? null;
    this.#at = reading.at;
    this.#digits = '';
    this.#corrects = place;
    this.app.draw();
    document.getElementById('pad')?.scrollIntoView({ block: 'start' });
    document.getElementById('pad-head')?.focus({ preventScroll: true });
  }

  #unit() {
    return this.app.settings.units === 'us' ? '°F' : '°C';
  }

  /** @param {string} key */
  #press(key) {
    this.#wrong = '';
    if (key === 'rub') this.#digits = this.#digits.slice(0, -1);
    else if (key === '-') this.#digits = this.#digits.startsWith('-') ? this.#digits.slice(1) : `-${this.#digits}`;
    else if (key === '.' ? !this.#digits.includes('.') : true) {
      if (this.#digits.replace('-', '').length < MOST) this.#digits += key;
    }
    this.app.draw();
  }

  /** @param {number} by */
  #shift(by) {
    this.#at = (this.#at ?? this.app.now()) + by;
    this.app.draw();
  }

  /** @param {string} digits */
  #itWas(digits) {
    this.#digits = digits;
    this.#wrong = '';
    return this.#send();
  }

  async #send() {
    const unit = this.#unit();
    const { ok, problems } = ask('read', {
      fields: [{ key: 't', label: 'Reading', kind: 'temperature', text: this.#digits, unit }],
      units: this.app.settings.units,
    });
    const problem = problems?.[0] ?? ok?.problems[0];
    const value = ok?.values[0]?.value;
    if (problem || !value) {
      this.#wrong = problem?.message ?? 'Type what the probe shows.';
      // A point that was not pressed: 450 for 45.0.
      const lost = problem?.code === 'too_large' && /^(\d{2,3})(\d)$/.exec(this.#digits);
      this.#meant = lost ? `${lost[1]}.${lost[2]}` : '';
      this.app.draw();
      return;
    }
    /** @type {FireReading} */
    const reading = { temperature: value, at: this.#at ?? this.app.now() };
    if (this.#of !== null) reading.class = this.#of;
    const corrects = this.#corrects;
    const digits = this.#digits;
    // The keys are free for the next piece before this one is stored; if it cannot be kept, it comes back.
    [this.#digits, this.#at, this.#corrects] = ['', null, null];
    if (!(await this.log(reading, corrects))) {
      [this.#digits, this.#at, this.#corrects] = [digits, reading.at, corrects];
      this.app.draw();
    }
  }

  /** @param {FireSheet} sheet */
  draw(sheet) {
    if (this.#of !== null && this.#of >= sheet.classes.length) this.#of = sheet.classes.length ? 0 : null;
    const unit = this.#unit();
    const now = this.app.now();
    const at = this.#at ?? now;
    const chosen = this.#of === null ? undefined : sheet.classes[this.#of];
    const last = chosen ? chosen.points.at(-1) : sheet.cabinet.at(-1);
    const said = this.#digits ? `Log ${this.#digits} ${unit}` : 'Log the reading';
    return html`<section class="block noprint" id="pad" aria-labelledby="pad-head">
      <h2 id="pad-head" tabindex="-1">${this.#corrects === null ? 'Add a reading' : 'Correct a reading'}</h2>
      ${
        this.#corrects === null
          ? nothing
          : html`<p class="near">
              The old one stays in the log, struck out.
              <button
                type="button"
                class="btn quiet less"
                @click=${() => ((this.#corrects = null), (this.#at = null), this.app.draw())}
              >
                Leave it as it was
              </button>
            </p>`
      }
      <fieldset class="gap">
        <legend class="vh">Which piece</legend>
        <div class="pick pieces">
          ${sheet.classes.map((one, place) => this.#choice(place, html`<b>${one.name}</b>`, `k-${place % 6}`))}
          ${this.#choice(null, html`<b>Cabinet</b>`, '')}
        </div>
      </fieldset>
      <div class="show">
        <span class="cap"
          >${chosen ? 'Coldest piece, thickest part.' : 'The air beside the meat.'}${
            last ? html`<br />Last: ${last.tenths / 10} ${unit} at ${clock(last.at)}` : nothing
          }</span
        >
        <output class="num" for="pad-keys">${this.#digits || '–'}<span class="u">${unit}</span></output>
      </div>
      <div class="timebar" role="group" aria-label="When it was read">
        <button type="button" @click=${() => this.#shift(-MINUTE)}>−1<span class="vh"> minute</span></button>
        <button type="button" @click=${() => this.#shift(-10 * MINUTE)}>−10<span class="vh"> minutes</span></button>
        <div>
          <span class="num">${Math.abs(at - now) > 12 * 60 * MINUTE ? dayTime(at, now) : clock(at)}</span
          >${this.#at === null ? html`<span>now</span>` : nothing}
        </div>
        <button type="button" @click=${() => this.#shift(MINUTE)}>+1<span class="vh"> minute</span></button>
      </div>
      <div class="keys" id="pad-keys" role="group" aria-label="Temperature keys">
        ${KEYS.map(
          (key) =>
            html`<button
              type="button"
              aria-label=${key === '.' ? 'Decimal point' : key}
              @click=${() => this.#press(key)}
            >
              ${key}
            </button>`,
        )}
        <button type="button" class="w" @click=${() => this.#press('rub')}>Delete</button>
      </div>
      ${
        this.#wrong
          ? html`<div class="gap" role="alert">
              ${strip(
                'stop',
                'Not logged',
                this.#meant ? `${this.#digits} ${unit} is out of reach of a smoker and an oven.` : this.#wrong,
                this.#meant
                  ? html`<div class="acts">
                      <button type="button" class="btn" @click=${() => this.#itWas(this.#meant)}>
                        It was ${this.#meant} ${unit}
                      </button>
                    </div>`
                  : nothing,
              )}
            </div>`
          : nothing
      }
      <button type="button" class="btn wide gap log ${this.#digits ? 'main' : ''}" @click=${() => this.#send()}>
        ${said}
      </button>
    </section>`;
  }

  /** @param {number | null} place @param {unknown} words @param {string} mark */
  #choice(place, words, mark) {
    const choose = () => {
      this.#of = place;
      this.#wrong = '';
      this.app.draw();
    };
    return html`<label class="two"
      ><input type="radio" name="pad-of" .checked=${this.#of === place} @change=${choose} />${
        mark ? html`<span class="key">${icon(mark, '')}</span>` : nothing
      }<span>${words}</span></label
    >`;
  }
}
