/**
 * Chromium keeps all databases of a page in one store with one log. Where a disk was full, or the power went in the middle
 * of a write, half an entry is left at the end of that log; Chromium goes on behind it, takes it for damage at its next
 * start but one, and throws all of the records away. Deleting a database has it write down what the log holds and begin a
 * new one, so an empty one is made and deleted: at the start, and before anything is written again after a write that
 * failed. Any entry behind half of one does the harm, so whether there is room is tried elsewhere first.
 */

const NAME = 'cure-reckoner-log';
/** More than what is in the log by then, written down. */
const ROOM = 2_000_000;

/**
 * Rejects where there is no room for a new log.
 * @returns {Promise<void>}
 */
export async function freshLog() {
  // Only Chromium has this of the navigator, and no other engine keeps such a log.
  if (!('userAgentData' in navigator) || typeof indexedDB === 'undefined') return;
  await tryRoom();
  const opening = indexedDB.open(NAME, 1);
  await done(opening);
  opening.result.close();
  // Where another tab is at the same, the browser deletes it once both have let go.
  await done(indexedDB.deleteDatabase(NAME));
}

async function tryRoom() {
  try {
    const cache = await caches.open(NAME);
    await cache.put(`https://${NAME}.invalid/`, new Response(new Uint8Array(ROOM)));
  } catch (error) {
    // The single file has no caches, and goes without this.
    if (error instanceof DOMException && error.name !== 'SecurityError') throw error;
  } finally {
    await globalThis.caches?.delete(NAME).catch(() => {});
  }
}

/**
 * @param {IDBOpenDBRequest} request
 * @returns {Promise<void>}
 */
function done(request) {
  return new Promise((resolve, reject) => {
    request.onsuccess = request.onblocked = () => resolve();
    request.onerror = () => reject(request.error);
  });
}
