import { stampMs } from '../../record/stamp-ms.ts';
import { BUNDLE_FORMAT, type Manifest } from '../../schema/bundle.ts';
import { SCHEMA_VERSION } from '../../schema/schema-version.ts';
import { MANIFEST_PATH } from './bundle-paths.ts';
import type { PartPlan } from './plan-bundle.ts';
import { type ZipSink, zipWriter } from './zip-writer.ts';

export interface WriteOptions {
  /** Share of the bytes written, 0–1. */
  onProgress?(doneFrac: number): void;
  signal?: AbortSignal;
}

/**
 * Writes one part of a planned bundle into a sink, holding one photo, log or voice note at a time.
 *
 * Throws  the signal's reason when cancelled; whatever the sink or the database throws; an Error if bytes went away since it was planned.
 */
export async function writePart(
  plan: PartPlan,
  sink: ZipSink,
  { onProgress, signal }: WriteOptions = {},
): Promise<void> {
  const { files, facts, part, parts, packIds } = plan;
  const manifest: Manifest = {
    format: BUNDLE_FORMAT,
    schemaVersion: SCHEMA_VERSION,
    ...facts,
    part,
    parts,
    packIds,
    files: files.map(({ path, byteCount, sha256, type }) => ({ path, byteCount, sha256, type })),
  };
  const zip = zipWriter(stampMs(facts.newest), sink);
  await zip.add(MANIFEST_PATH, new TextEncoder().encode(JSON.stringify(manifest)), 'deflated');
  const totalBytes = files.reduce((sum, { byteCount }) => sum + byteCount, 0);
  let doneBytes = 0;
  for (const file of files) {
    signal?.throwIfAborted();
    const bytes = await file.read();
    if (bytes.byteLength !== file.byteCount) throw new Error(`writePart: ${file.path} went away while saving`);
    await zip.add(file.path, bytes, file.type === 'application/json' ? 'deflated' : 'stored');
    doneBytes += file.byteCount;
    onProgress?.(doneBytes / totalBytes);
  }
  await zip.finish();
  signal?.throwIfAborted();
}
