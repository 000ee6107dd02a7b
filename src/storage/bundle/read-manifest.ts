import * as v from 'valibot';
import { BUNDLE_FORMAT, type Manifest, manifestSchema } from '../../schema/bundle.ts';
import { MAX_JSON_BYTES } from './bundle-limits.ts';
import { MANIFEST_PATH, readPath } from './bundle-paths.ts';
import { crc32Of } from './crc32-of.ts';
import { readMember } from './read-member.ts';
import { RefusedBundle } from './refused-bundle.ts';
import { safeJson } from './safe-json.ts';
import type { ZipMember } from './zip-directory.ts';

/** Enough to tell ours from a stray zip, and a newer one from a broken one, before anything else is believed. */
const headSchema = v.looseObject({ format: v.literal(BUNDLE_FORMAT), schemaVersion: v.number() });

/**
 * The manifest of a part, and proof that it and the zip list the same files. Its own bytes are checked by the zip's
 * CRC-32, as nothing else vouches for them.
 *
 * Throws  RefusedBundle
 */
export async function readManifest(file: Blob, members: readonly ZipMember[], present: number): Promise<Manifest> {
  for (const { path } of members) if (readPath(path) === null) throw new RefusedBundle('unsafePath', path);
  const member = members.find(({ path }) => path === MANIFEST_PATH);
  if (member === undefined) throw new RefusedBundle('notABundle', 'it holds no manifest.json');
  if (member.byteCount > MAX_JSON_BYTES) {
    throw new RefusedBundle('tooLarge', `${MANIFEST_PATH} has ${member.byteCount} bytes`);
  }
  const bytes = await readMember(file, member);
  if (crc32Of(bytes) !== member.crc32) throw new RefusedBundle('damagedZip', 'manifest.json is damaged');
  const input = safeJson(MANIFEST_PATH, bytes);
  if (!v.is(headSchema, input)) throw new RefusedBundle('notABundle', 'its manifest.json is not ours');
  if (input.schemaVersion > present) {
    throw new RefusedBundle('newer', `schema version ${input.schemaVersion}, this app knows ${present}`);
  }
  const parsed = v.safeParse(manifestSchema, input);
  if (!parsed.success) throw new RefusedBundle('badManifest', v.summarize(parsed.issues));
  const manifest = parsed.output;
  if (manifest.part > manifest.parts) throw new RefusedBundle('badManifest', 'its part is beyond the last');
  refuseMismatch(manifest, members);
  return manifest;
}

function refuseMismatch(manifest: Manifest, members: readonly ZipMember[]): void {
  const unlisted = new Map(members.map((member) => [member.path, member]));
  unlisted.delete(MANIFEST_PATH);
  for (const { path, byteCount } of manifest.files) {
    const member = unlisted.get(path);
    if (member === undefined) throw new RefusedBundle('missingFile', path);
    if (member.byteCount !== byteCount) throw new RefusedBundle('checksum', `${path} has another size`);
    unlisted.delete(path);
  }
  const [extra] = unlisted.keys();
  if (extra !== undefined) throw new RefusedBundle('unlistedFile', extra);
}
