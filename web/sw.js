/**
 * Makes the page start with no signal. The build puts in the version (a digest of all that is shipped) and the files.
 *
 * The page is one set of files that belong together: all of them are stored before a version counts as installed,
 * they are served from the store and never mixed with another version's.
 */

// The scope is in the name, so that two copies on one host leave each other's files alone.
const PREFIX = `cure-reckoner ${self.registration.scope} `;
const CACHE = PREFIX + VERSION;

self.addEventListener('install', (event) => {
  // Past the browser's own cache, or a host with a long max-age would put old files into the new version.
  const fresh = FILES.map((file) => new Request(file, { cache: 'reload' }));
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(fresh)));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(dropOldVersions().then(() => self.clients.claim()));
});

self.addEventListener('message', (event) => {
  if (event.data === 'take over') self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  if (event.request.method === 'GET') event.respondWith(answer(event.request));
});

async function answer(request) {
  const cache = await caches.open(CACHE);
  const address = request.url.replace(/\/index\.html(?=$|[?#])/, '/');
  return (await cache.match(address, { ignoreSearch: true })) ?? fetch(request);
}

async function dropOldVersions() {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
}
