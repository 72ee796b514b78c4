/** Keeps the screen awake while a list is worked with wet hands, where the browser allows it. */

/** @returns {() => void} lets the screen sleep again */
export function stayAwake() {
  /** @type {WakeLockSentinel | null} */
  let lock = null;
  let over = false;
  // The browser drops the lock when the page is out of sight.
  const ask = async () => {
    if (over || document.visibilityState !== 'visible') return;
    lock = (await navigator.wakeLock?.request('screen').catch(() => null)) ?? null;
    if (over) lock?.release();
  };
  document.addEventListener('visibilitychange', ask);
  ask();
  return () => {
    over = true;
    document.removeEventListener('visibilitychange', ask);
    lock?.release();
  };
}
