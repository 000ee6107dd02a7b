import { localDay } from '../../text/format-day.ts';
import type { SheetContext } from '../model/sheet-context.ts';
import { type Standing, standingOf } from '../model/sheet-standing.ts';

/** Which sheet a file was made from. */
export interface MadeFrom {
  standing: Standing['is'];
  /** Of the closed sheet; both null of one that is not closed. */
  revision: number | null;
  sha256: string | null;
  /** Day of the newest entry it is made of, ISO 8601; null of an empty record. */
  day: string | null;
}

export function madeFrom(context: SheetContext): MadeFrom {
  const standing = standingOf(context);
  // One that is being revised is made of what came after: no sealed JSON has it.
  const closing = standing.is === 'open' || standing.is === 'revising' ? null : standing.closing;
  const { newestMs, utcOffsetMinutes } = context;
  return {
    standing: standing.is,
    revision: closing?.revision ?? null,
    sha256: closing?.sha256 ?? null,
    day: newestMs === null ? null : localDay(newestMs, utcOffsetMinutes),
  };
}
