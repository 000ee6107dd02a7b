import { expect, it } from 'vitest';
import { plainTable } from './plain-table.ts';

it('pads every column to its widest cell, rounds the ratio to 2 places and shows a dash where there is no yardstick', () => {
  const rows = [
    { what: 'PDF', measured: '160 ms', yardstick: 'bare library 95 ms', ratio: 160 / 95 },
    { what: 'gradings per second', measured: '236', yardstick: null, ratio: null },
  ];
  expect(plainTable(rows).split('\n')).toEqual([
    'what                 measured  yardstick, same run  ratio',
    '───────────────────  ────────  ───────────────────  ─────',
    'PDF                  160 ms    bare library 95 ms   1.68',
    'gradings per second  236       –                    –',
  ]);
});
