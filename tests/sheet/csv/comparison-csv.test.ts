import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { comparisonCsv } from '../../../src/sheet/csv/comparison-csv.ts';
import type { GridBlock, Section } from '../../../src/sheet/model/sheet.ts';

const cell = (text: string, note: string | null = null) => ({ text, note, glyph: null });
const GRID: GridBlock = {
  kind: 'grid',
  columns: [
    { title: 'Wren, 24', mark: 'sample 1' },
    { title: '=Tarn', mark: null },
  ],
  rows: [
    { id: 'rank', group: null, label: 'Rank', cells: [cell('1 of 2'), cell('2 of 2', 'tie')], differs: true },
    { id: 'cost', group: 'Cost', label: 'Per kWh', cells: [cell('EUR\u00a0200.00'), cell('–')], differs: true },
  ],
};
const sections: Section[] = [
  { id: 'result', title: 'Result', headed: false, blocks: [GRID] },
  {
    id: 'disclosure',
    title: 'How each sample was obtained',
    headed: true,
    blocks: [
      {
        kind: 'list',
        items: [
          { text: 'Wren, 24', detail: 'Sample bought.' },
          { text: '=Tarn', detail: 'Sample lent.' },
        ],
      },
    ],
  },
];

describe('comparisonCsv', () => {
  it('writes 5 lines: names, marks, the two of the grid and last the disclosure, formula and comma harmless', () => {
    expect(comparisonCsv({ sections })).toBe(
      [
        `Group,Line,"Wren, 24",'=Tarn`,
        ',Marks,sample 1,',
        ',Rank,1 of 2,2 of 2 (tie)',
        'Cost,Per kWh,EUR\u00a0200.00,–',
        ',Disclosure,Sample bought.,Sample lent.',
        '',
      ].join('\r\n'),
    );
  });

  it('is read back by papaparse as 5 rows of 4', () => {
    const { data } = Papa.parse(comparisonCsv({ sections }), { header: false, skipEmptyLines: true });
    expect(data.map((row) => row.length)).toEqual([4, 4, 4, 4, 4]);
    expect(data[0]).toEqual(['Group', 'Line', 'Wren, 24', "'=Tarn"]);
  });

  it('refuses a paper without a grid', () => {
    expect(() => comparisonCsv({ sections: [] })).toThrow('comparisonCsv: the paper must have a grid, got none');
  });
});
