/**
 * Offline start and new versions. Only the hosted build has a service worker.
 */

/** Time after which the page reloads even if the new worker never says that it took over. */
const PATIENCE_MS = 2000;

/**
 * Registers the worker and calls back when a new version lies ready. The screens then draw "new version: reload or
 * later"; `reload` is for the button. "Later" needs no call: the new version starts with the next visit.
 * @param {(reload: () => void) => void} ready
 * @returns {Promise<void>} settles when registered; a browser that refuses workers is not an error
 */
export async function watchForUpdates(ready) {
  if (!HOSTED || !('serviceWorker' in navigator)) return;
  const registration = await navigator.serviceWorker
    .register('sw.js', { updateViaCache: 'none' })
    .catch((error) => void console.warn('The page will not start offline:', error));
  if (!registration) return;

  /** @param {ServiceWorker | null} worker */
  const offer = (worker) => {
    // With no controller this is the first visit: the page that runs is the page that was stored.
    if (worker?.state === 'installed' && navigator.serviceWorker.controller) ready(() => take(worker));
  };
  offer(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const worker = registration.installing;
    worker?.addEventListener('statechange', () => offer(worker));
  });

  const look = () => document.visibilityState === 'visible' && registration.update().catch(() => {});
  look();
  document.addEventListener('visibilitychange', look);
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
