import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { comparisonCsv } from '../../../src/sheet/csv/comparison-csv.ts';
import type { GridBlock, Section, Sheet } from '../../../src/sheet/model/sheet.ts';

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
const head = { caution: 'No certification.' } as Sheet['head'];
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
  {
    id: 'cautions',
    title: 'Cautions',
    headed: true,
    blocks: [{ kind: 'list', items: [{ text: 'A score says, at most, how it is built.' }] }],
  },
];

describe('comparisonCsv', () => {
  it('writes 7 lines: names, marks, the two of the grid, the disclosure and last the cautions, which stand with no pack, formula and comma harmless', () => {
    expect(comparisonCsv({ head, sections })).toBe(
      [
        `Group,Line,"Wren, 24",'=Tarn`,
        ',Marks,sample 1,',
        ',Rank,1 of 2,2 of 2 (tie)',
        'Cost,Per kWh,EUR\u00a0200.00,–',
        ',Disclosure,Sample bought.,Sample lent.',
        'Caution,No certification.,,',
        'Caution,"A score says, at most, how it is built.",,',
        '',
      ].join('\r\n'),
    );
  });

  it('is read back by papaparse as 7 rows of 4', () => {
    const { data } = Papa.parse(comparisonCsv({ head, sections }), { header: false, skipEmptyLines: true });
    expect(data.map((row) => row.length)).toEqual([4, 4, 4, 4, 4, 4, 4]);
    expect(data[0]).toEqual(['Group', 'Line', 'Wren, 24', "'=Tarn"]);
  });

  it('refuses a paper without a grid', () => {
    expect(() => comparisonCsv({ head, sections: [] })).toThrow('comparisonCsv: the paper must have a grid, got none');
  });
});
