/**
 * Starts the page: the core, the records, then the first screen; after that, one drawing for every change.
 */
import { html, render } from 'lit-html';
import { App, wordsOf } from './app.js';
import { ask } from './ask.js';
import { isWhole, load, whole } from './core.js';
import { opensOn } from './first.js';
import { actionDrawn, guardAgainstTwice } from './guard.js';
import { speakIn } from '../words/degrees.js';
import { LOCALE, localSettings } from '../words/locale.js';
import { holdFocus } from './focus.js';
import { follow, placeOf } from './router.js';
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
  const opening = openRecords(whole);
  await load();
  const [tables, starters] = [ask('tables', {}), ask('starters', {})];
  if (!tables.ok || !starters.ok) throw new Error('The core has no tables.');
  const store = await opening;
  // A first visit answers with the first part of the core; whoever has records, or wants another screen, waits for all.
  if (!(await isFirstVisit(store)) || !asksLittle(placeOf(location.hash))) await whole();
  const shelf = new Shelf(store, localSettings(tables.ok.settings, tables.ok.profiles));
  await shelf.fill(starters.ok.recipes);

  /** @type {Screen} */
  let screen;
  const app = new App(shelf, tables.ok, starters.ok, draw);

  let broken = false;
  function draw() {
    const backToFocus = holdFocus();
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
    backToFocus();
    app.tellNews();
  }

  app.trouble = shelf.store.trouble;
  let first = true;
  let at = '';
  let id = '';
  follow((place) => {
    if (isWhole() || asksLittle(place)) return show(place);
    // The last place that was asked for while the rest of the core was on its way.
    whole()
      .catch(console.error)
      .then(() => isThere(place) && show(place));
  });

  /** @param {import('./router.js').Place} place */
  function show(place) {
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
  }

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
  const told = {
    ready(/** @type {() => void} */ reload) {
      app.update = reload;
      draw();
    },
    offline() {
      if (app.offline) return;
      app.offline = true;
      draw();
    },
  };
  everyMinute(draw);
  addEventListener('resize', settle);
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && draw());
  document.documentElement.dataset.ready = '';
  shelf.readRest().then(draw);
  // What the first part could not answer is asked again; then all is stored for the next visit.
  if (!isWhole()) await whole().then(draw, console.error);
  watchForUpdates(told);
}

/** Nothing is stored that the core would have to judge, for all that can be read. @param {import('./store.js').Store} store */
async function isFirstVisit(store) {
  return (await store.keys('')).every((key) => key.startsWith('meta/')) && !store.trouble;
}

/** The first screen needs the first part of the core alone. @param {import('./router.js').Place} place */
const asksLittle = ({ screen }) => screen === '' || screen === 'how-much';

/** @param {import('./router.js').Place} place */
const isThere = (place) => JSON.stringify(placeOf(location.hash)) === JSON.stringify(place);

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
  actionDrawn();
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
