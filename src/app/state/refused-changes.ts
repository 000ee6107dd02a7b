import type { PendingChange } from './pack-session.ts';

/**
 * The next change to be written past those that the records refused: none of theirs that stand later may touch what they
 * touch, or it would be written over once they are mended, and none may pass one that opens a closed sheet.
 */
export function nextPast(
  waiting: readonly PendingChange[],
  refused: ReadonlySet<PendingChange>,
): PendingChange | undefined {
  const before = new Set<string>();
  for (const change of waiting) {
    if (refused.has(change)) {
      if (change.puts.some(({ subject }) => subject === 'reopening')) return undefined;
      for (const key of keysOf(change)) before.add(key);
    } else if (!keysOf(change).some((key) => before.has(key))) return change;
    else for (const key of keysOf(change)) before.add(key);
  }
  return undefined;
}

/** Whether a later change says all of it anew: what was refused is then mended, and has nothing left to say. */
export function isMended(refused: PendingChange, waiting: readonly PendingChange[]): boolean {
  const later = new Set(waiting.slice(waiting.indexOf(refused) + 1).flatMap(keysOf));
  return refused.photos === undefined && keysOf(refused).every((key) => later.has(key));
}

function keysOf({ puts }: PendingChange): string[] {
  return puts.map(({ subject, part }) => `${subject}/${part}`);
}
