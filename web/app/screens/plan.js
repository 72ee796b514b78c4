/** Plan back: when to begin so that everything is ready by a day, beside sleep and the hours in the blind. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { HOUSE, rests } from '../rests.js';
import { problemStrip } from '../widgets/answer.js';
import { field } from '../widgets/field.js';
import { Form } from '../widgets/form.js';
import { tagMark } from '../widgets/icon.js';
import { timeline } from '../widgets/timeline.js';
import { strip } from '../widgets/verdict.js';
import { glue } from '../../words/glue.js';
import { UNITS } from '../../words/en/names.js';
import { FIXED, PLACES, gapWords, snagWords, taskWords, ways } from '../../words/en/plan.js';
import { clock, dayTime, dayWord, isoDay, midnight } from '../../words/time.js';
import { PLACES as SCREENS } from '../../words/en/places.js';
import { ABOUT, ASK, BATCH, EMPTY, PLAN, RACKS, STEP, TITLE, WHERE, atOnce, stepper } from '../../words/en/ready-by.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Back} Back */
/** @typedef {import('../types').BackBatch} BackBatch */
/** @typedef {import('../types').BackStep} BackStep */
/** @typedef {import('../types').Hold} Hold */
/** @typedef {import('../types').Rest} Rest */

const HOUR_MS = 3_600_000;
/** The cure is on. @param {import('../types').Batch} batch */
const isOn = ({ ticks }) => ticks.some(({ of }) => of === 'rub');

/** @param {App} app @returns {import('../app.js').Screen} */
export function plan(app) {
  const form = new Form('f', 'plan');
  /** @returns {Hold[]} */
  const holds = () => JSON.parse(form.text('holds', '[]'));
  const hold = (/** @type {Hold[]} */ now) => {
    form.type('holds', JSON.stringify(now));
    app.draw();
  };
  const text = (/** @type {string} */ key) => form.text(key, { day: weekOn(app.now()), hour: '18:00' }[key]);
  /** Hours and room are of the house, so they are kept with the settings. */
  const house = () => app.settings.house ?? HOUSE;
  /** @param {Partial<import('../types').House>} part */
  const furnish = (part) => app.act(() => app.shelf.changeSettings({ house: { ...house(), ...part } }));

  function draw() {
    const open = app.shelf.open();
    const readyBy = new Date(`${text('day')}T${text('hour')}`).getTime();
    const room = WHERE.map((_, at) => Number(form.text(`room-${at}`, String(house().room[at]))));
    const good = !Number.isNaN(readyBy) && room.every((n) => Number.isInteger(n) && n >= 0 && n <= 99);
    const wish = {
      ready_by: readyBy,
      rests: rests(app.settings, app.now()),
      room: /** @type {[number, number, number]} */ (room),
      holds: holds(),
    };
    const answer =
      open.length && good
        ? ask('plan_back', {
            batches: open.map(([id, batch]) => ({ id, batch })),
            wish,
            now: app.now(),
            settings: app.settings,
          })
        : null;
    const leaf = html`<div class="leaf">
      <h1 tabindex="-1">${TITLE}</h1>
      <p class="small near">${ABOUT}</p>
      ${
        open.length
          ? nothing
          : html`<p class="block">${EMPTY.says}</p>
              <div class="gap"><a class="btn main wide" href="#/start">${EMPTY.start}</a></div>`
      }
      <div class="twofold">${moment('day', ASK.day, 'date')} ${moment('hour', ASK.hour, 'time')}</div>
      <fieldset class="field">
        <legend class="lab">${ASK.asleep}</legend>
        <div class="twofold">${time(0, ASK.from)} ${time(1, ASK.until)}</div>
      </fieldset>
      <fieldset class="field">
        <legend class="lab">${ASK.away}</legend>
        <span class="hint">${ASK.awayHint}</span>
        <div class="twofold">${time(2, ASK.from)} ${time(3, ASK.until)}</div>
      </fieldset>
      ${WHERE.map((place, at) => {
        const key = `room-${at}`;
        const label = atOnce(place);
        return field(
          form,
          {
            key,
            label,
            hint: house().racks[at] ? ASK.byArea : '',
            stored: String(house().room[at]),
            keys: 'numeric',
            stepper: stepper(label),
            look: 'small',
          },
          { typed: app.draw, left: () => keepRoom(key, at) },
        );
      })}
      <details class="block noprint" ?open=${house().racks.some(Boolean)}>
        <summary>${ASK.sizes}</summary>
        <p class="small near">${ASK.sizesFor}</p>
        ${RACKS.map(rack)}
      </details>
    </div>`;
    const plate = html`<div class="plate">
      <h2 class="low">${PLAN.head}</h2>
      ${
        answer?.ok
          ? result(answer.ok, wish.rests, readyBy)
          : answer
            ? problemStrip(app, answer.problems ?? [])
            : open.length
              ? strip('ask', PLAN.unsaid, PLAN.fill)
              : html`<p class="gap">${EMPTY.plan}</p>`
      }
    </div>`;
    return { title: TITLE, back: { href: '#/more', text: SCREENS.more }, view: [leaf, plate] };
  }

  /** @param {string} key @param {number} at */
  async function keepRoom(key, at) {
    const now = Number(form.text(key, String(house().room[at])));
    if (!Number.isInteger(now) || now < 0 || now > 99) return;
    const room = /** @type {[number, number, number]} */ (house().room.with(at, now));
    if (await furnish({ room })) form.drop(key);
    app.draw();
  }

  /** @param {number} at which of the hours @param {string} label */
  function time(at, label) {
    const id = form.id(`hours-${at}`);
    return html`<div class="field">
      <label for=${id}>${label}</label>
      <input
        id=${id}
        class="plainfield"
        type="time"
        .value=${house().hours[at] ?? ''}
        @change=${(/** @type {{ target: HTMLInputElement }} */ { target }) =>
          furnish({ hours: /** @type {[string, string, string, string]} */ (house().hours.with(at, target.value)) })}
      />
    </div>`;
  }

  /** @param {string} head @param {number} at 0 for the refrigerator, 1 for the smoker */
  function rack(head, at) {
    const racks = house().racks[at];
    const unit = UNITS[app.settings.units].length;
    const keys = { count: `count-${at}`, wide: `wide-${at}`, deep: `deep-${at}` };
    const left = async () => {
      /** @type {import('../widgets/form.js').Read[]} */
      const asked = [
        { key: keys.count, label: ASK.howMany, kind: 'count', stored: String(racks?.count ?? 1) },
        { key: keys.wide, label: ASK.wide, kind: 'length', unit, stored: racks?.wide ?? '' },
        { key: keys.deep, label: ASK.deep, kind: 'length', unit, stored: racks?.deep ?? '' },
      ];
      const none = !form.text(keys.wide, racks?.wide ?? '') && !form.text(keys.deep, racks?.deep ?? '');
      const half = !form.text(keys.wide, racks?.wide ?? '') || !form.text(keys.deep, racks?.deep ?? '');
      const read = none || half ? null : form.read(asked, app.settings.units);
      const now = read
        ? { count: Number(read[keys.count]), wide: String(read[keys.wide]), deep: String(read[keys.deep]) }
        : null;
      if (read || none) {
        const all = /** @type {import('../types').House['racks']} */ (house().racks.with(at, now));
        if (await furnish({ racks: all })) for (const key of Object.values(keys)) form.drop(key);
      }
      app.draw();
    };
    const on = { typed: app.draw, left };
    return html`<fieldset class="field">
      <legend class="lab">${head}</legend>
      ${field(
        form,
        {
          key: keys.count,
          label: ASK.howMany,
          stored: String(racks?.count ?? 1),
          keys: 'numeric',
          stepper: stepper(head),
          least: 1,
          look: 'small',
        },
        on,
      )}
      <div class="twofold">
        ${field(form, { key: keys.wide, label: ASK.wide, unit, stored: racks?.wide ?? '', look: 'small' }, on)}
        ${field(form, { key: keys.deep, label: ASK.deep, unit, stored: racks?.deep ?? '', look: 'small' }, on)}
      </div>
    </fieldset>`;
  }

  /** @param {string} key @param {string} label @param {'date' | 'time'} type */
  function moment(key, label, type) {
    const id = form.id(key);
    return html`<div class="field">
      <label for=${id}>${label}</label>
      <input
        id=${id}
        class="plainfield"
        type=${type}
        .value=${text(key)}
        @change=${(/** @type {{ target: HTMLInputElement }} */ { target }) => {
          form.type(key, target.value);
          app.draw();
        }}
      />
    </div>`;
  }

  /** @param {Back} back @param {Rest[]} rests @param {number} readyBy */
  function result(back, rests, readyBy) {
    const now = app.now();
    const word = back.fits ? PLAN.fits : PLAN.late;
    const says = back.fits
      ? back.start === null
        ? PLAN.inTime
        : PLAN.start(dayTime(back.start, now))
      : back.finish === null
        ? PLAN.below
        : PLAN.earliest(dayTime(back.finish, now));
    const planned = back.batches.filter(({ steps }) => steps.length);
    return html`${strip(back.fits ? 'ok' : 'care', word, says)}
      ${back.gap ? html`<p class="small near">${glue(gapWords(back.gap))}</p>` : nothing}
      ${planned.length ? timeline(planned, PLACES, app.shelf.batches, { rests, readyBy, now }) : nothing}
      ${back.batches.map((batch) => one(batch, now))}
      <p class="small block">${PLAN.note}</p>`;
  }

  /** @param {BackBatch} plan @param {number} now */
  function one(plan, now) {
    const batch = app.shelf.batches.get(plan.batch);
    if (!batch) return nothing;
    const held = holds().some((one) => one.batch === plan.batch);
    return html`<section class="block">
      <h3 class="tagline">${tagMark(batch.tag)} ${batch.name}</h3>
      ${plan.snag ? html`<p class="near">${snagWords(plan.snag)}</p>` : nothing}
      ${
        plan.ways.length
          ? html`<p class="near"><b>${BATCH.ways}</b></p>
              <ul class="dots">
                ${ways(plan.ways).map((way) => html`<li>${glue(way)}</li>`)}
              </ul>`
          : nothing
      }
      ${
        plan.steps.length
          ? html`<p class="near">
                ${plan.fits && plan.start !== null ? BATCH.latest(dayTime(plan.start, now)) : nothing}${
                  plan.finish === null ? nothing : BATCH[isOn(batch) ? 'ready' : 'now'](dayTime(plan.finish, now))
                }${plan.slack ? BATCH.spare(plan.slack) : nothing}
              </p>
              <ol class="days gap" aria-label=${BATCH.tasks(batch.name)}>
                ${plan.steps.map((step) => task(plan, step, now))}
              </ol>`
          : nothing
      }
      ${
        held
          ? html`<div class="gap noprint">
              <button
                type="button"
                class="btn wide"
                @click=${() => hold(holds().filter((one) => one.batch !== plan.batch))}
              >
                ${BATCH.free(batch.tag)}
              </button>
            </div>`
          : nothing
      }
    </section>`;
  }

  /** @param {BackBatch} plan @param {BackStep} step @param {number} now */
  function task(plan, step, now) {
    const put = holds().find((one) => one.batch === plan.batch && one.step === step.step);
    const to = (/** @type {number} */ at) =>
      hold([
        ...holds().filter((one) => one.batch !== plan.batch || one.step !== step.step),
        { batch: plan.batch, step: step.step, at },
      ]);
    const head = taskWords(step.task);
    const may = step.task.is !== 'turn' && !step.fixed && step.at > now;
    return html`<li class="day">
      <span class="when"
        ><span class="d">${dayWord(step.at, now)}</span><span class="num">${clock(step.at)}</span></span
      >
      <div class="job">
        <b>${head}</b>
        ${step.tended ? html`<span class="small">${STEP.tended(dayTime(step.ends, now))}</span>` : nothing}
        ${step.fixed ? html`<span class="small">${FIXED[step.fixed]}</span>` : nothing}
        ${step.moved ? html`<span class="small">${STEP.moved(dayTime(Number(step.moved), now))}</span>` : nothing}
        ${put ? html`<span class="small">${STEP.put}</span>` : nothing}
        ${
          may
            ? html`<span class="acts noprint">
                <button type="button" class="btn quiet less" @click=${() => to(step.at - HOUR_MS)}>
                  ${STEP.earlier}<span class="vh">: ${head}</span>
                </button>
                <button type="button" class="btn quiet less" @click=${() => to(step.at + HOUR_MS)}>
                  ${STEP.later}<span class="vh">: ${head}</span>
                </button>
              </span>`
            : nothing
        }
      </div>
    </li>`;
  }

  return { draw };
}

/** @param {number} now */
function weekOn(now) {
  const day = new Date(midnight(now));
  day.setDate(day.getDate() + 7);
  return isoDay(day.getTime());
}
