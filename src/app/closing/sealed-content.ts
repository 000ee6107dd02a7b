import { useEffect, useState } from 'preact/hooks';
import { gradeRecord } from '../../grading/grade-record.ts';
import type { Grading } from '../../grading/grading.ts';
import { liftEntry } from '../../migrations/lift-entry.ts';
import { compareFigures } from '../../sheet/model/sealed/compare-figures.ts';
import { figuresOf } from '../../sheet/model/sealed/figures-of.ts';
import { readSealed, type SealedContent } from '../../sheet/model/sealed/read-sealed.ts';
import { store } from '../state/store.ts';

/** The sealed JSON of a closed sheet, read and worked out. */
export interface SealedSheetHere {
  state: 'here';
  sha256: string;
  /** Its bytes, as they are saved. */
  bytes: ArrayBuffer;
  content: SealedContent;
  grading: Grading;
  /** Lines that this version of the app works out otherwise than they are sealed. */
  otherLines: number;
}
export type SealedRead = SealedSheetHere | { state: 'absent' } | { state: 'damaged' };

/** What is sealed never changes: read once, kept for as long as the page is open. */
const known = new Map<string, SealedSheetHere>();

export async function readSealedSheet(sha256: string): Promise<SealedRead> {
  const before = known.get(sha256);
  if (before) return before;
  const stored = await store().sealed(sha256);
  if (stored === null) return { state: 'absent' };
  const content = readSealed(new TextDecoder().decode(stored.bytes), liftEntry);
  if (content.outcome !== 'read') {
    console.warn('sealed sheet: not readable', sha256, content);
    return { state: 'damaged' };
  }
  const { definition, earlier, record, sealed } = content;
  const found = compareFigures(sealed.figures, figuresOf({ definition, earlier, record }));
  const here: SealedSheetHere = {
    state: 'here',
    sha256,
    bytes: stored.bytes,
    content,
    grading: gradeRecord(definition, record),
    otherLines: found.differing.length + found.missing.length + found.extra.length,
  };
  known.set(sha256, here);
  return here;
}

/** The same for a screen; null where none is asked for. */
export function useSealedSheet(sha256: string | null): SealedRead | 'reading' | null {
  const [done, setDone] = useState<{ sha256: string; read: SealedRead } | null>(null);
  useEffect(() => {
    if (sha256 === null) return;
    let left = false;
    readSealedSheet(sha256).then(
      (read) => {
        if (!left) setDone({ sha256, read });
      },
      (error) => console.error('sealed sheet: not read', error),
    );
    return () => {
      left = true;
    };
  }, [sha256]);
  if (sha256 === null) return null;
  return done?.sha256 === sha256 ? done.read : 'reading';
}
