/** Settings and backup: units, scale, rule, light; the file with everything in it; what this page is. */
import { html, nothing } from 'lit-html';
import { lastExport } from '../backup.js';
import { icon } from '../widgets/icon.js';
import { LIGHTS, lightNow, setLight } from '../widgets/light.js';
import { pick } from '../widgets/pick.js';
import { Transfer } from '../widgets/transfer.js';
import { strip } from '../widgets/verdict.js';
import { PROFILES } from '../../words/en/profiles.js';
import { statusWords } from '../../words/en/names.js';
import { recordName } from '../../words/en/record.js';
import { clock, fullDate } from '../../words/time.js';
import { COPY, dayAndTime } from '../../words/en/backup.js';
import { PLACES, PRESS } from '../../words/en/places.js';
import { ABOUT, ASIDE, SET, STORAGE, TITLE } from '../../words/en/settings.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../store.js').Aside} Aside */

/** @param {App} app @returns {import('../app.js').Screen} */
export function keep(app) {
  const transfer = new Transfer(app, look);
  /** @type {Aside[]} */
  let aside = [];
  /** @type {string | null} */
  let last = null;
  let persistent = false;

  async function look() {
    [aside, last, persistent] = await Promise.all([
      app.shelf.store.aside(),
      lastExport(app.shelf.store),
      navigator.storage?.persisted?.().catch(() => false) ?? false,
    ]);
    app.draw();
  }

  function draw() {
    const { settings, tables } = app;
    const profile = tables.profiles.find(({ key }) => key === settings.profile);
    const change = (/** @type {Partial<typeof settings>} */ part) => app.act(() => app.shelf.changeSettings(part));
    const leaf = html`<div class="leaf">
      <h1 tabindex="-1">${TITLE}</h1>
      ${pick(
        {
          name: 'units',
          legend: SET.units,
          hint: SET.unitsHint,
          options: [
            ['metric', SET.metric],
            ['us', SET.us],
          ],
          value: settings.units,
        },
        (units) => change({ units }),
      )}
      ${pick(
        {
          name: 'scale',
          legend: SET.scale,
          look: 'tight',
          hint: SET.scaleHint,
          options: tables.scale_steps.map((step) => [step, step]),
          value: settings.scale_step,
        },
        (scale_step) => change({ scale_step }),
      )}
      ${pick(
        {
          name: 'profile',
          legend: SET.rule,
          look: 'long',
          options: tables.profiles.map(({ key }) => [key, PROFILES[key]]),
          value: settings.profile,
        },
        (profile) => change({ profile }),
      )}
      ${profile ? html`<p class="src">${profile.source} (${statusWords(profile.status)})</p>` : nothing}
      ${pick({ name: 'light', legend: SET.light, options: LIGHTS, value: lightNow() }, (light) => {
        setLight(light);
        app.draw();
      })}
    </div>`;
    const plate = html`<div class="plate">
      <div class="stick">
        <h2>${COPY.head}</h2>
        <p class="near">${COPY.why}</p>
        <p class="near">
          ${last ? COPY.last(dayAndTime(fullDate(Date.parse(last)), clock(Date.parse(last)))) : COPY.never}
          ${COPY.here(app.shelf.recipes.size, app.shelf.size)}
        </p>
        ${transfer.draw()} ${setAside()} ${storage()} ${about()}
      </div>
    </div>`;
    return { title: TITLE, back: { href: '#/more', text: PLACES.more }, view: [leaf, plate] };
  }

  function setAside() {
    if (aside.length === 0) return nothing;
    return html`<section class="block">
      <h3>${ASIDE.head}</h3>
      <ul class="rows">
        ${aside.map(({ key, reason, raw }) => html`<li><b>${recordName(key, raw?.data)}</b><br /><span class="small">${reason}</span></li>`)}
      </ul>
      <p class="small near">${ASIDE.says}</p>
    </section>`;
  }

  function storage() {
    const { trouble } = app;
    return html`<section class="block">
      <h3>${STORAGE.head}</h3>
      ${
        trouble
          ? html`<div class="gap">
              ${strip('stop', STORAGE.notStored, trouble.message, html`<div class="acts"><button type="button" class="btn less" @click=${() => app.shelf.store.retry()}>${trouble.kind === 'cleared' ? PRESS.putBack : PRESS.again}</button></div>`)}
            </div>`
          : html`<p class="near flag ok">${icon('s-ok', '')}${STORAGE.stored}</p>
              <p class="small near">${persistent ? STORAGE.promised : STORAGE.mayClear}</p>`
      }
    </section>`;
  }

  function about() {
    return html`<section class="block">
      <h3>${ABOUT.head}</h3>
      <p class="near">${ABOUT.here}</p>
      <p class="near">${ABOUT.figures}</p>
      <p class="small near">
        ${
          app.update
            ? html`${ABOUT.newVersion}
                <button type="button" class="btn quiet less" @click=${app.update}>${PRESS.reload}</button>`
            : location.protocol === 'file:'
              ? ABOUT.oneFile
              : ABOUT.announced
        }
      </p>
      ${
        location.protocol === 'file:'
          ? html`<p class="small near" data-one-file>${ABOUT.others}</p>`
          : html`<p class="small near">${app.offline ? ABOUT.offline : ABOUT.online}</p>`
      }
      <p class="small near" data-release>${ABOUT.version(RELEASE)}</p>
    </section>`;
  }

  return { draw, arrive: look };
}
