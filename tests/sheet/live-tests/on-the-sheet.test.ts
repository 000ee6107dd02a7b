import { describe, expect, it } from 'vitest';
import type { LiveTests } from '../../../src/schema/live-tests/live-tests.ts';
import type { Nameplate } from '../../../src/schema/nameplate.ts';
import type { SectionId } from '../../../src/sheet/model/sheet.ts';
import { writePdf } from '../../../src/sheet/pdf/write-pdf.ts';
import { hutPhoto, hutRecord, hutSheet } from '../hut-pack.ts';
import { FONTS, jpegPhotos } from '../pdf-inputs.ts';
import { readPdf } from '../read-pdf.ts';
import { contextOf, fullRun, PACK_300 } from './bench-tests.ts';
import { MANY_NAMEPLATE, MANY_TESTS } from './many-tests.ts';
import { plain, result, results, said } from './texts-of.ts';

const sheetOf = (tests: Partial<LiveTests>, nameplate: Nameplate = PACK_300) =>
  hutSheet(hutRecord({ tests: contextOf(tests).tests, nameplate, photos: [hutPhoto(1)] }));
const blocksOf = (sheet: ReturnType<typeof sheetOf>, id: SectionId) =>
  sheet.sections.find((section) => section.id === id)?.blocks ?? [];

function headFigures(sheet: ReturnType<typeof sheetOf>): string[] {
  const block = blocksOf(sheet, 'promised').find(({ kind }) => kind === 'figures');
  if (block?.kind !== 'figures') return [];
  return block.figures.map(({ label, value, note }) => plain(`${label}: ${value}${note ? ` (${note})` : ''}`));
}

describe('the section of the live tests', () => {
  it('stands after what is promised, and not at all before a test was made', () => {
    const ids = sheetOf(MANY_TESTS).sections.map(({ id }) => id);
    expect(ids.slice(ids.indexOf('promised'), ids.indexOf('promised') + 3)).toEqual(['promised', 'tests', 'remedies']);
    expect(sheetOf({}).sections.map(({ id }) => id)).not.toContain('tests');
  });

  it('has 17 matters of a pack with a test of every kind, 4 runs, 3 trips and 4 trials of cut-offs among them', () => {
    const blocks = blocksOf(sheetOf(MANY_TESTS, MANY_NAMEPLATE), 'tests');
    expect(blocks.flatMap((block) => (block.kind === 'subhead' ? [block.text] : []))).toEqual([
      'Capacity and energy',
      'Cost per delivered kWh',
      'What a hard rate leaves',
      'Capacity runs',
      'Over-current',
      'Fuse at the terminal',
      'Cut-offs',
      'Leads and bars',
      'Joints under load',
      'Cells',
      'DC resistance',
      'Standby drain',
      'Side by side',
      'Read-out',
      'Codes on the cells',
      'Photo ruler',
      'Instruments',
    ]);
    const counted = (prefix: string) => results(blocks).filter(({ id }) => id.startsWith(prefix)).length;
    expect([counted('run-'), counted('trip-'), counted('cut-off-')]).toEqual([4, 3, 4]);
    expect(result(blocks, 'cost').value).toBe('EUR 105.54 per kWh');
  });
});

describe('promised and delivered', () => {
  it('heads with 292.2 Ah and the 106.95 per kWh it comes to, resting on nominal voltage', () => {
    const sheet = sheetOf({ runs: [fullRun(1, { chargeAh: 292.2, currentA: 60 })] });
    expect(headFigures(sheet)).toEqual([
      'Promised: 300 Ah · 3840 Wh (Wh not printed: Ah × V)',
      'Delivered: 292.2 Ah',
      'Per promised kWh: 104.17',
      'Per delivered kWh: 106.95 (charge × nominal voltage: the energy was not measured)',
    ]);
    expect(said(blocksOf(sheet, 'promised')).join(' ')).not.toContain('not measured:');
    expect(said(blocksOf(sheet, 'promised')).join(' ')).not.toContain('not tested');
  });

  it('heads with “at least” and no cost where no run was complete, and says so', () => {
    const sheet = sheetOf({ runs: [fullRun(1, { chargeAh: 292.2, currentA: 200, end: 'packDisconnect' })] });
    expect(headFigures(sheet)).toEqual([
      'Promised: 300 Ah · 3840 Wh (Wh not printed: Ah × V)',
      'Delivered: at least 292.2 Ah',
      'Per promised kWh: 104.17',
    ]);
    expect(said(blocksOf(sheet, 'promised'))).toContain(
      'No run both began full and ended empty: the pack may hold more, and no cost per delivered kWh is given.',
    );
  });

  it('says “not tested” of a pack whose only test is a trip', () => {
    const sheet = sheetOf({ trips: MANY_TESTS.trips });
    expect(headFigures(sheet)[1]).toBe('Delivered: not tested');
  });

  it('says that runs with figures out of all reach could not be worked out, and still makes the sheet', () => {
    const sheet = sheetOf({ runs: [fullRun(1, { chargeAh: 1e308, durationS: 1e-308 })] });
    expect(headFigures(sheet)[1]).toBe('Delivered: not tested');
    expect(said(blocksOf(sheet, 'tests')).join(' ')).toContain('Capacity runs: could not be worked out');
  });
});

describe('sources', () => {
  it('name each calculation used once, and none that was not', () => {
    const sources = said(blocksOf(sheetOf({ drains: MANY_TESTS.drains, joints: MANY_TESTS.joints }), 'sources'));
    expect(sources.slice(sources.indexOf('Of the calculations from the live tests'))).toEqual([
      'Of the calculations from the live tests',
      'list',
      'Ohm’s law',
      'Joule’s law with a constant thermal resistance',
    ]);
    expect(said(blocksOf(sheetOf({}), 'sources')).join(' ')).not.toContain('calculations');
  });
});

describe('on paper', () => {
  it('prints results, their workings and what plots say, with no character that the typeface lacks', async () => {
    const sheet = sheetOf(MANY_TESTS, MANY_NAMEPLATE);
    const { text } = await readPdf(await writePdf({ sheet, paper: 'a4', photos: jpegPhotos, fonts: FONTS }));
    for (const words of [
      'Live tests',
      'promised 300 Ah',
      'Run 3 · cold morning does not count as capacity: it was disconnected on the plateau',
      'EUR 105.54 per kWh',
      'Q = ∫ I dt',
      '± 0.96 Ah (k = 2)',
      'R = (V₁ − V₂) ÷ (I₂ − I₁)'.normalize('NFKC'),
      '250 A fuse, 32 V bolt-in',
      'sensor melted · a thermal switch stood in',
      'Of the calculations from the live tests',
    ]) {
      expect(text).toContain(words);
    }
    expect(text).not.toContain('□');
    expect(text).not.toContain('could not be printed');
  });
});

describe('how it was done', () => {
  const passed = { id: 'a'.repeat(32), made: `${'0'.repeat(15)}.000001.${'0'.repeat(32)}` };
  const gate = {
    ...passed,
    passedAtMs: Date.UTC(2026, 10, 14, 9, 30),
    day: '2026-11-14',
    acknowledged: ['a', 'b', 'c'],
  };

  // The hut is an hour ahead: 09:30 UTC is 10:30 there.
  it('names the moment and the 3 cautions before the sensors were made hot or cold, and nothing without', () => {
    const at = (blocks: ReturnType<typeof blocksOf>) =>
      blocks.findIndex((block) => block.kind === 'subhead' && block.text === 'Before the hot and cold sensor tests');
    const blocks = blocksOf(sheetOf({ sensorGates: [gate] }), 'method');
    const list = blocks[at(blocks) + 1];
    expect(list?.kind === 'list' ? list.items.map(({ text, detail }) => plain(`${text}: ${detail}`)) : []).toEqual([
      '14 November 2026, 10:30: 3 cautions acknowledged',
    ]);
    expect(at(blocksOf(sheetOf({}), 'method'))).toBe(-1);
  });
});
