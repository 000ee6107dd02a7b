import * as v from 'valibot';
import type { RecordTake } from '../../record/pack-record.ts';
import { takeSchema } from '../../schema/take.ts';

/** The offset of a take that puts one moment of it at such a time in the recording. */
export function offsetByMark(
  { startedAtMs }: Pick<RecordTake, 'startedAtMs'>,
  atMs: number,
  inRecordingMs: number,
): number {
  return inRecordingMs - (atMs - startedAtMs);
}

/** Whether the record takes it: a day either way. */
export function isStorableOffset(offsetMs: number): boolean {
  return v.is(takeSchema.entries.offsetMs, offsetMs);
}
