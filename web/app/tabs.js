/**
 * Tells the other tabs of this browser that records have changed, and hears it from them.
 *
 * A page opened from a file shares its records with other tabs but gets no messages from them, so there the records
 * are read again whenever the tab comes back into view.
 */
const NAME = 'cure-reckoner';

const channel = typeof BroadcastChannel === 'function' ? new BroadcastChannel(NAME) : null;
const delivers = channel !== null && location.protocol !== 'file:';

/**
 * @param {string[]} keys the records that were written or removed
 */
export function announce(keys) {
  channel?.postMessage(keys);
}

/**
 * Calls back with the keys that another tab changed, or with null when any record may have changed.
 * @param {(keys: string[] | null) => void} heard
 * @returns {() => void} stops listening
 */
export function listen(heard) {
  const stop = new AbortController();
  const { signal } = stop;
  const anything = () => heard(null);

  channel?.addEventListener('message', (event) => heard(event.data), { signal });
  if (!delivers) {
    window.addEventListener('focus', anything, { signal });
    document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && anything(), {
      signal,
    });
  }
  // A page that the browser had put to sleep has missed its messages.
  window.addEventListener('pageshow', (event) => event.persisted && anything(), { signal });
  return () => stop.abort();
}
