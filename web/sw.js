/**
 * Makes the page start with no signal. The build puts in the version (a digest of all that is shipped) and the files
 * with the digest of each.
 *
 * The page is one set of files that belong together. Only bytes whose digest is known are ever stored: not what a
 * portal, a half-uploaded release or a cut line sends in their place. The old version is kept until the new one has
 * started once, and serves where it does not.
 */

// The scope is in the name, so that two copies on one host leave each other's files alone.
const PREFIX = `cure-reckoner ${self.registration.scope} `;
const CACHE = PREFIX + VERSION;
/** How often this version was opened and did not say that it had started. */
const NOTES = `${PREFIX}starts`;
const TRIES = 2;

const TYPES = {
  css: 'text/css; charset=utf-8',
  html: 'text/html; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  svg: 'image/svg+xml',
  wasm: 'application/wasm',
  webmanifest: 'application/manifest+json',
};

const addressOf = (file) => new URL(file, self.registration.scope).href;
const DIGESTS = new Map(Object.entries(FILES).map(([file, digest]) => [addressOf(file), digest]));
const INDEX = addressOf('./');

self.addEventListener('install', (event) => {
  event.waitUntil(storeAll());
});

self.addEventListener('activate', (event) => {
  event.waitUntil(self.clients.claim());
});

self.addEventListener('message', (event) => {
  const { data, ports } = event;
  if (data === 'take over') self.skipWaiting();
  // A page has started. It is of this version if its script is.
  if (typeof data?.started === 'string' && DIGESTS.has(data.started)) event.waitUntil(dropOldVersions());
  if (data === 'whole?') {
    event.waitUntil(
      storeAll().then(
        () => ports[0].postMessage(true),
        () => ports[0].postMessage(false),
      ),
    );
  }
});

self.addEventListener('fetch', (event) => {
  const { method, mode, url } = event.request;
  if (method !== 'GET' || !url.startsWith(self.registration.scope)) return;
  const address = url.replace(/[?#].*$/, '').replace(/\/index\.html$/, '/');
  event.respondWith(answer(event.request, address, mode === 'navigate'));
});

async function answer(request, address, opens) {
  if (address === INDEX && opens && (await startsBadly())) {
    const old = await ofAnOldVersion(INDEX);
    if (old) return old;
  }
  const cache = await caches.open(CACHE);
  const stored = await cache.match(address);
  if (stored) return stored;
  if (!DIGESTS.has(address)) return (await ofAnOldVersion(address)) ?? fetch(request);
  // The browser has thrown a file away. It comes again, if the right one can be had.
  try {
    return await store(cache, address);
  } catch {
    return (await ofAnOldVersion(address)) ?? Response.error();
  }
}

/** Stores every file that is not stored yet; rejects unless all of them are there. */
async function storeAll() {
  const cache = await caches.open(CACHE);
  await Promise.all([...DIGESTS.keys()].map(async (address) => (await cache.match(address)) ?? store(cache, address)));
}

/** Stores one file if its bytes are the right ones, and gives it. */
async function store(cache, address) {
  // Past the browser's own cache, or a host with a long max-age would put old files into the new version.
  const response = await fetch(new Request(address, { cache: 'reload', redirect: 'error' }));
  const bytes = await response.arrayBuffer();
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  const hex = Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
  if (!response.ok || hex !== DIGESTS.get(address)) throw new TypeError(`Not the file of this version: ${address}`);
  // What the bytes are is known from their name; a host may say something else.
  const type = TYPES[address === INDEX ? 'html' : /[^.]*$/.exec(address)[0]];
  const good = new Response(bytes, { headers: { 'content-type': type, 'content-length': String(bytes.byteLength) } });
  await cache.put(address, good.clone());
  return good;
}

async function ofAnOldVersion(address) {
  for (const name of await oldVersions()) {
    const found = await (await caches.open(name)).match(address);
    if (found) return found;
  }
}

async function oldVersions() {
  const names = await caches.keys();
  return names.filter((name) => name.startsWith(PREFIX) && name !== CACHE && name !== NOTES);
}

/** Whether this version was opened again and again and never started. Where there is no older one, it is never asked. */
async function startsBadly() {
  if ((await oldVersions()).length === 0) return false;
  const notes = await caches.open(NOTES);
  const tries = Number((await (await notes.match(CACHE))?.text()) ?? 0);
  await notes.put(CACHE, new Response(String(tries + 1)));
  return tries >= TRIES;
}

async function dropOldVersions() {
  await Promise.all([...(await oldVersions()), NOTES].map((name) => caches.delete(name)));
}
