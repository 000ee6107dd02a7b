import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import { liftEntry } from '../../src/migrations/lift-entry.ts';
import { foldRecord } from '../../src/record/fold-record.ts';
import { checkDefinition } from '../../src/schema/check-definition.ts';
import { makeSheet } from '../../src/sheet/model/make-sheet.ts';
import { recheck } from '../../src/sheet/model/sealed/recheck.ts';
import { writePdf } from '../../src/sheet/pdf/write-pdf.ts';
import type { Store } from '../../src/storage/store.ts';
import { FONTS } from '../sheet/pdf-inputs.ts';
import { readPdf } from '../sheet/read-pdf.ts';
import { EARLIER_VERSIONS, earlierVersion, layOut } from '../storage/earlier-versions.ts';
import { newPhone, storeOn } from '../storage/open-test-store.ts';

/** What each pack's sheet must say, by hand from its version's own gradings: the score to one decimal, outward. */
const SAID: Readonly<Record<number, Readonly<Record<string, string[]>>>> = {
  1: {
    'Wren 24': ['5.3–15.2', 'lfp-drop-in 1.0.0'],
    'Dipper 24': ['88.1–88.9', 'lfp-drop-in 1.0.0'],
  },
  2: {
    'Wren 24': ['5.0–15.1', 'lfp-drop-in 1.1.0'],
    'Dipper 24': ['78.7–83.3', 'lfp-drop-in 1.1.0'],
    'Teal 24': ['0.0–10.6', 'lfp-drop-in 1.1.0', '1.0.0', '0.0–23.3', 'Pochard & Sons'],
    'Smew 12': ['Stop: treat as damaged', 'lfp-drop-in 1.1.0'],
  },
  3: {
    'Wren 24': ['5.3–15.1', 'lfp-drop-in 1.1.0'],
    'Dipper 24': ['88.2', 'lfp-drop-in 1.1.0'],
    'Teal 24': ['0.0–18.6', 'lfp-drop-in 1.1.0', '1.0.0', '0.0–41.2', 'Pochard & Sons'],
    'Smew 12': ['Stop: treat as damaged', 'lfp-drop-in 1.1.0'],
  },
};

/** By the copy kept with the records, as the app does. */
async function definitionIn(store: Store, sha256: string) {
  const check = checkDefinition(JSON.parse((await store.definitionText(sha256)) ?? 'null'));
  if (!check.ok) throw new Error(JSON.stringify(check.problems));
  return check.definition;
}

describe.each(EARLIER_VERSIONS)('version $version', (earlier) => {
  it.each(earlier.records())('gives the sheet of $nameplate.name and its PDF, the score as it was', async (was) => {
    const phone = newPhone();
    await layOut(phone, earlier.databaseNumber, earlier.rows());
    const store = await storeOn(phone);
    const record = foldRecord(was.packId, await store.entriesOf(was.packId));
    const { sha256 = '' } = record.checklist ?? {};
    const definition = await definitionIn(store, sha256);
    const carried = record.carriedFrom && (await definitionIn(store, record.carriedFrom.sha256));
    const sheet = makeSheet({
      definition,
      definitionSha256: sha256,
      record,
      grading: gradeRecord(definition, record),
      earlier: carried && { definition: carried, grading: gradeRecord(carried, record) },
      appVersion: '0.0.0',
      units: 'metric',
      locale: 'en',
      utcOffsetMinutes: 60,
    });
    const { name = '' } = record.nameplate;
    expect(sheet.title).toContain(name);
    const model = JSON.stringify(sheet);
    for (const words of SAID[earlier.version]?.[name] ?? ['no such pack']) expect(model).toContain(words);

    const pdf = await readPdf(await writePdf({ sheet, paper: 'a4', photos: (id) => store.photo(id), fonts: FONTS }));
    expect(pdf.title).toContain(name);
    for (const words of SAID[earlier.version]?.[name] ?? ['no such pack']) expect(pdf.text).toContain(words);
    const pictures = pdf.pages.reduce((sum, { imageCount }) => sum + imageCount, 0);
    expect(pictures).toBeGreaterThanOrEqual(record.photos.length);
  });
});

it('rechecks the 4 sheets that version 3 closed: every figure comes out as it was sealed, no line more and none less', () => {
  const sealed = Object.entries(earlierVersion(3).files()).filter(([path]) => path.startsWith('sealed/'));
  expect(sealed).toHaveLength(4);
  for (const [path, bytes] of sealed) {
    expect(path).toContain(createHash('sha256').update(bytes).digest('hex'));
    const again = recheck(new TextDecoder().decode(bytes), liftEntry);
    expect(again).toMatchObject({ outcome: 'rechecked', canonical: true, differences: [], missing: [], extra: [] });
  }
});
