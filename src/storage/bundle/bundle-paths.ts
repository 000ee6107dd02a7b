import { SHELVES } from '../byte-uses.ts';
import type { Shelf } from '../store.ts';

/** Where things lie in a part. Thumbnails carry their photo's hash, everything else its own. */
export const MANIFEST_PATH = 'manifest.json';
export const entriesPath = (packId: string) => `entries/${packId}.json`;
export const annotationsPath = (packId: string) => `annotations/${packId}.json`;
export const definitionPath = (sha256: string) => `definitions/${sha256}.json`;
/** A log is any text a bench has written, and a voice note is what its bytes say, so their names claim nothing. */
const ENDINGS: Readonly<Record<Shelf, string>> = {
  photos: '.jpg',
  thumbs: '.jpg',
  originals: '.jpg',
  logs: '',
  sealed: '.json',
  voices: '',
};
export const bytesPath = (shelf: Shelf, sha256: string) => `${shelf}/${sha256}${ENDINGS[shelf]}`;

export type BundlePath =
  | { kind: 'entries'; packId: string }
  | { kind: 'annotations'; packId: string }
  | { kind: 'definitions'; sha256: string }
  | { kind: 'bytes'; shelf: Shelf; sha256: string }
  /** A safe path that a newer minor version may know; passed over and said. */
  | { kind: 'other' };

/** Null for a path that could lead out of a folder or mean two things: `..`, `/` in front, `\`, `:`, odd characters. */
export function readPath(path: string): BundlePath | null {
  if (path.length > 200 || !/^\w[\w.-]*(\/\w[\w.-]*){0,3}$/.test(path)) return null;
  const [, folder, name, ending] = /^([a-z]+)\/([0-9a-f]{32}|[0-9a-f]{64})(?:\.(json|jpg))?$/.exec(path) ?? [];
  if (name === undefined) return { kind: 'other' };
  const isHash = name.length === 64;
  if ((folder === 'entries' || folder === 'annotations') && !isHash && ending === 'json') {
    return { kind: folder, packId: name };
  }
  if (folder === 'definitions' && isHash && ending === 'json') return { kind: folder, sha256: name };
  const shelf = SHELVES.find((one) => one === folder);
  if (shelf !== undefined && isHash && path === bytesPath(shelf, name)) return { kind: 'bytes', shelf, sha256: name };
  return { kind: 'other' };
}
