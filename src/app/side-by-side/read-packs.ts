import { gradeRecord } from '../../grading/grade-record.ts';
import type { Compared } from '../../grading/side-by-side/side-by-side.ts';
import { foldRecord } from '../../record/fold-record.ts';
import { definitionByHash } from '../state/definitions.ts';
import { store } from '../state/store.ts';

export interface ReadPacks {
  compared: Compared[];
  /** Packs whose checklist is not on this phone. */
  unreadIds: string[];
}

/** The records of these packs, in their order, each graded by the definition it is on. */
export async function readPacks(packIds: readonly string[]): Promise<ReadPacks> {
  const read: ReadPacks = { compared: [], unreadIds: [] };
  for (const packId of packIds) {
    const record = foldRecord(packId, await store().entriesOf(packId));
    const found = record.checklist && (await definitionByHash(record.checklist.sha256));
    if (!found) read.unreadIds.push(packId);
    else {
      const { definition } = found;
      read.compared.push({ packId, record, definition, grading: gradeRecord(definition, record) });
    }
  }
  return read;
}
