/**
 * Offline start and new versions. Only the hosted build has a service worker.
 */

/** Time after which the page reloads even if the new worker never says that it took over. */
const PATIENCE_MS = 2000;
/** A first visit that could not be stored is tried again by itself: so soon at first, then after twice as long each time. */
const AGAIN_MS = 2000;
const SELDOM_MS = 60_000;
/** The browser lets a policy make addresses of code; this one makes a single address. */
const CODE = { createScriptURL: () => 'sw.js' };

/**
 * Registers the worker and calls back when a new version lies ready. The screens then draw "new version: reload or
 * later"; `reload` is for the button. "Later" needs no call: the new version starts with the next visit.
 * @param {object} told
 * @param {(reload: () => void) => void} told.ready
 * @param {() => void} told.offline the page starts without a signal from now on
 * @returns {Promise<void>} settles when registered; a browser that refuses workers is not an error
 */
export async function watchForUpdates({ ready, offline }) {
  if (!HOSTED || !('serviceWorker' in navigator)) return;
  const { serviceWorker } = navigator;
  const trusted = /** @type {any} */ (globalThis).trustedTypes?.createPolicy('cure-reckoner', CODE) ?? CODE;

  /** @param {ServiceWorker | null} worker */
  const offer = (worker) => {
    // With no controller this is the first visit: the page that runs is the page that was stored.
    if (worker?.state === 'installed' && serviceWorker.controller) ready(() => take(worker));
  };
  /** @type {ServiceWorkerRegistration | null} */
  let watched = null;
  let pause = AGAIN_MS;

  /** @param {ServiceWorkerRegistration} registration @param {ServiceWorker | null} worker */
  const follow = (registration, worker) =>
    worker?.addEventListener('statechange', () => {
      offer(worker);
      if (worker.state === 'activated') settle();
      // Several visits may share one attempt, and a later one its failure.
      if (worker.state === 'redundant' && !registration.active) {
        setTimeout(look, pause);
        pause = Math.min(2 * pause, SELDOM_MS);
      }
    });

  // A first attempt may have met a portal or a half-uploaded release: it is made again whenever the page is looked at
  // or the network comes back, and so is the look for a new version.
  const look = async () => {
    if (document.visibilityState !== 'visible') return;
    const registration = await serviceWorker
      .register(trusted.createScriptURL('sw.js'), { updateViaCache: 'none' })
      .catch((error) => void console.warn('The page will not start offline:', error));
    if (!registration) return;
    if (watched !== registration) {
      watched = registration;
      offer(registration.waiting);
      // One that an earlier visit began may be on its way already.
      follow(registration, registration.installing);
      registration.addEventListener('updatefound', () => follow(registration, registration.installing));
    }
    await registration.update().catch(() => {});
    await settle();
  };
  const settle = async () => {
    const worker = serviceWorker.controller;
    if (worker?.state === 'activating') worker.addEventListener('statechange', settle, { once: true });
    if (worker?.state !== 'activated') return;
    worker.postMessage({ started: import.meta.url });
    if (await whole(worker)) offline();
  };

  serviceWorker.addEventListener('controllerchange', settle);
  document.addEventListener('visibilitychange', look);
  addEventListener('online', look);
  await look();
}

/** @param {ServiceWorker} worker @returns {Promise<boolean>} whether it has all files of the page */
function whole(worker) {
  return new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => done(data === true);
    worker.postMessage('whole?', [port2]);
  });
}

/** @param {ServiceWorker} worker */
function take(worker) {
  let asked = false;
  const go = () => {
    if (asked) return;
    asked = true;
    whenNobodyTypes(() => location.reload());
  };
  navigator.serviceWorker.addEventListener('controllerchange', go, { once: true });
  setTimeout(go, PATIENCE_MS);
  worker.postMessage('take over');
}

/** @param {() => void} then */
function whenNobodyTypes(then) {
  const field = document.activeElement;
  if (field instanceof HTMLElement && field.matches('input, textarea, select, [contenteditable]')) {
    // The field stores what was typed when it is left, so the reload waits one turn for that.
    field.addEventListener('blur', () => setTimeout(() => whenNobodyTypes(then)), { once: true });
  } else {
    then();
  }
}
