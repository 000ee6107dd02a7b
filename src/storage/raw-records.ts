import { promisifyRequest } from 'idb-keyval';

/**
 * Every entry and every checklist exactly as stored, as one JSON text: for records that this version cannot open. It
 * opens the database at whatever version it has and only reads. Photos, logs and voice notes are left out; they stay
 * where they are.
 *
 * Throws  if there is no such database or it cannot be read.
 */
export async function rawRecords(
  factory: IDBFactory = indexedDB,
  name = 'underlid',
): Promise<{ text: string; entryCount: number }> {
  const db = await openAsItIs(factory, name);
  try {
    const has = (store: string) => db.objectStoreNames.contains(store);
    const entries = has('entries') ? await promisifyRequest<unknown[]>(reading(db, 'entries').getAll()) : [];
    const definitions: Record<string, unknown> = {};
    if (has('definitions')) {
      const shelf = reading(db, 'definitions');
      const [keys, texts] = await Promise.all([
        promisifyRequest(shelf.getAllKeys()),
        promisifyRequest<unknown[]>(shelf.getAll()),
      ]);
      keys.forEach((key, i) => {
        definitions[String(key)] = texts[i];
      });
    }
    const raw = { format: 'underlid-raw-records', databaseVersion: db.version, entries, definitions };
    return { text: JSON.stringify(raw, null, 1), entryCount: entries.length };
  } finally {
    db.close();
  }
}

function reading(db: IDBDatabase, store: string): IDBObjectStore {
  return db.transaction(store, 'readonly').objectStore(store);
}

function openAsItIs(factory: IDBFactory, name: string): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = factory.open(name);
    // Asked without a version, a database that is not there would be made.
    request.onupgradeneeded = () => request.transaction?.abort();
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}
