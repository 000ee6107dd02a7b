import { useEffect, useState } from 'preact/hooks';
import { liftEntry } from '../../migrations/lift-entry.ts';
import { canonicalJson } from '../../record/canonical-json.ts';
import { keyText } from '../../record/merge-entries.ts';
import { isOfTheSheet, sealedEntries } from '../../record/sealed-entries.ts';
import type { Entry } from '../../schema/entry.ts';
import type { ReadSealedSheet } from '../../schema/sealed-sheet.ts';
import type { PackSession } from '../state/pack-session.ts';
import { entriesSha256 } from './close-sheet.ts';
import { readSealedSheet } from './sealed-content.ts';

/** How many entries of a closed record are in no revision; null where there are some and the JSON is not here to count by. */
export type ComeIn = { count: number | null };

/**
 * Entries that got past the session into a closed record, by another tab or a backup. None is the usual case, told by
 * the SHA-256 of them all; only where that differs are they counted, by what they say: an undo writes the same again
 * under a new stamp.
 */
export async function comeInSince(session: PackSession): Promise<ComeIn | null> {
  const { closings, sheet } = session.record.value;
  const closing = closings.at(-1);
  if (sheet.now !== 'closed' || closing === undefined) return null;
  const entries = session.entries.value;
  if ((await entriesSha256(entries)) === closing.entriesSha256) return null;
  const read = await readSealedSheet(closing.sha256);
  if (read.state !== 'here') return { count: null };
  const count = countOtherwise(sealedEntries(entries), read.content.sealed);
  return count === 0 ? null : { count };
}

function countOtherwise(present: readonly Entry[], { entries, schemaVersion }: ReadSealedSheet): number {
  // Checked when it was read.
  const sealed = new Map(
    (entries as Entry[]).map((entry) => {
      const lifted = liftEntry(entry, schemaVersion);
      return [keyText(entry.key), said(lifted.ok ? lifted.entry : entry)];
    }),
  );
  return present.filter((entry) => {
    if (!isOfTheSheet(entry.key)) return false;
    const before = sealed.get(keyText(entry.key));
    // Taken back to where nothing stood before: the same as nothing.
    return before === undefined ? entry.gone !== true : before !== said(entry);
  }).length;
}

function said({ v, gone, why }: Entry): string {
  return canonicalJson({ v, gone: gone === true, why: why ?? null });
}

/** The same as it changes; looked at only while all is saved. Undefined until it was looked at for the first time. */
export function useComeIn(session: PackSession): ComeIn | null | undefined {
  const [found, setFound] = useState<ComeIn | null | undefined>(undefined);
  const entries = session.entries.value;
  const isSaved = session.saving.value.now === 'saved';
  useEffect(() => {
    if (!isSaved) return;
    let left = false;
    comeInSince(session).then(
      (now) => {
        if (!left) setFound(now);
      },
      (error) => console.error('closed sheet: not compared with the record', error),
    );
    return () => {
      left = true;
    };
  }, [session, entries, isSaved]);
  return session.record.value.sheet.now === 'closed' ? found : null;
}
