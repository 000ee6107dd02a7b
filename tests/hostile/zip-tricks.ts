import { type Unzipped, unzipSync, zipSync } from 'fflate';
import type { Entry } from '../../src/schema/entry.ts';
import { type Forgery, forge, json } from '../storage/bundle/bench-of-packs.ts';
import { utf8 } from './hostile-file.ts';
import { SOUND_PACK, soundBundle } from './sound-bench.ts';

export const ENTRIES_PATH = `entries/${SOUND_PACK}.json`;

export const forged = async (forgery: Forgery) => forge(await soundBundle(), forgery);

export const withFile = (path: string, bytes: Uint8Array<ArrayBuffer>): Forgery => ({
  files: (files) => {
    files[path] = bytes;
  },
});

export const pathIn = (files: Unzipped, folder: string) =>
  Object.keys(files).find((path) => path.startsWith(folder)) ?? '';

/** In place of the file in this folder, under the hash of its own bytes where `named`. */
export const inPlaceOf = (folder: string, bytes: Uint8Array<ArrayBuffer>, named?: string): Forgery => ({
  files: (files) => {
    const path = pathIn(files, folder);
    delete files[path];
    files[named ?? path] = bytes;
  },
});

export const withEntries = (edit: (entries: Entry[]) => Entry[] | undefined): Forgery => ({
  files: (files) => {
    const entries = JSON.parse(new TextDecoder().decode(files[ENTRIES_PATH])) as Entry[];
    files[ENTRIES_PATH] = json(edit(entries) ?? entries);
  },
});

/** The text of the entries changed as text: for what no JSON writer would write. */
export const withEntriesText = (edit: (text: string) => string): Forgery => ({
  files: (files) => {
    files[ENTRIES_PATH] = utf8(edit(new TextDecoder().decode(files[ENTRIES_PATH])));
  },
});

/** The bundle with every file stored as it is, then changed byte by byte. */
export async function patched(
  patch: (zip: Uint8Array<ArrayBuffer>, view: DataView) => Uint8Array<ArrayBuffer> | undefined,
) {
  const zip = zipSync(unzipSync(await soundBundle()), { level: 0 }) as Uint8Array<ArrayBuffer>;
  return patch(zip, new DataView(zip.buffer)) ?? zip;
}

/** Where the nth record with these first bytes begins: local header PK 3 4, central PK 1 2 (APPNOTE.TXT 4.3.7, 4.3.12). */
export function nth(zip: Uint8Array, signature: 'local' | 'central' | Uint8Array, place: number): number {
  const bytes = typeof signature === 'string' ? [0x50, 0x4b, ...(signature === 'local' ? [3, 4] : [1, 2])] : signature;
  for (let at = 0, seen = 0; at < zip.byteLength; at += 1) {
    if (bytes.every((byte, i) => zip[at + i] === byte) && seen++ === place) return at;
  }
  throw new RangeError(`nth: must be one of the records there, got ${place}`);
}

/** Every place at which a text stands. */
export function everyPlace(zip: Uint8Array, text: string): number[] {
  const bytes = Buffer.from(text, 'latin1');
  const all = Buffer.from(zip.buffer, zip.byteOffset, zip.byteLength);
  const found: number[] = [];
  for (let at = all.indexOf(bytes); at !== -1; at = all.indexOf(bytes, at + 1)) found.push(at);
  return found;
}
