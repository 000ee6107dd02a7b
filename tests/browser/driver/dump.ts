import type { Page } from 'playwright-core';

/** Every object store with every key and value (bytes as their SHA-256), and all of localStorage, as one text. */
export function dumpOf(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const asked = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await asked(indexedDB.open('underlid'));
    const lines: string[] = [];
    for (const store of [...db.objectStoreNames].sort()) {
      const shelf = db.transaction(store).objectStore(store);
      const [keys, values] = await Promise.all([asked(shelf.getAllKeys()), asked<unknown[]>(shelf.getAll())]);
      for (const [place, key] of keys.entries()) {
        const bytes: ArrayBuffer[] = [];
        const text = JSON.stringify(values[place], (_, part: unknown) =>
          part instanceof ArrayBuffer ? `bytes ${bytes.push(part)}` : part,
        );
        const hashes = await Promise.all(bytes.map((one) => crypto.subtle.digest('SHA-256', one)));
        const hex = hashes.map((hash) => [...new Uint8Array(hash)].map((byte) => byte.toString(16)).join('.'));
        lines.push(`${store} ${JSON.stringify(key)} ${text} ${hex.join()}`);
      }
    }
    db.close();
    const outside = Object.keys(localStorage).sort().map((name) => `${name} ${localStorage.getItem(name)}`); // biome-ignore format: one line
    return [...lines, ...outside].join('\n');
  });
}
