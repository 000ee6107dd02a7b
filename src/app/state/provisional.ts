import type { Entry } from '../../schema/entry.ts';
import type { Put } from '../../storage/store.ts';

/** How the stamps of provisional entries begin. */
const PROVISIONAL = '999999999999999.';

/**
 * The entries as they will be once `puts` are written, with stamps that stand after every other (the written ones
 * replace them). Only ever on the screen, never stored.
 */
export function provisionalEntries(packId: string, entries: Entry[], puts: Put[]): Entry[] {
  const changed = new Map<string, Entry>();
  puts.forEach((put, index) => {
    const at = `${PROVISIONAL}${String(index).padStart(6, '0')}.${'0'.repeat(32)}`;
    const v = 'gone' in put ? null : stamped(put.v, at);
    const entry: Entry = { key: [packId, put.subject, put.part], v, at, by: '0'.repeat(32) };
    if ('gone' in put) entry.gone = true;
    if (put.why !== undefined) entry.why = put.why;
    changed.set(`${put.subject}\n${put.part}`, entry);
  });
  const kept = entries.filter(({ key }) => !changed.has(`${key[1]}\n${key[2]}`));
  return [...kept, ...changed.values()];
}

/** Whether a `made` stamp stands in for one that is still being drawn: it must never be written. */
export function isProvisional(stamp: string): boolean {
  return stamp.startsWith(PROVISIONAL);
}

/** The newest stamp that was really drawn: what is dated by it must not be dated by one that stands in for another. */
export function newestWritten(entries: readonly Entry[]): string | null {
  return entries.reduce<string | null>(
    (newest, { at }) => (isProvisional(at) || (newest !== null && newest >= at) ? newest : at),
    null,
  );
}

function stamped(value: unknown, at: string): unknown {
  const wantsStamp = typeof value === 'object' && value !== null && 'made' in value && value.made === null;
  return wantsStamp ? { ...value, made: at } : value;
}
