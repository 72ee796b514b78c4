/** The log of the fire and the chill: what is asked before, the pad, when to pull, what it is worth, every reading. */
import { html, nothing, svg } from 'lit-html';
import { ask } from '../ask.js';
import { glue } from '../words/glue.js';
import { clock, dayTime, midnight } from '../words/time.js';
import { problemStrip } from './answer.js';
import { field } from './field.js';
import { fireChart } from './fire-chart.js';
import { FirePad } from './fire-pad.js';
import { Form } from './form.js';
import { shape } from './icon.js';
import { pick } from './pick.js';
import { strip } from './verdict.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Fire} Fire */
/** @typedef {import('../types').FireClass} FireClass */
/** @typedef {import('../types').FireReading} FireReading */
/** @typedef {import('../types').FireSheet} FireSheet */
/** @typedef {import('./tick.js').Ticker} Ticker */

/** @type {Record<import('../types').FireState, import('../types').Mark>} */
const MARKS = { made_it: 'ok', by_table: 'care', not_yet: 'care', cannot_say: 'ask' };
/** @type {Fire} */
const UNLIT = { fan: false, cover: 'dry', readings: [] };

export class FireLog {
  #target = new Form('fire');
  #out = new Form('out');

  /** @param {App} app @param {string} id @param {Ticker} ticker @param {'fire' | 'pack'} stage */
  constructor(app, id, ticker, stage) {
    this.stage = stage;
    this.app = app;
    this.id = id;
    this.ticker = ticker;
    this.pad = new FirePad(app, (reading, corrects) => this.#log(reading, corrects));
  }

  /** @type {{ batch: Batch, at: number, answer: ReturnType<typeof ask<'fire_log'>> } | null} one answer for both columns */
  #last = null;

  /** @param {Batch} batch */
  ask(batch) {
    const at = this.app.now();
    if (this.#last?.batch !== batch || Math.abs(at - this.#last.at) > 1000) {
      this.#last = { batch, at, answer: this.#asked(batch) };
    }
    return this.#last.answer;
  }

  /** @param {Batch} batch */
  #asked(batch) {
    return ask('fire_log', { batch, now: this.app.now(), settings: this.app.settings });
  }

  /**
   * @param {(fire: Fire) => Fire} change
   * @param {import('../app.js').Undo} [undo]
   */
  #change(change, undo) {
    const work = () =>
      this.app.shelf.changeBatch(this.id, (batch) => ({ ...batch, fire: change(batch.fire ?? UNLIT) }));
    return this.app.act(work, undo);
  }

  /** @param {number} place @param {Partial<FireReading>} what @param {string} [says] */
  #mark(place, what, says) {
    const set = (/** @type {Partial<FireReading>} */ some) => (/** @type {Fire} */ fire) => ({
      ...fire,
      readings: fire.readings.map((one, at) => (at === place ? { ...one, ...some } : one)),
    });
    const back = { struck: false, sure: false };
    return this.#change(set(what), says ? { says, here: true, back: () => this.#change(set(back)) } : undefined);
  }

  /** @param {FireReading} reading @param {number | null} corrects */
  async #log(reading, corrects) {
    const kept = await this.#change((fire) => ({
      ...fire,
      readings: [...fire.readings.map((one, at) => (at === corrects ? { ...one, struck: true } : one)), reading],
    }));
    if (!kept) return false;
    const batch = this.app.shelf.batches.get(this.id);
    const sheet = batch && this.ask(batch).ok;
    const one = reading.class === undefined ? undefined : sheet?.classes[reading.class];
    const window = one?.outlook?.window;
    this.app.say(
      `${one?.name ?? 'Cabinet'}: logged. ${
        sheet?.doubts.length
          ? 'A reading is in question.'
          : window
            ? `Pull between ${span(window, this.app.now())}.`
            : ''
      }`,
    );
    return true;
  }

  /** Before the fire: the smoker, who will eat, where to pull. @param {Batch} batch @param {FireSheet} sheet */
  #before(batch, sheet) {
    const fire = batch.fire ?? UNLIT;
    const set = (/** @type {Partial<Fire>} */ some) => this.#change((now) => ({ ...now, ...some }));
    const begun = fire.readings.length > 0;
    const unit = this.app.settings.units === 'us' ? '°F' : '°C';
    const asked = fire.at_risk !== undefined;
    const send = (/** @type {Event} */ event) => {
      event.preventDefault();
      const read = this.#target.read(
        [{ key: 'target', label: 'Pull at', kind: 'temperature', unit, optional: true, stored: fire.target ?? '' }],
        this.app.settings.units,
      );
      if (!read) return this.app.draw();
      const target = read['target'];
      this.#target.clear();
      return this.#change(({ target: _, ...rest }) => (target ? { ...rest, target } : rest));
    };
    const rules = [...new Map(sheet.classes.map((one) => [one.rule, one])).values()];
    const lower = sheet.classes.some((one) => one.no_lower === '');
    return html`<details class="block fold" ?open=${!asked || !begun}>
      <summary><h2>Before the fire</h2></summary>
      <p>
        Rinsed, dried to a pellicle, the probe in the thickest part of the largest piece and another in the smallest.
      </p>
      <div class="gap">
        ${pick(
          {
            name: 'fan',
            legend: 'Does a fan move the air?',
            options: [
              ['no', 'Still'],
              ['yes', 'Fan'],
            ],
            value: fire.fan ? 'yes' : 'no',
          },
          (value) => set({ fan: value === 'yes' }),
        )}
        ${pick(
          {
            name: 'cover',
            legend: 'How do the pieces stand?',
            options: [
              ['dry', 'Dry'],
              ['pan', 'Water pan'],
              ['wrapped', 'Wrapped'],
            ],
            value: fire.cover ?? 'dry',
          },
          (cover) => set({ cover }),
        )}
        ${pick(
          {
            name: 'risk',
            legend: 'Who will eat it?',
            hint: 'At risk: under 5, old, pregnant or ill.',
            options: [
              ['yes', 'Someone at risk'],
              ['no', 'Nobody at risk'],
            ],
            value: /** @type {'yes' | 'no'} */ (asked ? (fire.at_risk ? 'yes' : 'no') : ''),
          },
          (value) => set({ at_risk: value === 'yes' }),
        )}
      </div>
      ${rules.map(
        (one) =>
          html`<p class="caution"><b class="nowrap">${one.consumer.text}</b> ${glue(one.rule)}</p>
            ${one.no_lower ? html`<p class="small">${glue(one.no_lower)}</p>` : nothing}`,
      )}
      ${
        lower
          ? html`<form class="gap" novalidate @submit=${send}>
              ${field(this.#target, {
                key: 'target',
                label: 'Pull at',
                hint: 'Empty: the consumer temperature. Below it only time at temperature counts, by the table and on its conditions.',
                unit,
                stored: fire.target ?? '',
                optional: true,
              })}
              <button class="btn wide">Set the target</button>
            </form>`
          : nothing
      }
    </details>`;
  }

  /** @param {Batch} batch @param {FireSheet} sheet */
  #doubts(batch, sheet) {
    const readings = batch.fire?.readings ?? [];
    return sheet.doubts.map(({ reading: place, says, choices }) => {
      const reading = readings[place];
      if (!reading) return nothing;
      const name = reading.class === undefined ? 'Cabinet' : sheet.classes[reading.class]?.name;
      const meant = (/** @type {string} */ temperature) =>
        this.#change((fire) => ({
          ...fire,
          readings: [
            ...fire.readings.map((one, at) => (at === place ? { ...one, struck: true } : one)),
            { ...reading, temperature, sure: true },
          ],
        }));
      return html`<div class="block" role="status">
        ${strip(
          'ask',
          `${name}: ${reading.temperature} at ${clock(reading.at)}?`,
          glue(says),
          html`<div class="acts">
            ${choices.map(
              (text) => html`<button type="button" class="btn" @click=${() => meant(text)}>It was ${text}</button>`,
            )}
            <button type="button" class="btn" @click=${() => this.#mark(place, { sure: true })}>It is right</button>
            <button type="button" class="btn" @click=${() => this.pad.correct(reading, place)}>Correct it</button>
            <button type="button" class="btn" @click=${() => this.#mark(place, { struck: true }, 'Struck out.')}>
              Strike it out
            </button>
          </div>`,
        )}
      </div>`;
    });
  }

  /** @param {FireSheet} sheet */
  #order({ classes, order }) {
    const now = this.app.now();
    const places = [...order, ...classes.keys()].filter((place, at, all) => all.indexOf(place) === at);
    return html`<h2>Pull order</h2>
      <table class="tbl near">
        <caption class="vh">
          Size classes, the first to be pulled first
        </caption>
        <thead>
          <tr>
            <th scope="col">Piece</th>
            <th scope="col">Last</th>
            <th scope="col">Pull between</th>
          </tr>
        </thead>
        <tbody>
          ${places.map((place) => {
            const one = classes[place];
            if (!one) return nothing;
            const window = one.outlook?.window;
            const mark = { of: `pull:${place}` };
            return html`<tr>
              <td>
                ${shape(place)}${one.name}<small>target ${one.target.text}</small>
                <div class="noprint near">
                  ${
                    one.pulled
                      ? html`<button
                          type="button"
                          class="btn quiet less"
                          @click=${() => this.ticker.take(this.id, mark.of)}
                        >
                          Not pulled<span class="vh">: ${one.name}</span>
                        </button>`
                      : html`<button
                          type="button"
                          class="btn quiet less"
                          @click=${() => this.ticker.set(this.id, mark, `${one.name} is pulled. Now chill it.`)}
                        >
                          Pulled just now<span class="vh">: ${one.name}</span>
                        </button>`
                  }
                </div>
              </td>
              <td class="nowrap">${one.last?.text ?? '–'}</td>
              <td>
                ${
                  one.pulled
                    ? html`pulled ${dayTime(one.pulled, now)}`
                    : window
                      ? html`<span>${span(window, now)}</span><small>likely ${dayTime(window[1], now)}</small>`
                      : one.outlook
                        ? 'not within a day'
                        : html`<small>${one.no_outlook}</small>`
                }
              </td>
            </tr>`;
          })}
        </tbody>
      </table>
      ${classes.map((one, place) =>
        one.outlook
          ? html`<div class="near">
              <p>${shape(place)}<b>${one.name}.</b> ${one.outlook.from}</p>
              <ul class="dots">
                ${one.outlook.notes.map((note) => html`<li class="small">${glue(note)}</li>`)}
              </ul>
            </div>`
          : nothing,
      )}`;
  }

  /** @param {FireClass} one @param {number} place */
  #worth(one, place) {
    const { credit } = one;
    return html`<section class="block">
      <div class="row-h">
        <h2>${shape(place)}${one.name}</h2>
        ${credit ? html`<span class="num credit-num">${credit.num}<span class="u">of ${credit.of} log</span></span>` : nothing}
      </div>
      ${
        credit
          ? html`<div class="credit" role="img" aria-label="${credit.num} of ${credit.of} log counted so far">
              ${Array.from({ length: 7 }, (_, i) => {
                const full = Math.max(0, Math.min(10, credit.tenths - 10 * i));
                return html`<svg aria-hidden="true">${svg`<rect width="${full * 10}%" height="100%"/>`}</svg>`;
              })}
            </div>`
          : nothing
      }
      <div class="gap" role="status">${strip(MARKS[one.state], one.word, glue(one.says))}</div>
      ${one.come_up ? html`<p class="caution gap">${glue(one.come_up)}</p>` : nothing}
    </section>`;
  }

  /** The rules the verdicts stand on, each once. @param {FireSheet} sheet */
  #rules({ classes }) {
    const texts = classes.flatMap(({ credit, rule }) => (credit ? [credit.conditions, credit.table, rule] : [rule]));
    return html`<section class="block">
      <h2>By which rule</h2>
      ${[...new Set(texts)].map((text) => html`<p class="src">${glue(text)}</p>`)}
    </section>`;
  }

  /** Chilling by the published options. @param {FireClass} one @param {number} place */
  #chill(one, place) {
    if (one.chill.length === 0) return nothing;
    const now = this.app.now();
    return html`<section class="block">
      <h2>${shape(place)}${one.name}: chill</h2>
      <table class="tbl near">
        <caption class="vh">
          Published options for chilling
        </caption>
        <thead>
          <tr>
            <th scope="col">Stage</th>
            <th scope="col">Left</th>
          </tr>
        </thead>
        <tbody>
          ${one.chill.map(
            (row) =>
              html`<tr>
                <td>${row.stage}<small>${row.name}. ${glue(row.source)}.</small></td>
                <td>
                  <span class=${row.late ? 'flag stop' : ''}>${row.says}</span>${
                    row.until ? html`<small>until ${dayTime(row.until, now)}</small>` : nothing
                  }${row.expected ? html`<small>expected ${dayTime(row.expected, now)}</small>` : nothing}
                </td>
              </tr>`,
          )}
        </tbody>
      </table>
      <p class="small">
        The first option that holds to its end is enough. Expected: in a refrigerator at 3 °C, alone on its shelf, by a
        model; the readings decide.
      </p>
    </section>`;
  }

  /** Yield and salt, by the weight after the fire. @param {Batch} batch @param {FireSheet} sheet */
  #after(batch, { after, after_wrong }) {
    const unit = this.app.settings.units === 'us' ? 'oz' : 'g';
    const out = batch.fire?.out ?? '';
    const send = (/** @type {Event} */ event) => {
      event.preventDefault();
      const read = this.#out.read(
        [{ key: 'out', label: 'Weight after the fire', kind: 'mass', unit, optional: true, stored: out }],
        this.app.settings.units,
      );
      if (!read) return this.app.draw();
      const weight = read['out'];
      this.#out.clear();
      return this.#change(({ out: _, ...rest }) => (weight ? { ...rest, out: weight } : rest));
    };
    return html`<section class="block">
      <h2>Weight after the fire</h2>
      ${after_wrong ? html`<div class="gap">${strip('ask', 'Cannot say yet', glue(after_wrong))}</div>` : nothing}
      ${
        after
          ? html`<p class="near">
                <b class="nowrap">${after.share}</b> of the green
                weight${
                  after.salt
                    ? html`, <b class="nowrap">${after.salt}</b> salt, <b class="nowrap">${after.brine}</b> salt in its
                        water, water activity about <b class="nowrap">${after.activity}</b> (an estimate)`
                    : nothing
                }.
              </p>
              <p class="src">${glue(after.says)}</p>`
          : nothing
      }
      <form class="noprint" novalidate @submit=${send}>
        ${field(this.#out, {
          key: 'out',
          label: 'All pieces together',
          hint: 'Weighed once they are cold.',
          unit,
          stored: out,
          optional: true,
        })}
        <button class="btn wide">Keep this weight</button>
      </form>
    </section>`;
  }

  /** Every reading, the newest first. @param {Batch} batch @param {FireSheet} sheet */
  #readings(batch, sheet) {
    const now = this.app.now();
    const rows = (batch.fire?.readings ?? []).map((reading, place) => ({ reading, place })).reverse();
    if (rows.length === 0) return nothing;
    return html`<section class="block">
      <h2>Readings</h2>
      <table class="tbl near">
        <caption class="vh">
          Every reading, the newest first
        </caption>
        <thead>
          <tr>
            <th scope="col">Time</th>
            <th scope="col">Piece</th>
            <th scope="col">Read</th>
            <th scope="col" class="noprint"><span class="vh">Change</span></th>
          </tr>
        </thead>
        <tbody>
          ${rows.map(({ reading, place }) => {
            const name = reading.class === undefined ? 'Cabinet' : (sheet.classes[reading.class]?.name ?? 'gone');
            const which = `${name}, ${reading.temperature} at ${clock(reading.at)}`;
            return html`<tr class=${reading.struck ? 'struck' : ''}>
              <td>
                ${dayTime(reading.at, now)}${reading.struck ? html`<span class="vh">, struck out</span>` : nothing}
              </td>
              <td>${name}</td>
              <td class="nowrap">${reading.temperature}</td>
              <td class="noprint">
                ${
                  reading.struck
                    ? html`<button
                        type="button"
                        class="btn quiet less"
                        @click=${() => this.#mark(place, { struck: false })}
                      >
                        Count it<span class="vh"> again: ${which}</span>
                      </button>`
                    : html`<button
                        type="button"
                        class="btn quiet less"
                        @click=${() => this.pad.correct(reading, place)}
                      >
                        Correct<span class="vh"> ${which}</span>
                      </button>`
                }
              </td>
            </tr>`;
          })}
        </tbody>
      </table>
    </section>`;
  }

  /** What stands in the column of the card. @param {Batch} batch */
  leaf(batch) {
    const { ok, problems } = this.ask(batch);
    if (problems) return html`<div class="block">${problemStrip(this.app, problems)}</div>`;
    if (!ok || ok.classes.length === 0) return nothing;
    if (this.stage === 'pack') {
      if (!ok.classes.some((one) => one.pulled)) return nothing;
      return [this.#doubts(batch, ok), this.pad.draw(ok), ok.classes.map((one, i) => this.#chill(one, i))];
    }
    return [this.#before(batch, ok), this.#doubts(batch, ok), this.pad.draw(ok)];
  }

  /** The picture and what it is worth. @param {Batch} batch */
  plate(batch) {
    const { ok } = this.ask(batch);
    if (!ok || ok.classes.length === 0) return nothing;
    if (this.stage === 'pack' && !ok.classes.some((one) => one.pulled)) return nothing;
    const picture = fireChart(ok, this.app.now(), this.app.settings.units);
    const care = html`<section class="block cautions">
      ${ok.cautions.map((text) => html`<p class="caution">${glue(text)}</p>`)}
    </section>`;
    if (this.stage === 'pack') return [picture, this.#after(batch, ok), this.#readings(batch, ok), care];
    const worth = ok.classes.map((one, i) => this.#worth(one, i));
    return [this.#order(ok), picture, worth, this.#rules(ok), this.#readings(batch, ok), care];
  }
}

/** Both ends of a window, each with its day where they differ. @param {[number, number, number]} window @param {number} now */
function span([low, , high], now) {
  const whole = midnight(low) !== midnight(high);
  return whole ? `${dayTime(low, now)} – ${dayTime(high, now)}` : `${clock(low)} – ${clock(high)}`;
}
