/**
 * Starts the page: the core, the records, then the first screen; after that, one drawing for every change.
 */
import { html, render } from 'lit-html';
import { App } from './app.js';
import { ask } from './ask.js';
import { load } from './core.js';
import { follow } from './router.js';
import { away } from './screens/away.js';
import { bag } from './screens/bag.js';
import { batch } from './screens/batch.js';
import { brine } from './screens/brine.js';
import { dose } from './screens/dose.js';
import { edit } from './screens/edit.js';
import { help } from './screens/help.js';
import { keep } from './screens/keep.js';
import { open } from './screens/open.js';
import { past } from './screens/past.js';
import { plan } from './screens/plan.js';
import { read } from './screens/read.js';
import { recipe } from './screens/recipe.js';
import { recipes } from './screens/recipes.js';
import { spoons } from './screens/spoons.js';
import { start } from './screens/start.js';
import { stock } from './screens/stock.js';
import { today } from './screens/today.js';
import { troubleCards } from './screens/trouble-cards.js';
import { Shelf, openRecords } from './shelf.js';
import { watchForUpdates } from './update.js';
import { frame } from './widgets/frame.js';
import { paintEdge } from './widgets/light.js';
import { stick } from './widgets/stick.js';

/** @typedef {import('./app.js').Screen} Screen */

/** @type {Record<string, (app: App, place: import('./router.js').Place) => Screen>} */
const SCREENS = {
  away,
  bag,
  batch,
  brine,
  dose,
  edit,
  help,
  keep,
  open,
  past,
  read,
  recipe,
  recipes,
  spoons,
  start,
  stock,
  today,
  plan,
  cards: troubleCards,
};
const MINUTE_MS = 60_000;

const root = /** @type {HTMLElement} */ (document.getElementById('page'));

async function begin() {
  // The store opens while the core is made ready and gives its tables.
  const ready = load();
  const opening = openRecords(ready);
  await ready;
  const [tables, starters] = [ask('tables', {}), ask('starters', {})];
  if (!tables.ok || !starters.ok) throw new Error('The core has no tables.');
  const shelf = new Shelf(await opening, tables.ok.settings);
  await shelf.fill(starters.ok.recipes);

  /** @type {Screen} */
  let screen;
  const app = new App(shelf, tables.ok, starters.ok, draw);

  function draw() {
    const drawn = screen.draw();
    document.title = `${drawn.title} · Cure Reckoner`;
    render(frame(app, drawn), root);
    stick();
  }

  app.trouble = shelf.store.trouble;
  let first = true;
  follow((place) => {
    screen?.leave?.();
    app.goOn();
    screen = (SCREENS[place.screen] ?? today)(app, place);
    // A new screen starts from nothing, so that no field of the old one lives on in it.
    if (!first) render(html``, root);
    else root.replaceChildren();
    draw();
    scrollTo(0, 0);
    if (!first) /** @type {HTMLElement | null} */ (root.querySelector('h1'))?.focus({ preventScroll: true });
    first = false;
    screen.arrive?.();
  });

  shelf.store.onChange((keys) => shelf.follow(keys).then(draw));
  shelf.store.onTrouble((trouble) => {
    app.trouble = trouble;
    draw();
  });
  watchForUpdates((reload) => {
    app.update = reload;
    draw();
  });
  everyMinute(draw);
  addEventListener('resize', stick);
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && draw());
  document.documentElement.dataset.ready = '';
  shelf.readRest().then(draw);
}

/**
 * On the full minute, for the clock.
 * @param {() => void} act
 */
function everyMinute(act) {
  setTimeout(
    () => {
      act();
      everyMinute(act);
    },
    MINUTE_MS - (Date.now() % MINUTE_MS),
  );
}

paintEdge();
begin().catch((error) => {
  console.error(error);
  render(
    html`<main class="waiting">
      <h1>Cure Reckoner did not start</h1>
      <p>${String(error)}</p>
      <p>Reload the page. What is kept in this browser is not touched.</p>
    </main>`,
    root,
  );
});
