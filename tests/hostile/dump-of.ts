import { createHash } from 'node:crypto';
import type { Phone } from '../storage/open-test-store.ts';

/** Every object store of a phone with every key and every byte, and the note outside, as one text. */
export async function dumpOf({ indexedDB, marker }: Pick<Phone, 'indexedDB' | 'marker'>): Promise<string> {
  const lines: string[] = [`outside ${marker.text}`];
  for (const { name } of await indexedDB.databases()) {
    const db = await asked<IDBDatabase>(indexedDB.open(name ?? ''));
    for (const store of [...db.objectStoreNames].sort()) {
      const shelf = db.transaction(store).objectStore(store);
      const [keys, values] = await Promise.all([asked(shelf.getAllKeys()), asked<unknown[]>(shelf.getAll())]);
      for (const [place, key] of keys.entries()) lines.push(`${store} ${JSON.stringify(key)} ${textOf(values[place])}`);
    }
    db.close();
  }
  return lines.join('\n');
}

function textOf(value: unknown): string {
  return JSON.stringify(value, (_, part: unknown) =>
    Object.prototype.toString.call(part) === '[object ArrayBuffer]'
      ? createHash('sha256')
          .update(new Uint8Array(part as ArrayBuffer))
          .digest('hex')
      : part,
  );
}

function asked<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}
