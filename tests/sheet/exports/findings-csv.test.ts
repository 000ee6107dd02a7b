import papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { findingsCsv } from '../../../src/sheet/exports/findings-csv.ts';
import type { SheetInput } from '../../../src/sheet/model/sheet-context.ts';
import { CLOSED_ONCE, HASH_1 } from '../closed-pack.ts';
import { hutRecord } from '../hut-pack.ts';
import { CALLED_OUT, inputOf, ODD, WREN_INPUT } from './inputs.ts';

/** Read by another program than the one that wrote it. */
function rowsOf(input: SheetInput): Record<string, string>[] {
  const [header = [], ...rows] = papa.parse(findingsCsv(input), { header: false, skipEmptyLines: false }).data;
  // The last line is ended like every other: papaparse reads an empty one after it.
  expect(rows.pop()).toEqual(['']);
  for (const row of rows) expect(row).toHaveLength(header.length);
  return rows.map((row) => Object.fromEntries(header.map((name, place) => [name, row[place] ?? ''])));
}

const answers = hutRecord().answers;
const lugNote = (note: string) => ({
  ...answers,
  'main-lug': { kind: 'grade', grade: 'failed', evidence: 'measured', note } as const,
});

describe('the findings as CSV, read back by another program', () => {
  const [lug = {}, label = {}, ...more] = rowsOf(inputOf(hutRecord({ ...CLOSED_ONCE, photos: CALLED_OUT })));

  it('has 2 rows of 31 columns for the 2 findings of the hut pack, worst first', () => {
    expect(more).toEqual([]);
    expect(Object.keys(lug)).toHaveLength(31);
    expect([lug['Item id'], label['Item id']]).toEqual(['main-lug', 'case-label']);
    expect([lug.Finding, label.Finding]).toEqual(['1', '2']);
  });

  it('says pack, grade, risk, evidence and photos of the lug', () => {
    expect(lug).toMatchObject({
      Pack: 'Wren 24',
      Sample: '1',
      Checklist: 'hut',
      'Checklist version': '0.3.0',
      Route: 'whole route: 7 of 7 asked',
      Item: 'Main lug',
      Zone: 'Wiring',
      Grade: 'failed',
      'Surely or maybe': 'surely',
      'What was found': 'Strands end short of the barrel.',
      Hazard: 'Hot joint',
      // A failed safety item is probable (DESIGN §5), severity II: high by MIL-STD-882E Table III.
      Severity: 'II critical',
      Likelihood: 'B probable',
      Risk: 'high',
      'How it is known': 'measured',
      'Photo numbers': '1; 2',
    });
    expect(label).toMatchObject({ Hazard: '', Severity: '', Risk: '', 'Photo numbers': '' });
  });

  it('says on every row the verdict, 6 of 7 settled, all asked, and that the pack is invented', () => {
    for (const row of [lug, label]) {
      expect(row).toMatchObject({
        // A high risk that only work inside clears. The lid, not seen, is the one open item and bears no risk.
        Verdict: 'Workshop first',
        Settled: '6 of 7',
        'All asked': 'yes',
        'Invented demo': 'yes',
      });
    }
  });

  it('says 4 of 5 settled and not all asked of a short route, and no demo of a real pack', () => {
    const [row] = rowsOf(inputOf(hutRecord({ route: 'short', demo: false })));
    expect(row).toMatchObject({ Settled: '4 of 5', 'All asked': 'no', 'Invented demo': 'no' });
  });

  it('names both ends of an unsettled verdict, and the stop sign of a settled one', () => {
    // Vents not seen may have failed: a high risk that no remedy of the hut checklist clears.
    const open = { ...answers, 'cell-vents': { kind: 'notSeen', reason: 'Behind potting' } as const };
    const [row] = rowsOf(inputOf(hutRecord({ answers: open })));
    expect(row?.Verdict).toBe(
      'Unsettled: “Keep out of use” at worst, “Workshop first” at best: open items decide which.',
    );
    const [stop] = rowsOf(ODD['a stop sign found'] as SheetInput);
    expect(stop?.Verdict).toBe('Stop: treat as damaged');
  });

  it('loses 40 points of Build for the lug: zone weight 2 of 4, item weight 4 of 5, none of its credit', () => {
    expect(Number(lug['Points of Build lost'])).toBeCloseTo(40, 12);
  });

  it('names revision 1, its SHA-256, the day and the disclosure on every row', () => {
    for (const row of [lug, label]) {
      expect(row).toMatchObject({
        Sheet: 'Closed, revision 1',
        'Sheet revision': '1',
        'SHA-256 of the sheet': HASH_1,
        // 23:30 UTC on the 24th is the 25th one hour ahead.
        Date: '2026-11-25',
        Disclosure:
          'Invented demo: no such pack exists. Sample bought from a shop. No link of the tester’s pays a commission.',
      });
    }
  });

  it('gives a note that begins like a formula an apostrophe, and keeps quotes, commas and line ends of another', () => {
    const [formula] = rowsOf(inputOf(hutRecord({ answers: lugNote('=HYPERLINK("http://x.example")') })));
    expect(formula?.['Note of the tester']).toBe('\'=HYPERLINK("http://x.example")');
    const [several] = rowsOf(inputOf(hutRecord({ answers: lugNote('first, "so"\nsecond; third') })));
    expect(several?.['Note of the tester']).toBe('first, "so"\nsecond; third');
  });

  it('writes points in full: every row of Wren reads back as the very number of the grading', () => {
    const read = rowsOf(WREN_INPUT).map((row) => Number(row['Points of Build lost']));
    expect(read).toEqual(WREN_INPUT.grading.findings.map(({ lostPoints }) => lostPoints));
    expect(read.some((points) => !Number.isInteger(points * 10))).toBe(true);
  });

  it('leaves points empty where a stop sign withholds the score, and never says 0', () => {
    const rows = rowsOf(ODD['a stop sign found'] as SheetInput);
    expect(rows.map((row) => row['Points of Build lost'])).toEqual(rows.map(() => ''));
    expect(rows.map((row) => row['Item id'])).toContain('swollen');
  });

  it('has 1 row for a record without a finding, which says so and still has the disclosure', () => {
    const [row = {}, ...others] = rowsOf(ODD['nothing found'] as SheetInput);
    expect(others).toEqual([]);
    expect(row['What was found']).toBe('No item that was looked at was graded weak or failed.');
    expect(row['Item id']).toBe('');
    expect(row.Disclosure).toContain('Sample bought from a shop.');
  });

  it.each(Object.entries(ODD))('%s: a row for every finding', (_, input) => {
    expect(rowsOf(input)).toHaveLength(Math.max(1, input.grading.findings.length));
  });
});
