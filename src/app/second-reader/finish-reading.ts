import { settledGrades } from '../../grading/agreement.ts';
import { momentAfterMs } from '../../record/moment-after.ts';
import type { RecordSecondReader } from '../../record/pack-record.ts';
import { nowMs } from '../clock.ts';
import type { PackSession } from '../state/pack-session.ts';
import { isProvisional } from '../state/provisional.ts';

/** From now on the reading counts, and nothing of it can be changed: its reader sees the grades. So it has no undo. */
export function finishReading(session: PackSession, reader: RecordSecondReader): Promise<boolean> {
  const { id, answers: _, ...stored } = reader;
  // A stamp that stands in for one being drawn is never written.
  const made = isProvisional(stored.made) ? null : stored.made;
  const v = {
    ...stored,
    made,
    finishedAtMs: momentAfterMs(session.record.value, nowMs.peek()),
    firstGrades: settledGrades(session.grading.value),
  };
  return session.put({
    puts: [{ subject: 'secondReader', part: id, v }],
    endsUndoOf: [
      { subject: 'secondReader', partBegins: id },
      { subject: 'secondAnswer', partBegins: `${id}/` },
    ],
  });
}
