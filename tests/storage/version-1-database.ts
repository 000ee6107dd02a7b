import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { Entry } from '../../src/schema/entry.ts';
import type { Phone } from './open-test-store.ts';

/** A bundle of the two demo packs as version 1 wrote it; see tests/migrations/fixtures/version-1/README.md. */
export const VERSION_1_BUNDLE = new URL('../migrations/fixtures/version-1/demo-bench.zip', import.meta.url);

export const VERSION_1_DEVICE = '0123456789abcdef0123456789abcdef';
export const VERSION_1_CLOCK = `001795615920000.000000.${VERSION_1_DEVICE}`;

/** What a database of version 1 held under each store's name: key as text → value. */
export type Rows = Readonly<Record<string, readonly (readonly [key: IDBValidKey, value: unknown])[]>>;

/** The files of the bundle as version 1 wrote them, unpacked without any code of ours. */
export function version1Files(): Readonly<Record<string, Uint8Array>> {
  return unzipSync(new Uint8Array(readFileSync(VERSION_1_BUNDLE)));
}

export function version1Entries(): Entry[] {
  const files = Object.entries(version1Files()).filter(([path]) => path.startsWith('entries/'));
  return files.flatMap(([, bytes]) => JSON.parse(new TextDecoder().decode(bytes)) as Entry[]);
}

/** Every row of a version-1 phone with those two packs: by hand from the layout that version had. */
export function version1Rows(): Rows {
  const entries = version1Entries();
  const packIds = [...new Set(entries.map(({ key }) => key[0]))];
  const answer = entries.find(({ key, why }) => key[1] === 'answer' && why === 'measured again');
  if (answer === undefined) throw new Error('the fixture has an answer that was measured again');
  return {
    entries: entries.map((entry) => [entry.key, entry]),
    cards: packIds.map((packId) => [packId, { packId, demo: true, name: 'Wren 24' }]),
    photos: pictures('photos'),
    thumbs: pictures('thumbs'),
    originals: [],
    definitions: Object.entries(version1Files())
      .filter(([path]) => path.startsWith('definitions/'))
      .map(([path, bytes]) => [path.slice(12, 76), new TextDecoder().decode(bytes)]),
    undo: [[[answer.key[0], answer.at], { label: 'measured again', rows: [{ before: null, after: answer }] }]],
    uses: entries.filter(({ key }) => key[1] === 'photo').map(({ key }) => [[key[2], key[0]], 0]),
    kept: [['lastPack', answer.key[0]]],
    device: [
      ['clock', VERSION_1_CLOCK],
      ['deviceId', VERSION_1_DEVICE],
    ],
  };
}

function pictures(folder: string): [IDBValidKey, unknown][] {
  const files = Object.entries(version1Files()).filter(([path]) => path.startsWith(`${folder}/`));
  return files.map(([path, bytes]) => [path.slice(-68, -4), { type: 'image/jpeg', bytes: bytes.slice().buffer }]);
}

/** Makes a database as version 1 did: number 1001, ten stores, keys out of line. */
export function layOutVersion1(phone: Phone, rows: Rows): Promise<void> {
  return new Promise((resolve, reject) => {
    const request = phone.indexedDB.open('underlid', 1001);
    request.onerror = () => reject(request.error);
    request.onupgradeneeded = () => {
      for (const [name, list] of Object.entries(rows)) {
        const store = request.result.createObjectStore(name);
        for (const [key, value] of list) store.put(value, key);
      }
    };
    request.onsuccess = () => {
      request.result.close();
      resolve();
    };
  });
}

/** Every row of the database as it lies there, its number, and the names of its stores. */
export function everyRow(phone: Phone): Promise<{ version: number; rows: Rows }> {
  return new Promise((resolve, reject) => {
    const request = phone.indexedDB.open('underlid');
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      const db = request.result;
      const names = [...db.objectStoreNames];
      const tx = db.transaction(names);
      const lists = names.map((name) => ({
        name,
        keys: tx.objectStore(name).getAllKeys(),
        values: tx.objectStore(name).getAll(),
      }));
      tx.oncomplete = () => {
        db.close();
        const rows = lists.map(({ name, keys, values }): [string, [IDBValidKey, unknown][]] => [
          name,
          keys.result.map((key, i) => [key, values.result[i]]),
        ]);
        resolve({ version: db.version, rows: Object.fromEntries(rows) });
      };
    };
  });
}
