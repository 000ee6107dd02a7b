import type { SheetInput } from '../../sheet/model/sheet-context.ts';
import { useComeIn } from '../closing/come-in.ts';
import { useSealedSheet } from '../closing/sealed-content.ts';
import { openSheetInput, sealedSheetInput } from '../sheet/sheet-input.ts';
import type { PackSession } from '../state/pack-session.ts';

/**
 * What everything published of a pack is made from: what was sealed where the sheet is closed, else the record as it
 * stands. `revision` is that of the closed sheet.
 */
export function usePublishedInput(session: PackSession): { input: SheetInput; revision: number | null } | 'reading' {
  const record = session.record.value;
  const { sheet: standing } = record;
  const read = useSealedSheet(standing.now === 'closed' ? standing.sha256 : null);
  const comeIn = useComeIn(session);
  if (read === 'reading' || (read !== null && comeIn === undefined)) return 'reading';
  if (read?.state === 'here') {
    const input = sealedSheetInput(read, { record, sinceClosing: comeIn?.count ?? 0 });
    return { input, revision: read.content.sealed.revision };
  }
  const isAsSealed = standing.now !== 'closed' || comeIn === null;
  return { input: openSheetInput(session, { since: null, isAsSealed }), revision: null };
}
