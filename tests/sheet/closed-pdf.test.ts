import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import { foldRecord } from '../../src/record/fold-record.ts';
import type { PackRecord } from '../../src/record/pack-record.ts';
import type { Entry } from '../../src/schema/entry.ts';
import type { Sheet } from '../../src/sheet/model/sheet.ts';
import { writePdf } from '../../src/sheet/pdf/write-pdf.ts';
import { closingValue, entry, PACK, tombstone } from '../record/made-entries.ts';
import { attachment, CLOSED_ONCE, CLOSED_TWICE, closedSheet, HASH_1, HASH_2, HASH_2_GROUPS } from './closed-pack.ts';
import { hutSheet } from './hut-pack.ts';
import { FONTS, noPhotos } from './pdf-inputs.ts';
import { readPdf } from './read-pdf.ts';

const write = (sheet: Sheet, paper: 'a4' | 'letter' = 'a4') =>
  writePdf({ sheet, paper, photos: noPhotos, fonts: FONTS });
const sha256 = (bytes: ArrayBuffer) => createHash('sha256').update(new Uint8Array(bytes)).digest('hex');

it.each(['a4', 'letter'] as const)(
  'prints both SHA-256 whole on %s, in groups of 4 that no line breaks',
  async (paper) => {
    const { text } = await readPdf(await write(closedSheet(CLOSED_TWICE), paper));
    expect(text).toContain(HASH_2_GROUPS);
    expect(text.replaceAll(' ', '')).toContain(HASH_1);
  },
);

it('says “Closed, revision 2” on every page, and of revision 1 on every page that it was replaced', async () => {
  const reply = attachment({ text: 'A long reply. '.repeat(300) });
  const record: Partial<PackRecord> = { ...CLOSED_TWICE, attachments: [reply] };
  for (const [shownRevision, mark] of [
    [HASH_2, 'Closed, revision 2'],
    [HASH_1, 'Revision 1, replaced'],
  ] as const) {
    const { pages } = await readPdf(await write(closedSheet(record, { shownRevision })));
    expect(pages.length).toBeGreaterThan(4);
    for (const { text } of pages) expect(text).toContain(mark);
  }
});

it('heads an older revision with what replaced it, before its name', async () => {
  const { pages } = await readPdf(await write(closedSheet(CLOSED_TWICE, { shownRevision: HASH_1 })));
  expect(pages[0]?.text).toMatch(
    /^Revision 1, replaced by revision 2 on 3 December 2026: The lug was crimped again before it was sent\. .*Wren 24/,
  );
});

it('breaks 5 marks that are wider than the page into rows and loses none', async () => {
  const attachments = [
    attachment({}),
    attachment({ kind: 'correction' }),
    attachment({ kind: 'correction', to: HASH_1 }),
  ];
  const sheet = closedSheet({ ...CLOSED_TWICE, attachments });
  const { text } = (await readPdf(await write(sheet))).pages[0] ?? { text: '' };
  for (const mark of sheet.head.marks) expect(text).toContain(mark);
});

it('prints reply and correction whole, the maker’s words apart', async () => {
  const attachments = [attachment({}), attachment({ kind: 'correction', text: 'The lug is 35 mm².', to: HASH_1 })];
  const { text } = await readPdf(await write(closedSheet({ ...CLOSED_TWICE, attachments })));
  expect(text).toContain('Correction to revision 1 · Wren Works · 4 December 2026 The lug is 35 mm2.');
  expect(text).toContain('We have changed the crimp tool. From serial 2200 on every lug is pulled.');
  expect(text).toContain('Not checked by the tester.');
});

it('comes out as the same bytes after the pack was put away and brought back, and as others after an answer', async () => {
  const sealed = [
    entry('pack', 'made', {}, 1000),
    entry('nameplate', 'name', 'Wren 24', 2000),
    entry('answer', 'main-lug', { kind: 'grade', grade: 'failed', evidence: 'seen' }, 3000),
    entry('closing', HASH_1, closingValue(1), 10_000),
  ];
  const sheetOf = (entries: readonly Entry[]) => hutSheet(foldRecord(PACK, entries));
  const first = sha256(await write(sheetOf(sealed)));
  const back = [...sealed, tombstone('pack', 'made', 20_000), entry('pack', 'made', {}, 30_000)];
  expect(foldRecord(PACK, back).newestAt).not.toBe(foldRecord(PACK, sealed).newestAt);
  expect(sha256(await write(sheetOf(back)))).toBe(first);
  const changed = [...sealed, entry('answer', 'tidy', { kind: 'grade', grade: 'weak', evidence: 'seen' }, 20_000)];
  expect(sha256(await write(sheetOf(changed)))).not.toBe(first);
});

it('comes out as the same bytes a second later, and as others once something is attached', async () => {
  const first = sha256(await write(closedSheet(CLOSED_ONCE)));
  await new Promise((resolve) => setTimeout(resolve, 1100));
  expect(sha256(await write(closedSheet(CLOSED_ONCE)))).toBe(first);
  const attached = closedSheet({ ...CLOSED_ONCE, attachments: [attachment({ to: HASH_1 })] });
  expect(sha256(await write(attached))).not.toBe(first);
});

it('never prints a SHA-256 on another page than the revision it is of, wherever the page ends', async () => {
  for (let lineCount = 0; lineCount < 48; lineCount += 3) {
    const sheet = closedSheet({ ...CLOSED_TWICE, words: { opinion: 'A line.\n'.repeat(lineCount) } });
    const { pages } = await readPdf(await write(sheet));
    for (const { text } of pages) {
      for (const [head, group] of [
        ['Revision 2, this sheet', 'ba78 16bf'],
        ['Revision 1 Closed', '649b 934c'],
      ] as const) {
        expect(text.includes(head)).toBe(text.includes(group));
      }
    }
  }
});
