import { expect } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import { foldRecord } from '../../src/record/fold-record.ts';
import type { Checklist } from '../../src/schema/checklist.ts';
import type { Entry } from '../../src/schema/entry.ts';
import { makeSheet } from '../../src/sheet/model/make-sheet.ts';
import type { Sheet } from '../../src/sheet/model/sheet.ts';
import { writePdf } from '../../src/sheet/pdf/write-pdf.ts';
import type { UnitChoice } from '../../src/units/unit-choice.ts';
import { textsOf } from '../sheet/live-tests/texts-of.ts';
import { FONTS } from '../sheet/pdf-inputs.ts';
import { PICTURE } from './sound-bench.ts';

/** A figure that was not there, or was none, printed as a word. */
const BROKEN = /\bundefined\b|NaN|Infinity|\[object/;

/** Folds, grades and lays out a record: nothing throws, no figure is broken. Returns its sheet. */
export function wholeWay(
  packId: string,
  entries: readonly Entry[],
  definition: Checklist,
  shownIn: readonly UnitChoice[] = ['metric', 'imperial'],
): Sheet {
  const record = foldRecord(packId, entries);
  expect(record.setAside).toEqual([]);
  const grading = gradeRecord(definition, record);
  for (const end of [grading.build, grading.factor, grading.score]) {
    if (end !== null) expect([end.low, end.high].every((figure) => figure >= 0 && figure <= 100)).toBe(true);
  }
  const inputs = { definition, definitionSha256: 'c'.repeat(64), record, grading, appVersion: '0.1.0' };
  const typed = textsOf(entries.map(({ v }) => v)).filter((text) => BROKEN.test(text));
  let shown: Sheet | null = null;
  for (const units of shownIn) {
    shown = makeSheet({ ...inputs, units, locale: 'en', utcOffsetMinutes: 60 });
    const broken = textsOf(shown).filter(
      (text) => BROKEN.test(text) && !typed.some((own) => text.includes(own.trim())),
    );
    expect(broken).toEqual([]);
  }
  if (shown === null) throw new Error('no sheet was made');
  return shown;
}

/** The sheet as a PDF that holds no action and no script. */
export async function printed(sheet: Sheet): Promise<ArrayBuffer> {
  const photos = async () => ({ type: 'image/jpeg', bytes: PICTURE.slice().buffer });
  const bytes = await writePdf({ sheet, paper: 'a4', photos, fonts: FONTS });
  const objects = Buffer.from(bytes)
    .toString('latin1')
    .replace(/stream[\s\S]*?endstream/g, '');
  expect(objects.match(/\/(JavaScript|JS|AA|URI|Launch|SubmitForm)\b/)).toBeNull();
  return bytes;
}
