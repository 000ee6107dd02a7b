import { createHash } from 'node:crypto';
import type { DefinitionFile } from './definition-files.ts';

/**
 * What is wrong between the definition files and the record of releases ("id/version" → SHA-256 of the file's bytes).
 * Records are graded by a released file for good, so it is never edited again.
 */
export function releaseFaults(released: Readonly<Record<string, string>>, files: readonly DefinitionFile[]): string[] {
  const gone = Object.keys(released).filter((name) => !files.some((file) => file.name === name));
  return [
    ...gone.map((name) => `${name} is listed as released and has no file`),
    ...files.flatMap((file) => fileFaults(released, file)),
  ];
}

function fileFaults(released: Readonly<Record<string, string>>, { name, text }: DefinitionFile): string[] {
  const { id, version, status } = JSON.parse(text) as { id?: unknown; version?: unknown; status?: unknown };
  const faults = `${id}/${version}` === name ? [] : [`${name} calls itself ${id}/${version}`];
  const sha256 = createHash('sha256').update(text).digest('hex');
  const listed = released[name];
  if (listed === undefined) {
    return status === 'draft' ? faults : [...faults, `${name} is released and not listed: add "${name}": "${sha256}"`];
  }
  if (listed !== sha256) return [...faults, `${name} was edited after its release: make a new version instead`];
  return status === 'released' ? faults : [...faults, `${name} is listed as released and calls itself ${status}`];
}
