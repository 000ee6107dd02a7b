import { type Ladder, OUR_LADDER } from '../../migrations/lift-entry.ts';
import type { BundleRefusal, Manifest } from '../../schema/bundle.ts';
import type { Entry } from '../../schema/entry.ts';
import { LOG_TYPE } from '../log-type.ts';
import type { Incoming, Shelf } from '../store.ts';
import { MAX_LOG_BYTES } from './bundle-limits.ts';
import { type BundlePath, readPath } from './bundle-paths.ts';
import { readEntries } from './read-entries.ts';
import { readManifest } from './read-manifest.ts';
import { safeJson, textOf } from './safe-json.ts';
import { sha256Of } from './sha256-of.ts';
import { unpackMember } from './unpack-member.ts';
import { RefusedBundle, readZipDirectory } from './zip-directory.ts';

/** A part of which everything has been checked; its bytes are views into the zip. */
export interface VerifiedPart {
  manifest: Manifest;
  packs: { packId: string; entries: Entry[] }[];
  bytes: Incoming['bytes'][number][];
  definitions: { sha256: string; text: string }[];
  /** Files this version has no use for: a newer minor one may. */
  skipped: string[];
}

export type ReadBundle = { ok: true; bundle: VerifiedPart } | { ok: false; refusal: BundleRefusal; detail: string };

export interface ReadOptions {
  signal?: AbortSignal;
  ladder?: Ladder;
}

/**
 * Checks one part of a bundle whole, before anything is written: zip structure, paths, sizes, manifest, checksums,
 * every entry, every picture's first bytes, every log's size, every definition. Returns what it holds, or the first reason to refuse it.
 *
 * Throws  the signal's reason when cancelled.
 */
export async function readBundle(
  zip: Uint8Array,
  { signal, ladder = OUR_LADDER }: ReadOptions = {},
): Promise<ReadBundle> {
  try {
    return { ok: true, bundle: await verify(zip, ladder, signal) };
  } catch (error) {
    if (error instanceof RefusedBundle) return { ok: false, refusal: error.refusal, detail: error.message };
    throw error;
  }
}

async function verify(zip: Uint8Array, ladder: Ladder, signal: AbortSignal | undefined): Promise<VerifiedPart> {
  const members = new Map(readZipDirectory(zip).map((member) => [member.path, member]));
  const manifest = readManifest([...members.values()], ladder.present);
  const bundle: VerifiedPart = { manifest, packs: [], bytes: [], definitions: [], skipped: [] };
  for (const { path, sha256 } of manifest.files) {
    signal?.throwIfAborted();
    const member = members.get(path);
    if (member === undefined) throw new RefusedBundle('missingFile', path);
    const place = readPath(path);
    if (place === null) throw new RefusedBundle('unsafePath', path);
    if (isLog(place) && member.byteCount > MAX_LOG_BYTES) {
      throw new RefusedBundle('tooLarge', `${path} has ${member.byteCount} bytes`);
    }
    const bytes = unpackMember(member);
    // A view into a file's bytes or a fresh array: never shared memory, which the cast rules out.
    if ((await sha256Of(bytes as Uint8Array<ArrayBuffer>)) !== sha256) throw new RefusedBundle('checksum', path);
    takeIn(bundle, { path, place, sha256, bytes, ladder });
  }
  refuseOtherPacks(bundle);
  return bundle;
}

interface CheckedFile {
  path: string;
  place: BundlePath;
  sha256: string;
  bytes: Uint8Array;
  ladder: Ladder;
}

const TYPES: Readonly<Record<Shelf, string>> = {
  photos: 'image/jpeg',
  thumbs: 'image/jpeg',
  originals: 'image/jpeg',
  logs: LOG_TYPE,
  sealed: 'application/json',
};

function isLog(place: BundlePath): boolean {
  return place.kind === 'bytes' && place.shelf === 'logs';
}

function takeIn(bundle: VerifiedPart, { path, place, sha256, bytes, ladder }: CheckedFile): void {
  const { schemaVersion } = bundle.manifest;
  if (place.kind === 'entries') {
    const { packId } = place;
    bundle.packs.push({
      packId,
      entries: readEntries({ packId, input: safeJson(path, bytes), schemaVersion, ladder }),
    });
  } else if (place.kind === 'annotations') {
    // For other programs: the entries hold the callouts. Looked at all the same, so that nothing unsafe passes on.
    safeJson(path, bytes);
  } else if (place.kind === 'definitions') {
    if (place.sha256 !== sha256) throw new RefusedBundle('badDefinition', `${path} is not what its name says`);
    const definition = safeJson(path, bytes);
    if (typeof definition !== 'object' || definition === null) throw new RefusedBundle('badDefinition', path);
    bundle.definitions.push({ sha256, text: textOf(path, bytes) });
  } else if (place.kind === 'bytes') {
    const { shelf } = place;
    if (shelf !== 'thumbs' && place.sha256 !== sha256)
      throw new RefusedBundle('checksum', `${path} is not what its name says`);
    // Whatever a log holds is only ever read as text.
    if (shelf === 'sealed') safeJson(path, bytes);
    else if (shelf !== 'logs' && !beginsLikeJpeg(bytes)) throw new RefusedBundle('notAPhoto', path);
    bundle.bytes.push({ sha256: place.sha256, shelf, type: TYPES[shelf], bytes });
  } else {
    bundle.skipped.push(path);
  }
}

/** Start of image and the first marker's FF: ITU-T T.81, section B.1.1.3 and table B.1. */
function beginsLikeJpeg(bytes: Uint8Array): boolean {
  return bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff;
}

function refuseOtherPacks({ manifest, packs }: VerifiedPart): void {
  const listed = [...manifest.packIds].sort().join();
  const found = packs.map(({ packId }) => packId).sort().join(); // biome-ignore format: one line
  if (listed !== found) throw new RefusedBundle('badManifest', 'its packs are not those it lists');
}
