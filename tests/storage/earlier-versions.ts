import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { Grading, Range } from '../../src/grading/grading.ts';
import type { PackRecord } from '../../src/record/pack-record.ts';
import type { DefinitionReference } from '../../src/schema/definition-reference.ts';
import type { Entry } from '../../src/schema/entry.ts';
import type { Outcome } from '../../src/schema/grade.ts';
import type { Phone } from './open-test-store.ts';

/** What a database holds under each store's name: its rows. */
export type Rows = Readonly<Record<string, readonly (readonly [key: IDBValidKey, value: unknown])[]>>;

/** How an earlier version graded one of its packs. Nothing in it is rounded. */
export interface EarlierGrading
  extends Pick<
    Grading,
    'score' | 'build' | 'factor' | 'verdict' | 'settled' | 'settledShareFrac' | 'settledCount' | 'askedCount' | 'stop'
  > {
  packId: string;
  checklist: DefinitionReference;
  after: Grading['after'];
  /** By item id, the outcomes still possible. */
  items: Record<string, Outcome[]>;
  hazards: [hazardId: string, k: Range][];
}

/** Everything a version of the app left behind: see the README beside its files. Read anew each time, so free to change. */
export interface EarlierVersion {
  version: number;
  databaseNumber: number;
  bundleUrl: URL;
  bundle(): Uint8Array;
  files(): Readonly<Record<string, Uint8Array>>;
  entries(): Entry[];
  records(): PackRecord[];
  gradings(): EarlierGrading[];
  subjects(): string[];
  rows(): Rows;
}

export const EARLIER_VERSIONS: readonly EarlierVersion[] = [1, 2, 3].map(earlierVersion);

export function earlierVersion(version: number): EarlierVersion {
  const folder = new URL(`../migrations/fixtures/version-${version}/`, import.meta.url);
  const bundleUrl = new URL('bundle.zip', folder);
  const bundle = () => new Uint8Array(readFileSync(bundleUrl));
  // Unpacked without any code of ours.
  const files = () => unzipSync(bundle());
  const json = <T>(name: string) => JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as T;
  const database = () => json<{ number: number; rows: Rows }>('database.json');
  return {
    version,
    databaseNumber: database().number,
    bundleUrl,
    bundle,
    files,
    entries: () => entriesIn(files()),
    records: () => json('records.json'),
    gradings: () => json('gradings.json'),
    subjects: () => json('subjects.json'),
    rows: () => ({ ...rowsIn(files(), version), ...database().rows }),
  };
}

const textIn = (bytes: Uint8Array | undefined) => new TextDecoder().decode(bytes);

function entriesIn(files: Readonly<Record<string, Uint8Array>>): Entry[] {
  const lists = Object.entries(files).filter(([path]) => path.startsWith('entries/'));
  return lists.flatMap(([, bytes]) => JSON.parse(textIn(bytes)) as Entry[]);
}

/** The rows a bundle and a database have in common, laid out by hand as those versions kept them. */
function rowsIn(files: Readonly<Record<string, Uint8Array>>, version: number): Rows {
  const manifest = JSON.parse(textIn(files['manifest.json'])) as { files: { path: string; type: string }[] };
  const shelf = (folder: string) =>
    manifest.files
      .filter(({ path }) => path.startsWith(`${folder}/`))
      .map(
        ({ path, type }) => [path.slice(folder.length + 1, folder.length + 65), contentOf(files[path], type)] as const,
      );
  return {
    entries: entriesIn(files).map((entry) => [entry.key, entry]),
    photos: shelf('photos'),
    thumbs: shelf('thumbs'),
    originals: shelf('originals'),
    ...(version >= 2 && { logs: shelf('logs') }),
    ...(version >= 3 && { sealed: shelf('sealed') }),
    definitions: Object.entries(files)
      .filter(([path]) => path.startsWith('definitions/'))
      .map(([path, bytes]) => [path.slice(12, 76), textIn(bytes)]),
  };
}

function contentOf(bytes: Uint8Array | undefined, type: string) {
  return { type, bytes: new Uint8Array(bytes ?? []).buffer };
}

/** Makes a database as that version did: its number, its stores, keys out of line. */
export function layOut(phone: Phone, databaseNumber: number, rows: Rows): Promise<void> {
  return new Promise((resolve, reject) => {
    const request = phone.indexedDB.open('underlid', databaseNumber);
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

/** Every row of the database as it lies there, past the app, and its number. */
export function everyRow(phone: Phone): Promise<{ number: number; rows: Rows }> {
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
        resolve({ number: db.version, rows: Object.fromEntries(rows) });
      };
    };
  });
}

/** In the order of their keys, as a database gives them back. */
export function sorted(rows: Rows): Rows {
  return Object.fromEntries(
    Object.entries(rows).map(([name, list]) => [name, list.toSorted(([a], [b]) => (String(a) < String(b) ? -1 : 1))]),
  );
}
