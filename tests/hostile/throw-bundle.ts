import { createHash } from 'node:crypto';
import { type Unzipped, unzipSync, zipSync } from 'fflate';
import { BYTE_CHANGES } from './change-bytes.ts';
import { changedJson } from './change-json.ts';
import type { Dice } from './dice.ts';
import { utf8 } from './hostile-file.ts';
import { ENTRIES_PATH } from './zip-tricks.ts';

type Bytes = Uint8Array<ArrayBuffer>;
type Listed = { path: string; byteCount: number; sha256: string };

const PATHS = [
  '../x',
  '/x',
  'a\\b',
  'photos/x.jpg',
  'logs/x',
  'entries/x.json',
  'MANIFEST.JSON',
  './manifest.json',
  'x'.repeat(201),
  'a/b/c/d/e',
];
/** Numbers that a header of a zip may hold anywhere. */
const FIELDS = [0, 1, 7, 8, 9, 99, 0x41, 0x7fff, 0xffff, 0x7fff_ffff, 0xffff_fffe, 0xffff_ffff];

const textOf = (bytes: Uint8Array | undefined) => new TextDecoder().decode(bytes);

/** Ways to make a hostile bundle out of a sound one. */
export const BUNDLE_CHANGES: Readonly<Record<string, (sound: Bytes, dice: Dice) => Bytes>> = {
  entries: (sound, dice) => rewritten(sound, dice, (files) => {
    const entries = JSON.parse(textOf(files[ENTRIES_PATH])) as unknown[];
    const at = dice.below(entries.length);
    entries[at] = changedJson(entries[at], dice);
    files[ENTRIES_PATH] = utf8(JSON.stringify(entries));
  }),
  entryValues: (sound, dice) => rewritten(sound, dice, (files) => {
    const entries = JSON.parse(textOf(files[ENTRIES_PATH])) as { v: unknown }[];
    for (let times = 1 + dice.below(3); times > 0; times -= 1) {
      const entry = dice.of(entries);
      entry.v = changedJson(entry.v, dice);
    }
    files[ENTRIES_PATH] = utf8(JSON.stringify(entries));
  }),
  entryLists: (sound, dice) => rewritten(sound, dice, (files) => {
    const entries = JSON.parse(textOf(files[ENTRIES_PATH])) as unknown[];
    const [from, to] = [dice.below(entries.length), dice.below(entries.length)];
    const way = dice.below(3);
    if (way === 0) entries.splice(from, 1 + dice.below(20));
    if (way === 1) entries.push(entries[from]);
    if (way === 2) entries[from] = entries[to];
    files[ENTRIES_PATH] = utf8(JSON.stringify(entries));
  }),
  entryTexts: (sound, dice) => rewritten(sound, dice, (files) => {
    files[ENTRIES_PATH] = changedBytes(files[ENTRIES_PATH], dice);
  }),
  files: (sound, dice) => rewritten(sound, dice, (files) => {
    const path = dice.of(Object.keys(files));
    const other = dice.of(Object.keys(files));
    const now = files[path] ?? utf8('');
    const way = dice.below(4);
    if (way === 0) delete files[path];
    if (way === 1) files[dice.of(PATHS)] = now;
    if (way === 2) files[path] = files[other] ?? now;
    if (way === 3) files[path] = changedBytes(now, dice);
  }),
  definitions: (sound, dice) => rewritten(sound, dice, (files) => {
    const path = Object.keys(files).find((name) => name.startsWith('definitions/')) ?? '';
    const text = utf8(JSON.stringify(changedJson(JSON.parse(textOf(files[path])), dice)));
    delete files[path];
    files[`definitions/${sha256(text)}.json`] = text;
  }),
  manifest: (sound, dice) => {
    const files = unzipSync(sound);
    const manifest = JSON.parse(textOf(files['manifest.json']));
    return zipped({ ...files, 'manifest.json': utf8(JSON.stringify(changedJson(manifest, dice)) ?? '') });
  },
  headers: (sound, dice) => {
    const zip = zipped(unzipSync(sound), 0);
    const view = new DataView(zip.buffer);
    const kind = dice.of([0x04034b50, 0x02014b50, 0x02014b50, 0x06054b50]);
    const records = recordsAt(view, kind);
    for (let times = 1 + dice.below(2); times > 0; times -= 1) {
      const at = dice.of(records) + 4 + dice.below(kind === 0x06054b50 ? 14 : 22);
      if (dice.chance(0.5)) view.setUint16(at, dice.of(FIELDS) & 0xffff, true);
      else view.setUint32(at, dice.chance(0.5) ? dice.of(FIELDS) : dice.below(zip.length), true);
    }
    return zip;
  },
  bytes: (sound, dice) => changedBytes(sound, dice),
}; // biome-ignore format: one change a paragraph

function changedBytes(bytes: Uint8Array | undefined, dice: Dice): Bytes {
  const from = Uint8Array.from(bytes ?? []);
  return from.length < 2 ? from : (dice.of(Object.values(BYTE_CHANGES))(from, dice) as Bytes);
}

/** Files changed, and the list made right again in three cases of four. */
function rewritten(sound: Bytes, dice: Dice, change: (files: Unzipped) => void): Bytes {
  const files = unzipSync(sound);
  const manifest = JSON.parse(textOf(files['manifest.json'])) as { files: Listed[] };
  delete files['manifest.json'];
  change(files);
  if (dice.chance(0.75)) {
    manifest.files = Object.entries(files).map(([path, bytes]) => ({
      path,
      byteCount: bytes.length,
      sha256: sha256(bytes),
    }));
  }
  return zipped({ ...files, 'manifest.json': utf8(JSON.stringify(manifest)) });
}

function zipped(files: Unzipped, level: 0 | 1 = 1): Bytes {
  return zipSync(files, { level }) as Bytes;
}

function recordsAt(view: DataView, signature: number): number[] {
  const found: number[] = [];
  for (let at = 0; at + 22 <= view.byteLength; at += 1) if (view.getUint32(at, true) === signature) found.push(at);
  return found;
}

function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
