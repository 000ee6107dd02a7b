import type { PackRecord } from '../../record/pack-record.ts';
import { randomId } from '../../storage/open-store.ts';
import type { Put } from '../../storage/store.ts';
import { carryOverWords as say } from '../../text/carry-over.ts';
import type { LoadedDefinition } from '../state/definitions.ts';
import type { PendingChange } from '../state/pack-session.ts';

/** The one change that has a record graded by another version of its checklist. It can be undone. */
export function carryOverChange(record: PackRecord, to: LoadedDefinition): PendingChange {
  const { id, version } = to.definition;
  return {
    puts: [
      { subject: 'pack', part: 'carriedFrom', v: record.checklist },
      { subject: 'pack', part: 'checklist', v: { id, version, sha256: to.sha256 } },
    ],
    definition: { sha256: to.sha256, text: to.text },
    undoLabel: say.undo(version),
  };
}

/** The same of a pack whose sheet is closed: it is opened for a revision, with the reason, at one stroke. */
export function withReopening(
  change: PendingChange,
  { sheet }: Pick<PackRecord, 'sheet'>,
  { reason, openedAtMs }: { reason: string; openedAtMs: number },
): PendingChange {
  if (sheet.now !== 'closed') return change;
  const reopening: Put = {
    subject: 'reopening',
    part: randomId(),
    v: { after: sheet.sha256, reason, openedAtMs },
  };
  return { ...change, puts: [reopening, ...change.puts] };
}
