import type { RecordTake } from '../../record/pack-record.ts';
import type { Put } from '../../storage/store.ts';
import { isProvisional } from '../state/provisional.ts';

export interface TakeChange {
  /** Null: called by its number again. */
  label?: string | null;
  endedAtMs?: number;
  offsetMs?: number;
}

/** A take with something changed, all else as it stands; members of a newer version are kept. */
export function changedTake({ id, marks, ...take }: RecordTake, change: TakeChange): Put {
  const { label, ...rest } = { ...take, ...change };
  // A stamp that stands in for one being drawn is never written.
  const made = isProvisional(take.made) ? null : take.made;
  return {
    subject: 'take',
    part: id,
    v: { ...rest, made, ...(label !== undefined && label !== null && { label }) },
  };
}

/** The take with all its marks: in one step, so that one undo brings all of it back. */
export function removedTake({ id, marks }: RecordTake): Put[] {
  return [
    { subject: 'take', part: id, gone: true },
    ...marks.map((mark): Put => ({ subject: 'takeMark', part: `${id}/${mark.id}`, gone: true })),
  ];
}
