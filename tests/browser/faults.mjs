// What a browser, another tab or a failing core can do to the page. Each runs in the page itself.

/** In a page: works on the database as another page would. */
export function harm(what) {
  return new Promise((done, failed) => {
    if (what === 'delete') {
      const request = indexedDB.deleteDatabase('cure-reckoner');
      request.onsuccess = () => done();
      request.onerror = () => failed(request.error);
      return;
    }
    const request = indexedDB.open('cure-reckoner', what === 'raise' ? 2 : undefined);
    request.onupgradeneeded = ({ target }) => target.result.createObjectStore('shelves');
    request.onerror = () => failed(request.error);
    request.onsuccess = ({ target }) => {
      const db = target.result;
      if (what === 'raise') return (db.close(), done());
      const tx = db.transaction('records', 'readwrite');
      tx.objectStore('records').clear();
      tx.oncomplete = () => (db.close(), done());
    };
  });
}

/** While `trap` is set, every instance of the core traps at every question. */
export function trapped() {
  const guarded = ({ exports }) => ({
    exports: {
      ...exports,
      reckon(...asked) {
        if (globalThis.trap) throw new WebAssembly.RuntimeError('unreachable');
        return exports.reckon(...asked);
      },
    },
  });
  const { instantiateStreaming, Instance } = WebAssembly;
  WebAssembly.instantiateStreaming = async (...given) => {
    const { instance, module } = await instantiateStreaming(...given);
    return { instance: guarded(instance), module };
  };
  WebAssembly.Instance = function (...given) {
    return guarded(new Instance(...given));
  };
}
