import type { PackRecord } from '../record/pack-record.ts';
import type { MakeSafe } from '../schema/make-safe.ts';
import { goodUntilMs, isFresh } from './passage.ts';

export interface Gate {
  open: boolean;
  last: MakeSafe | null;
  goodUntilMs: number | null;
}

/** Whether Make safe holds at a moment. */
export function makeSafeGate(record: Pick<PackRecord, 'makeSafe'>, atMs: number, offsetMinutes: number): Gate {
  const last = record.makeSafe.at(-1) ?? null;
  if (!last) return { open: false, last: null, goodUntilMs: null };
  return { open: isFresh(last, atMs, offsetMinutes), last, goodUntilMs: goodUntilMs(last) };
}
