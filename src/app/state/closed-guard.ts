import { momentAfterMs } from '../../record/moment-after.ts';
import type { PackRecord, SheetStanding } from '../../record/pack-record.ts';
import { isOfTheSheet } from '../../record/sealed-entries.ts';
import { randomId } from '../../storage/open-store.ts';
import type { Put } from '../../storage/store.ts';

/**
 * Whether a change waits for the reason of the next revision: one of a closed sheet that alters what was sealed and does
 * not bring that reason itself.
 */
export function isHeldBack(sheet: SheetStanding, puts: readonly Put[]): boolean {
  if (sheet.now !== 'closed' || puts.some((put) => opens(put, sheet.sha256))) return false;
  return puts.some(({ subject, part }) => isOfTheSheet(['', subject, part]));
}

/** What opens the closed sheet of a record for its next revision; nothing where it is open already. */
export function reopeningPuts(record: Pick<PackRecord, 'sheet' | 'newestAt'>, reason: string, nowMs: number): Put[] {
  const { sheet } = record;
  if (sheet.now !== 'closed') return [];
  const v = { after: sheet.sha256, reason, openedAtMs: momentAfterMs(record, nowMs) };
  return [{ subject: 'reopening', part: randomId(), v }];
}

function opens(put: Put, sha256: string): boolean {
  if (put.subject !== 'reopening' || 'gone' in put) return false;
  const { v } = put;
  return typeof v === 'object' && v !== null && 'after' in v && v.after === sha256;
}
