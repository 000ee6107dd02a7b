import { momentAfterMs } from '../../record/moment-after.ts';
import type { RecordSecondReader } from '../../record/pack-record.ts';
import { secondReaderWords as say } from '../../text/second-reader.ts';
import { nowMs } from '../clock.ts';
import type { PackSession } from '../state/pack-session.ts';

/** From now on the reading counts, and nothing of it can be changed: its reader sees the grades. */
export function finishReading(session: PackSession, reader: RecordSecondReader, number: number): Promise<boolean> {
  const { id, answers: _, ...stored } = reader;
  const v = { ...stored, finishedAtMs: momentAfterMs(session.record.value, nowMs.peek()) };
  return session.put({
    puts: [{ subject: 'secondReader', part: id, v }],
    undoLabel: say.undo.finished(say.nameOf(number, reader.label)),
  });
}
