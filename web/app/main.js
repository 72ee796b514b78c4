/**
 * Starts the page: the core, the records, then the first screen; after that, one drawing for every change.
 */
import { html, render } from 'lit-html';
import { App, wordsOf } from './app.js';
import { ask } from './ask.js';
import { load } from './core.js';
import { opensOn } from './first.js';
import { guardAgainstTwice } from './guard.js';
import { speakIn } from '../words/degrees.js';
import { LOCALE, localSettings } from '../words/locale.js';
import { follow } from './router.js';
import { away } from './screens/away.js';
import { bag } from './screens/bag.js';
import { batch } from './screens/batch.js';
import { brine } from './screens/brine.js';
import { dose } from './screens/dose.js';
import { edit } from './screens/edit.js';
import { help, sources } from './screens/help.js';
import { howMuch } from './screens/how-much.js';
import { keep } from './screens/keep.js';
import { more } from './screens/more.js';
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
import { failedView } from './widgets/failed.js';
import { frame } from './widgets/frame.js';
import { paintEdge } from './widgets/light.js';
import { clearPinned } from './widgets/pinned.js';
import { clearPlaces } from './widgets/places.js';
import { stick } from './widgets/stick.js';
import { FAILED, HOMES, framed, windowTitle } from '../words/en/places.js';

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
  'how-much': howMuch,
  keep,
  more,
  open,
  past,
  read,
  recipe,
  recipes,
  sources,
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
  const shelf = new Shelf(await opening, localSettings(tables.ok.settings, tables.ok.profiles));
  await shelf.fill(starters.ok.recipes);

  /** @type {Screen} */
  let screen;
  const app = new App(shelf, tables.ok, starters.ok, draw);

  let broken = false;
  function draw() {
    try {
      speakIn(app.settings.units);
      const drawn = screen.draw();
      document.title = windowTitle(drawn.title);
      if (broken) clear();
      broken = false;
      render(frame(app, drawn), root);
    } catch (error) {
      // Something stored that no rule refused and no screen can draw: the other screens go on.
      console.error(error);
      broken = true;
      clear();
      render(failedView(FAILED.screen), root);
    }
    settle();
  }

  app.trouble = shelf.store.trouble;
  let first = true;
  let at = '';
  let id = '';
  follow((place) => {
    screen?.leave?.();
    const text = HOMES[app.here];
    if (text) app.came = { href: at, text, id };
    [at, id] = [location.hash || '#/', place.id];
    app.goOn();
    app.here = place.screen || opensOn(app);
    screen = (SCREENS[app.here] ?? today)(app, place);
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
    // What could not be read can be read by now.
    if (!trouble) shelf.follow(null).then(draw);
  });
  shelf.store.onDropped((error) => {
    app.fault = wordsOf(error);
    draw();
  });
  watchForUpdates({
    ready(reload) {
      app.update = reload;
      draw();
    },
    offline() {
      if (app.offline) return;
      app.offline = true;
      draw();
    },
  });
  everyMinute(draw);
  addEventListener('resize', settle);
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

/** What goes by how large the drawn parts are. */
function settle() {
  stick();
  clearPinned();
  clearPlaces();
}

/** Takes away what is half drawn; lit-html keeps its mark on the element. */
function clear() {
  root.replaceChildren();
  delete (/** @type {any} */ (root)['_$litPart$']);
}

document.documentElement.lang = LOCALE;
paintEdge();
guardAgainstTwice();
if ('framed' in document.documentElement.dataset) {
  render(html`<main class="waiting">${framed(location.href)}</main>`, root);
} else {
  begin().catch((error) => {
    console.error(error);
    clear();
    render(failedView(FAILED.start), root);
  });
}
