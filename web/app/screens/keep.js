/** Settings and backup: units, scale, rule, light; the file with everything in it; what this page is. */
import { html, nothing } from 'lit-html';
import { lastExport } from '../backup.js';
import { icon } from '../widgets/icon.js';
import { LIGHTS, lightNow, setLight } from '../widgets/light.js';
import { pick } from '../widgets/pick.js';
import { Transfer } from '../widgets/transfer.js';
import { strip } from '../widgets/verdict.js';
import { count, statusWords } from '../words/names.js';
import { recordName } from '../words/record.js';
import { clock, fullDate } from '../words/time.js';

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
      <h1 tabindex="-1">Settings and backup</h1>
      ${pick(
        {
          name: 'units',
          legend: 'Units',
          hint: 'What you typed stays as it was; only what is shown changes.',
          options: [
            ['metric', 'Metric'],
            ['us', 'US'],
          ],
          value: settings.units,
        },
        (units) => change({ units }),
      )}
      ${pick(
        {
          name: 'scale',
          legend: 'The smallest step your scale shows',
          look: 'tight',
          hint: 'Everything is rounded to it, cure always downward.',
          options: tables.scale_steps.map((step) => [step, step]),
          value: settings.scale_step,
        },
        (scale_step) => change({ scale_step }),
      )}
      ${pick(
        {
          name: 'profile',
          legend: 'Whose limits judge a dose',
          look: 'long',
          options: tables.profiles.map(({ key, name }) => [key, name]),
          value: settings.profile,
        },
        (profile) => change({ profile }),
      )}
      ${profile ? html`<p class="src">${profile.source} (${statusWords(profile.status)})</p>` : nothing}
      ${pick({ name: 'light', legend: 'Light', options: LIGHTS, value: lightNow() }, (light) => {
        setLight(light);
        app.draw();
      })}
    </div>`;
    const plate = html`<div class="plate">
      <div class="stick">
        <h2>Everything as one file</h2>
        <p class="near">
          Recipes and batches are kept in this browser only. A browser can lose them: the file is your copy.
        </p>
        <p class="near">
          ${
            last
              ? html`Last export: <b>${fullDate(Date.parse(last))}, ${clock(Date.parse(last))}</b>.`
              : html`<b>Nothing has been exported from this browser yet.</b>`
          }
          Here are ${count(app.shelf.recipes.size, 'recipe')} and ${count(app.shelf.size, 'batch', 'batches')}.
        </p>
        ${transfer.draw()} ${setAside()} ${storage()} ${about()}
      </div>
    </div>`;
    return { title: 'Settings and backup', back: { href: '#/more', text: 'More' }, view: [leaf, plate] };
  }

  function setAside() {
    if (aside.length === 0) return nothing;
    return html`<section class="block">
      <h3>Set aside, since they could not be read</h3>
      <ul class="rows">
        ${aside.map(({ key, reason, raw }) => html`<li><b>${recordName(key, raw?.data)}</b><br /><span class="small">${reason}</span></li>`)}
      </ul>
      <p class="small near">
        Nothing of them is deleted. They go into the exported file, and come back if a later version can read them.
      </p>
    </section>`;
  }

  function storage() {
    const { trouble } = app;
    return html`<section class="block">
      <h3>Storage</h3>
      ${
        trouble
          ? html`<div class="gap">
              ${strip('stop', 'Not kept', trouble.message, html`<div class="acts"><button type="button" class="btn less" @click=${() => app.shelf.store.retry()}>${trouble.kind === 'cleared' ? 'Put it back' : 'Try again'}</button></div>`)}
            </div>`
          : html`<p class="near flag ok">${icon('s-ok', '')}Every change is stored as it is made.</p>
              <p class="small near">
                ${
                  persistent
                    ? 'The browser has promised not to clear it to make room.'
                    : 'The browser may clear it to make room. Export the file from time to time.'
                }
              </p>`
      }
    </section>`;
  }

  function about() {
    return html`<section class="block">
      <h3>About</h3>
      <p class="near">
        Cure Reckoner works wholly in this browser. It asks no server for anything and sends nothing anywhere.
      </p>
      <p class="near">
        Its figures come from published rules, handbooks and tables; the source stands beside each. Your local code and
        your food-safety authority decide, not this page.
      </p>
      <p class="small near">
        ${
          app.update
            ? html`A new version is ready.
                <button type="button" class="btn quiet less" @click=${app.update}>Reload</button>`
            : location.protocol === 'file:'
              ? 'This is the one-file edition. A new version is a new file; export first, then import there if it asks.'
              : 'New versions announce themselves at the head of the page.'
        }
      </p>
      ${
        location.protocol === 'file:'
          ? html`<p class="small near" data-one-file>
              In some browsers other pages that are opened from a file on this device can read what this one keeps. Open
              no file here that you do not trust, or use the hosted page instead: no other page can read its records.
            </p>`
          : html`<p class="small near">
              ${app.offline ? 'Ready offline: it starts with no signal.' : 'Not ready offline yet: it still needs the network to start.'}
            </p>`
      }
      <p class="small near" data-release>Version ${RELEASE}</p>
    </section>`;
  }

  return { draw, arrive: look };
}
