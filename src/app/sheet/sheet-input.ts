import { gradeRecord } from '../../grading/grade-record.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import type { SheetInput } from '../../sheet/model/sheet-context.ts';
import type { Since } from '../../sheet/model/since-blocks.ts';
import { APP_VERSION } from '../app-version.ts';
import { nowMs, utcOffsetMinutes } from '../clock.ts';
import type { SealedSheetHere } from '../closing/sealed-content.ts';
import type { PackSession } from '../state/pack-session.ts';
import { settings } from '../state/settings.ts';

/** The sheet of a record as it stands. `isAsSealed`: a closed one whose JSON is not here still says what was sealed. */
export function openSheetInput(
  session: PackSession,
  { since, isAsSealed }: { since: Since | null; isAsSealed: boolean },
): SheetInput {
  const now = session.record.value;
  const record: PackRecord = isAsSealed ? now : { ...now, sheet: { now: 'open' } };
  const { definition, earlier } = session;
  return {
    definition: definition.definition,
    definitionSha256: definition.sha256,
    record,
    grading: session.grading.value,
    earlier: earlier && {
      definition: earlier.definition,
      grading: gradeRecord(earlier.definition, record),
    },
    since,
    appVersion: APP_VERSION,
    units: settings.value.units,
    locale: 'en',
    utcOffsetMinutes: utcOffsetMinutes(nowMs.peek()),
  };
}

/**
 * The sheet of what was sealed, dated by its newest entry. What stands around it (closings, attachments) is the present
 * record's. What changed since an earlier sample is left out: that pack may change, and a closed sheet does not.
 */
export function sealedSheetInput(
  { sha256, content, grading, otherLines }: SealedSheetHere,
  { record, sinceClosing }: { record: PackRecord; sinceClosing: number },
): SheetInput {
  const { sealed, definition, earlier } = content;
  const { closings, reopenings, attachments, sheet } = record;
  return {
    definition,
    definitionSha256: sealed.checklist.sha256,
    record: { ...content.record, closings, reopenings, attachments, sheet },
    grading,
    earlier: earlier && { definition: earlier, grading: gradeRecord(earlier, content.record) },
    shownRevision: sha256,
    sinceClosing,
    otherLines,
    appVersion: sealed.appVersion,
    units: settings.value.units,
    locale: 'en',
    // By the clock of the day it was closed: the same sheet in summer and in winter.
    utcOffsetMinutes: utcOffsetMinutes(sealed.closedAtMs),
  };
}
