import { gradeRecord } from '../../grading/grade-record.ts';
import type { Compared } from '../../grading/side-by-side/side-by-side.ts';
import { foldRecord } from '../../record/fold-record.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import type { Entry } from '../../schema/entry.ts';
import { entriesSha256 } from '../closing/close-sheet.ts';
import { readSealedSheet, type SealedSheetHere } from '../closing/sealed-content.ts';
import { definitionByHash } from '../state/definitions.ts';
import { store } from '../state/store.ts';

export interface ReadPacks {
  compared: Compared[];
  /** Packs whose checklist is not on this phone. */
  unreadIds: string[];
  /** Packs whose sheet is closed, and whose record is no more what was sealed, with the JSON of it not here. */
  unsealedIds: string[];
}

/**
 * These packs, in their order, each graded by the definition it is on: a closed sheet as it was sealed where its JSON is
 * here, any other as its record stands.
 */
export async function readPacks(packIds: readonly string[]): Promise<ReadPacks> {
  const read: ReadPacks = { compared: [], unreadIds: [], unsealedIds: [] };
  for (const packId of packIds) {
    const entries = await store().entriesOf(packId);
    const record = foldRecord(packId, entries);
    const sealed = record.sheet.now === 'closed' ? await readSealedSheet(record.sheet.sha256) : null;
    const pack = sealed?.state === 'here' ? asSealed(sealed, record) : await asItStands(record);
    if (pack === null) read.unreadIds.push(packId);
    else read.compared.push(pack);
    if (sealed !== null && sealed.state !== 'here' && !(await isAsSealed(entries, record))) {
      read.unsealedIds.push(packId);
    }
  }
  return read;
}

/** Prices of later days and the closings themselves stand around the sheet: they are the present record's. */
function asSealed({ content, grading }: SealedSheetHere, record: PackRecord): Compared {
  const { packId, offers, closings, reopenings, attachments, sheet } = record;
  const sealed = { ...content.record, offers, closings, reopenings, attachments, sheet };
  return { packId, record: sealed, definition: content.definition, grading };
}

async function asItStands(record: PackRecord): Promise<Compared | null> {
  const found = record.checklist && (await definitionByHash(record.checklist.sha256));
  if (!found) return null;
  const { definition } = found;
  return { packId: record.packId, record, definition, grading: gradeRecord(definition, record) };
}

async function isAsSealed(entries: Entry[], { closings }: PackRecord): Promise<boolean> {
  return (await entriesSha256(entries)) === closings.at(-1)?.entriesSha256;
}
