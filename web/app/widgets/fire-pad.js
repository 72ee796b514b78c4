/** A reading in two taps with a cold thumb: which piece, the keys, and log. */
import { html, nothing } from 'lit-html';
import { readFields } from '../ask.js';
import { amongKeys } from '../focus.js';
import { pieceName } from '../../words/en/cuts.js';
import { clock, dayTime } from '../../words/time.js';
import { icon } from './icon.js';
import { pinned } from './pinned.js';
import { strip } from './verdict.js';
import { PAD, SMOKER, WHEN } from '../../words/en/fire-readings.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').FireReading} FireReading */
/** @typedef {import('../types').FireSheet} FireSheet */

const MINUTE = 60_000;
const KEYS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0'];
const MOST = 5;

export class FirePad {
  /** @type {string | null} id of the class, null for the cabinet; empty: the first */
  #of = '';
  /** @type {Batch['pieces']} as they were drawn */
  #pieces = [];
  #digits = '';
  /** @type {number | null} when, or null for now */
  #at = null;
  #wrong = '';
  /** What was most likely meant, where a decimal point is missing. */
  #meant = '';
  /** @type {string | null} id of the reading that the next one stands in for */
  #corrects = null;
  /** Ids of what was out of the heat when it was last drawn. @type {Set<string> | null} */
  #out = null;
  /** The key at which the keyboard comes to them. */
  #stop = '5';
  /** The steps of the clock are in sight. */
  #timing = false;
  /** The keyboard has gone on since the last digit. */
  #moved = false;

  /**
   * @param {App} app
   * @param {(reading: FireReading, corrects: string | null) => Promise<boolean>} log
   */
  constructor(app, log) {
    this.app = app;
    this.log = log;
  }

  /** @param {FireReading} reading */
  correct(reading) {
    this.#of = reading.class === undefined ? null : (this.#pieces[reading.class]?.id ?? '');
    this.#at = reading.at;
    this.#digits = '';
    this.#corrects = reading.id ?? null;
    this.#timing = true;
    this.app.draw();
    document.getElementById('pad-corrects')?.focus();
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

  /** The keys are one stop of the Tab key: the one that was in hand last. */
  #stopAt = (/** @type {FocusEvent} */ { target }) => {
    const key = target instanceof HTMLElement ? target.dataset.key : undefined;
    if (!key || key === this.#stop) return;
    this.#stop = key;
    this.app.draw();
  };

  /** @param {string} key */
  #typed(key) {
    this.#moved = false;
    this.#press(key);
  }

  /** Keys of a keyboard, wherever the focus is but in a field. @param {KeyboardEvent} event */
  typed(event) {
    const { key, target, ctrlKey, metaKey, altKey } = event;
    const at = target instanceof HTMLElement ? target : document.body;
    if (/^(Tab|Arrow)/.test(key)) this.#moved = true;
    // Where the probe is, nothing is typed into.
    const elsewhere = at.matches('input:not([type=radio]), select, textarea');
    if (elsewhere || ctrlKey || metaKey || altKey || !document.getElementById('pad')) return;
    if (KEYS.includes(key) || key === '-') this.#typed(key);
    else if (key === ',') this.#typed('.');
    else if (key === 'Backspace') this.#typed('rub');
    // What was come to since, it presses: a button, a link or a fold. What held the focus before is not meant.
    else if (key === 'Enter' && this.begun && !(this.#moved && at.closest('button, a, summary'))) this.#send();
    else return;
    event.preventDefault();
  }

  /** @param {number} by */
  #shift(by) {
    this.#at = (this.#at ?? this.app.now()) + by;
    this.app.draw();
  }

  /** From what is typed, or from the last reading. @param {number} by @param {number | undefined} tenths */
  #step(by, tenths) {
    const from = this.#digits === '' ? (tenths ?? 0) / 10 : Number(this.#digits);
    this.#wrong = '';
    this.#digits = String(Math.round((from + by) * 10) / 10);
    this.app.draw();
  }

  /** A reading is in hand that stands in for another: what is asked of that one waits. */
  get correcting() {
    return this.#corrects !== null;
  }

  /** Whether something is typed and not logged. */
  get begun() {
    return this.#digits !== '';
  }

  /** @param {string} digits */
  #itWas(digits) {
    this.#digits = digits;
    this.#wrong = '';
    return this.#send();
  }

  async #send() {
    const unit = this.#unit();
    const { ok, problems } = readFields(
      [{ key: 't', label: PAD.reading, kind: 'temperature', text: this.#digits, unit }],
      this.app.settings.units,
    );
    const problem = problems?.[0] ?? ok?.problems[0];
    const value = ok?.values[0]?.value;
    if (problem || !value) {
      this.#wrong = problem?.message ?? PAD.type;
      // A point that was not pressed: 450 for 45.0.
      const lost = problem?.code === 'too_large' && /^(\d{2,3})(\d)$/.exec(this.#digits);
      this.#meant = lost ? `${lost[1]}.${lost[2]}` : '';
      this.app.draw();
      document.getElementById('pad-wrong')?.scrollIntoView({ block: 'nearest' });
      return;
    }
    /** @type {FireReading} */
    const reading = { temperature: value, at: this.#at ?? this.app.now() };
    const place = this.#place();
    if (place !== null) reading.class = place;
    const corrects = this.#corrects;
    const digits = this.#digits;
    // The keys are free for the next piece before this one is stored; if it cannot be kept, it comes back.
    [this.#digits, this.#at, this.#corrects, this.#timing] = ['', null, null, false];
    // The smoker is read once, and the meat after it: its figure would go in as the smoker's.
    if (place === null && corrects === null) this.#of = '';
    if (!(await this.log(reading, corrects))) {
      [this.#digits, this.#at, this.#corrects] = [digits, reading.at, corrects];
      if (place === null) this.#of = null;
      this.app.draw();
    }
  }

  /** Place of the chosen class; null for the cabinet. */
  #place() {
    return this.#of === null ? null : this.#pieces.findIndex(({ id }) => id === this.#of);
  }

  /**
   * Where the probe is: until it is said, in the piece that is asked about first; what has just come out takes it along to
   * the next one.
   * @param {FireSheet} sheet @param {Batch['pieces']} pieces @param {number} [first]
   */
  which(sheet, pieces, first = 0) {
    this.#pieces = pieces;
    if (this.#place() === -1) this.#of = (pieces[first] ?? pieces[0])?.id ?? null;
    const out = new Set(pieces.flatMap(({ id }, at) => (id && sheet.classes[at]?.pulled ? [id] : [])));
    const inHand = this.#of ?? '';
    if (this.#out && out.has(inHand) && !this.#out.has(inHand) && !this.begun && !this.correcting) {
      const next = [first, ...pieces.keys()].find((at) => pieces[at] && sheet.classes[at]?.pulled === null);
      if (next !== undefined) this.#of = pieces[next]?.id ?? this.#of;
    }
    this.#out = out;
    return html`${this.correcting ? this.#correction() : nothing}
      <fieldset class="probe noprint">
        <legend>${PAD.where}</legend>
        <div class="pick pieces">
          ${sheet.classes.map((one, place) => this.#choice(place, pieceName(one.of), `k-${place % 6}`))}
          ${this.#choice(null, SMOKER, '')}
        </div>
      </fieldset>`;
  }

  /** What the reading in hand stands in for; and the way out of it. */
  #correction() {
    const leave = () => {
      [this.#corrects, this.#at, this.#digits, this.#wrong, this.#timing] = [null, null, '', '', false];
      this.app.draw();
    };
    return html`<section class="correction near noprint" aria-labelledby="pad-corrects">
      <h2 id="pad-corrects" tabindex="-1">${PAD.correct}</h2>
      <p class="small">${PAD.stays}</p>
      <button type="button" class="btn quiet less" @click=${leave}>${PAD.leave}</button>
    </section>`;
  }

  /**
   * Display and keys, and the button that logs.
   * @param {FireSheet} sheet
   * @param {{ pin: boolean, steps?: boolean, alone?: boolean }} how pin: it is the action of the screen; steps: beside it a
   * row that goes on from the last reading; alone: no other action stands at the foot
   */
  keys(sheet, { pin, steps = false, alone = true }) {
    const { last, name } = this.#chosen(sheet);
    const unit = this.#unit();
    const now = this.app.now();
    return html`<section class="noprint" id="pad" aria-labelledby="pad-head">
      <h2 id="pad-head" class="vh">${this.correcting ? PAD.reading : PAD.add}</h2>
      <div class="show">
        ${this.#clock(now)}
        <span class="cap">${last ? PAD.last(`${last.tenths / 10} ${unit}`, clock(last.at)) : PAD.unread(name)}</span>
        <output class="num" for="pad-keys">${this.#digits || '–'}<span class="u">${unit}</span></output>
        ${this.#timing ? this.#timebar(now) : nothing}
      </div>
      <div
        class="keys"
        id="pad-keys"
        role="group"
        aria-label=${PAD.keys}
        @keydown=${amongKeys}
        @pointerdown=${() => (this.#moved = false)}
        @focusin=${this.#stopAt}
      >
        ${KEYS.map(
          (key) =>
            html`<button
              type="button"
              class=${key === '.' ? 'point' : key === '0' ? 'nought' : ''}
              aria-label=${key === '.' ? PAD.point : key}
              data-key=${key}
              tabindex=${key === this.#stop ? 0 : -1}
              @click=${() => this.#press(key)}
            >
              ${key}
            </button>`,
        )}
        <button
          type="button"
          class="w"
          data-key="rub"
          tabindex=${this.#stop === 'rub' ? 0 : -1}
          @click=${() => this.#press('rub')}
        >
          ${PAD.rub}
        </button>
      </div>
      ${pin || alone || this.begun ? this.#log(name, last, pin, steps) : nothing}
    </section>`;
  }

  /** @param {FireSheet} sheet */
  #chosen({ classes, cabinet }) {
    const of = this.#place();
    const one = of === null ? undefined : classes[of];
    return { last: (one ? one.points : cabinet).at(-1), name: one ? pieceName(one.of) : SMOKER };
  }

  /** @param {string} name @param {import('../types').FirePoint | undefined} last @param {boolean} pin @param {boolean} steps */
  #log(name, last, pin, steps) {
    const said = this.#digits ? PAD.log(`${this.#digits} ${this.#unit()}`, name) : PAD.logEmpty;
    const button = html`<button
      type="button"
      class="btn ${pin ? 'main' : 'wide'} ${pin ? '' : 'gap'}"
      @click=${() => this.#send()}
    >
      ${said}
    </button>`;
    if (!pin) return button;
    const row = html`<div class="stepper" role="group" aria-label=${PAD.fromLast}>
      ${[-10, -1].map((by) => this.#stepButton(by, last?.tenths))}
      <span class="num" aria-hidden="true">${this.#digits || '–'}</span>
      ${[1, 10].map((by) => this.#stepButton(by, last?.tenths))}
    </div>`;
    return pinned(button, steps && last ? row : nothing);
  }

  /** @param {number} by @param {number | undefined} tenths */
  #stepButton(by, tenths) {
    return html`<button type="button" @click=${() => this.#step(by, tenths)}>
      ${by < 0 ? `−${-by}` : `+${by}`}<span class="vh">${PAD.degrees}</span>
    </button>`;
  }

  /** When it was read; a touch brings the steps of the clock. @param {number} now */
  #clock(now) {
    const at = this.#at ?? now;
    const said = Math.abs(at - now) > 12 * 60 * MINUTE ? dayTime(at, now) : clock(at);
    return html`<button
      type="button"
      class="when"
      aria-expanded=${this.#timing ? 'true' : 'false'}
      aria-label=${WHEN.change(said, this.#at === null)}
      @click=${() => ((this.#timing = !this.#timing), this.app.draw())}
    >
      ${said} ${this.#at === null ? html`<small>${WHEN.now}</small>` : nothing}
    </button>`;
  }

  /** @param {number} now */
  #timebar(now) {
    return html`<div class="timebar" role="group" aria-label=${WHEN.head}>
      <button type="button" @click=${() => this.#shift(-10 * MINUTE)}>
        −10<span class="vh">${WHEN.minutes}</span>
      </button>
      <button type="button" @click=${() => this.#shift(-MINUTE)}>−1<span class="vh">${WHEN.minute}</span></button>
      <div><span class="num">${clock(this.#at ?? now)}</span></div>
      <button type="button" @click=${() => this.#shift(MINUTE)}>+1<span class="vh">${WHEN.minute}</span></button>
    </div>`;
  }

  /** What was pressed and not logged is said at the head of the screen, where all that is asked of a reading stands. */
  get notLogged() {
    if (!this.#wrong) return nothing;
    const unit = this.#unit();
    return html`<div class="block" id="pad-wrong" role="alert">
      ${strip(
        'stop',
        PAD.notLogged,
        this.#meant ? PAD.outOfReach(`${this.#digits} ${unit}`) : this.#wrong,
        this.#meant
          ? html`<div class="acts">
              <button type="button" class="btn" @click=${() => this.#itWas(this.#meant)}>
                ${PAD.itWas(`${this.#meant} ${unit}`)}
              </button>
            </div>`
          : nothing,
      )}
    </div>`;
  }

  /** @param {number | null} place @param {string} name @param {string} mark */
  #choice(place, name, mark) {
    const choose = () => {
      this.#of = place === null ? null : (this.#pieces[place]?.id ?? null);
      // What was typed was read of the piece before.
      [this.#digits, this.#wrong] = ['', ''];
      this.app.draw();
    };
    return html`<label
      ><input type="radio" name="pad-of" .checked=${this.#place() === place} @change=${choose} />${
        mark ? html`<span class="key">${icon(mark, '')}</span>` : nothing
      }<b>${name}</b></label
    >`;
  }
}
