/**
 * A worker that removes itself. Not part of the build.
 *
 * Should a published worker ever be broken, put this file in its place on the host, under the name sw.js. Each
 * visitor's browser fetches it with the next visit, drops the stored files, and loads the page from the host again.
 * Records are not touched: they are in IndexedDB, not in the cache.
 */
self.addEventListener('install', () => self.skipWaiting());

self.addEventListener('activate', (event) => {
  event.waitUntil(retire());
});

async function retire() {
  const names = await caches.keys();
  const ours = names.filter((name) => name.startsWith(`cure-reckoner ${self.registration.scope} `));
  await Promise.all(ours.map((name) => caches.delete(name)));
  await self.registration.unregister();
  for (const page of await self.clients.matchAll({ type: 'window' })) page.navigate(page.url);
}
