import { changesSince } from '../../grading/changes-since.ts';
import { gradeRecord } from '../../grading/grade-record.ts';
import type { Grading } from '../../grading/grading.ts';
import { foldRecord } from '../../record/fold-record.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import type { Checklist } from '../../schema/checklist.ts';
import type { RetestOf } from '../../schema/closing.ts';
import type { Since } from '../../sheet/model/since-blocks.ts';
import { sinceWords } from '../../text/since.ts';
import { words } from '../../text/words.ts';
import { definitionByHash } from '../state/definitions.ts';
import { store } from '../state/store.ts';

/** The earlier pack as this phone has it. One that was put away counts: its record is here. */
export type Earlier =
  | { here: true; label: string; record: PackRecord; definition: Checklist }
  | { here: false; label: string; because: 'absent' | 'noDefinition' };

export async function readEarlier(retestOf: RetestOf): Promise<Earlier> {
  const label = retestOf.label ?? sinceWords.earlierUnnamed;
  const record = foldRecord(retestOf.packId, await store().entriesOf(retestOf.packId));
  if (record.newestAt === null) return { here: false, label, because: 'absent' };
  const { name = '', sample = '' } = record.nameplate;
  const nowCalled = name === '' && sample === '' ? label : words.packLabel(name, sample);
  const loaded = record.checklist && (await definitionByHash(record.checklist.sha256));
  if (!loaded) return { here: false, label: nowCalled, because: 'noDefinition' };
  return { here: true, label: nowCalled, record, definition: loaded.definition };
}

/** What changed from the earlier pack to a later one, as the screen and the sheet show it. */
export function sinceOf(
  { kind }: RetestOf,
  earlier: Earlier,
  later: { definition: Checklist; grading: Grading; record: PackRecord },
): Since {
  if (!earlier.here) return { kind, label: earlier.label, here: false, because: earlier.because };
  const { label, record, definition } = earlier;
  return {
    kind,
    label,
    here: true,
    changes: changesSince({ definition, record, grading: gradeRecord(definition, record) }, later),
    currency: { was: record.nameplate.currency, now: later.record.nameplate.currency },
  };
}
