import { type Ladder, OUR_LADDER } from '../../migrations/lift-entry.ts';
import type { BundleRefusal, Manifest } from '../../schema/bundle.ts';
import type { Entry } from '../../schema/entry.ts';
import type { IncomingBytes } from '../store.ts';
import { maxBytesOf } from './bundle-limits.ts';
import { readPath } from './bundle-paths.ts';
import { type CheckedFile, checkFile } from './check-file.ts';
import { readEntries, type TextChange } from './read-entries.ts';
import { readManifest } from './read-manifest.ts';
import { readMember } from './read-member.ts';
import { refuseOtherSizes } from './refuse-other-sizes.ts';
import { RefusedBundle } from './refused-bundle.ts';
import { sha256Of } from './sha256-of.ts';
import { readZipDirectory, type ZipMember } from './zip-directory.ts';

/** A part of which everything has been checked. Its photos, logs and voices stay in the file, to be read when written. */
export interface VerifiedPart {
  manifest: Manifest;
  packs: { packId: string; entries: Entry[] }[];
  bytes: IncomingBytes[];
  definitions: { sha256: string; text: string }[];
  /** Files this version has no use for: a newer minor one may. */
  skipped: string[];
  /** Texts that were made plain. */
  textChanges: TextChange[];
}

/** `detail` names the file in it and what is wrong; text/bundle.ts puts it in plain words. */
export type ReadBundle = { ok: true; bundle: VerifiedPart } | { ok: false; refusal: BundleRefusal; detail: string };

export interface ReadOptions {
  signal?: AbortSignal;
  /** Share of the bytes looked at, 0–1. */
  onProgress?(doneFrac: number): void;
  ladder?: Ladder;
}

/**
 * Checks one part of a bundle whole, before anything is written: zip structure, paths, sizes, manifest, checksums,
 * every entry, every picture's structure and size, every definition, every sealed sheet. The file is read by slices, one
 * member at a time. Returns what it holds, or the first reason to refuse it.
 *
 * Throws  the signal's reason when cancelled.
 */
export async function readBundle(file: Blob, options: ReadOptions = {}): Promise<ReadBundle> {
  try {
    return { ok: true, bundle: await verify(file, options) };
  } catch (error) {
    if (error instanceof RefusedBundle) return { ok: false, refusal: error.refusal, detail: error.message };
    throw error;
  }
}

async function verify(file: Blob, { signal, onProgress, ladder = OUR_LADDER }: ReadOptions): Promise<VerifiedPart> {
  const members = new Map((await readZipDirectory(file)).map((member) => [member.path, member]));
  const manifest = await readManifest(file, [...members.values()], ladder.present);
  const { schemaVersion } = manifest;
  const bundle: VerifiedPart = { manifest, packs: [], bytes: [], definitions: [], skipped: [], textChanges: [] };
  const frames = new Map<string, { widthPx: number; heightPx: number }>();
  let doneBytes = 0;
  for (const { path, sha256 } of manifest.files) {
    signal?.throwIfAborted();
    const member = members.get(path);
    if (member === undefined) throw new RefusedBundle('missingFile', path);
    const read = () => readChecked(file, member, sha256);
    const checked = await readAndCheck(member, sha256, read);
    if (checked.kind === 'entries') {
      const { packId, input } = checked;
      const { entries, textChanges } = readEntries({ packId, input, schemaVersion, ladder });
      bundle.packs.push({ packId, entries });
      bundle.textChanges.push(...textChanges);
    } else if (checked.kind === 'definition') {
      bundle.definitions.push({ sha256, text: checked.text });
    } else if (checked.kind === 'bytes') {
      const { shelf, type } = checked;
      bundle.bytes.push({ sha256: checked.sha256, shelf, type, byteCount: member.byteCount, read });
      if (shelf === 'photos' && checked.frame !== null) frames.set(checked.sha256, checked.frame);
    } else if (checked.kind === 'other') bundle.skipped.push(path);
    doneBytes += member.packedBytes;
    onProgress?.(Math.min(1, doneBytes / file.size));
  }
  refuseOtherPacks(bundle);
  refuseOtherSizes(bundle.packs, frames);
  return bundle;
}

async function readAndCheck(
  member: ZipMember,
  sha256: string,
  read: () => Promise<Uint8Array<ArrayBuffer>>,
): Promise<CheckedFile> {
  const { path, byteCount } = member;
  const place = readPath(path);
  if (place === null) throw new RefusedBundle('unsafePath', path);
  if (byteCount > maxBytesOf(place)) throw new RefusedBundle('tooLarge', `${path} has ${byteCount} bytes`);
  return checkFile({ path, place, sha256, bytes: await read() });
}

/** Reads a member and holds it against its checksum: once to be checked, and again to be written. */
async function readChecked(file: Blob, member: ZipMember, sha256: string): Promise<Uint8Array<ArrayBuffer>> {
  const bytes = await readMember(file, member);
  if ((await sha256Of(bytes)) !== sha256) throw new RefusedBundle('checksum', member.path);
  return bytes;
}

function refuseOtherPacks({ manifest, packs }: VerifiedPart): void {
  const listed = [...manifest.packIds].sort().join();
  const found = packs.map(({ packId }) => packId).sort().join(); // biome-ignore format: one line
  if (listed !== found) throw new RefusedBundle('badManifest', 'its packs are not those it lists');
}
