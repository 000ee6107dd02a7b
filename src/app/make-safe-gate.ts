import type { PackRecord } from '../record/pack-record.ts';
import type { MakeSafe } from '../schema/make-safe.ts';
import { localDay } from '../text/format-day.ts';

/** Our choice: long enough for a sitting, short enough that a break is noticed. */
const GOOD_FOR_MS = 4 * 3_600_000;

export interface Gate {
  open: boolean;
  last: MakeSafe | null;
  goodUntilMs: number | null;
}

/** Whether Make safe holds at a moment: passed within four hours, on the same local day, and not in the future. */
export function makeSafeGate(record: Pick<PackRecord, 'makeSafe'>, atMs: number, offsetMinutes: number): Gate {
  const last = record.makeSafe.at(-1) ?? null;
  if (!last) return { open: false, last: null, goodUntilMs: null };
  const sameDay = last.day === localDay(atMs, offsetMinutes);
  const age = atMs - last.passedAtMs;
  return { open: sameDay && age >= -60_000 && age < GOOD_FOR_MS, last, goodUntilMs: last.passedAtMs + GOOD_FOR_MS };
}
