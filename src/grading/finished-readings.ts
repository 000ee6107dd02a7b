import type { PackRecord, RecordSecondReader } from '../record/pack-record.ts';
import type { Checklist } from '../schema/checklist.ts';
import { type Agreement, agreementOf } from './agreement.ts';
import type { Grading } from './grading.ts';
import { shownItems } from './shown-items.ts';

export interface FinishedReading {
  /** Place among all second readers of the record, from 1: what it is called by. */
  number: number;
  reader: RecordSecondReader;
  /** Items that can be told from the photos. */
  shownCount: number;
  agreement: Agreement;
}

export interface GradedPack {
  definition: Checklist;
  record: Pick<PackRecord, 'photos' | 'secondReaders'>;
  grading: Grading;
}

/** The second readings that were finished, each with how far it agrees. One begun says nothing yet. */
export function finishedReadings({ definition, record, grading }: GradedPack): FinishedReading[] {
  const shown = shownItems(definition, record, grading).map(({ itemId }) => itemId);
  return record.secondReaders.flatMap((reader, place) =>
    isFinished(reader)
      ? [{ number: place + 1, reader, shownCount: shown.length, agreement: agreementOf(grading, reader, shown) }]
      : [],
  );
}

export function isFinished(reader: Pick<RecordSecondReader, 'finishedAtMs'>): boolean {
  return reader.finishedAtMs !== undefined;
}
