import { describe, expect, it } from 'vitest';
import { cellRowCount, MOST_CELLS } from '../../../src/app/live-tests/cells/cell-rows.ts';
import { cellsKind, cellsNotices } from '../../../src/app/live-tests/kinds/cells.ts';
import { parallelKind } from '../../../src/app/live-tests/kinds/parallel.ts';
import { numberedPut } from '../../../src/app/live-tests/numbered-put.ts';
import { memberCount, memberParts } from '../../../src/app/live-tests/set-members.ts';
import { NO_LIVE_TESTS } from '../../../src/record/fold-live-tests.ts';
import { cellsWords } from '../../../src/text/live-tests/cells.ts';

const SET_ID = 'a'.repeat(32);
const made = `000001790000000.000000.${'0'.repeat(32)}`;
const set = Object.freeze({
  id: SET_ID,
  made,
  state: 'rested' as const,
  cells: Object.freeze([
    { number: 1, voltageV: 3.3 },
    { number: 3, voltageV: 3.31 },
  ]),
});
const context = { nameplate: {}, tests: { ...NO_LIVE_TESTS, cellSets: [set] }, units: 'metric' as const };

describe('rows of the cells', () => {
  it.each([
    ['8 on the Nameplate', { cellsInSeries: 8, read: [], added: 0 }, 8],
    ['8 on the Nameplate, a ninth read', { cellsInSeries: 8, read: [1, 9], added: 0 }, 9],
    ['8 on the Nameplate, two more asked for', { cellsInSeries: 8, read: [1], added: 2 }, 10],
    ['nothing on the Nameplate', { cellsInSeries: undefined, read: [], added: 0 }, 4],
    ['nothing on the Nameplate, a 16th read', { cellsInSeries: undefined, read: [16], added: 0 }, 16],
    ['more than can be numbered', { cellsInSeries: 2000, read: [], added: 1 }, MOST_CELLS],
  ])('%s', (_, input, count) => {
    expect(cellRowCount(input)).toBe(count);
  });
});

describe('one cell or share as an entry', () => {
  const place = { subject: 'cell' as const, setId: SET_ID, number: 3 };

  it('keeps what else was read of the cell, and what a newer version wrote, without its number', () => {
    const before = Object.freeze({ number: 3, voltageV: 3.3, fromLater: true });
    expect(numberedPut({ ...place, before }, 'resistanceMohm', 0.21)).toEqual({
      subject: 'cell',
      part: `${SET_ID}/3`,
      v: { voltageV: 3.3, fromLater: true, resistanceMohm: 0.21 },
    });
  });

  it('has no entry once its last figure is taken away: what was not read is not zero', () => {
    const before = { number: 3, voltageV: 3.3 };
    expect(numberedPut({ ...place, before }, 'voltageV', null)).toEqual({
      subject: 'cell',
      part: `${SET_ID}/3`,
      gone: true,
    });
    expect(numberedPut({ ...place, before: undefined }, 'voltageV', 0)).toMatchObject({ v: { voltageV: 0 } });
  });
});

describe('a round of readings', () => {
  it('is written without its 2 cells, which are deleted with it', () => {
    const [alone] = cellsKind.testsOf(context.tests);
    expect(alone).toEqual({ id: SET_ID, made, state: 'rested' });
    expect(alone && memberCount(alone)).toBe(2);
    expect(alone && memberParts(alone)).toEqual([`${SET_ID}/1`, `${SET_ID}/3`]);
    expect(alone && cellsKind.deletedWith?.(alone)).toEqual([
      { subject: 'cell', part: `${SET_ID}/1` },
      { subject: 'cell', part: `${SET_ID}/3` },
    ]);
  });

  it('reads in a line as its state and how many cells were read', () => {
    const [alone] = cellsKind.testsOf(context.tests);
    expect(alone && cellsKind.summary(alone, context)).toBe('Rested · 2 cells read');
    expect(cellsKind.summary({ state: 'nearFull' }, context)).toBe('Near full');
    expect(cellsKind.summary({}, context)).toBe('');
    expect(parallelKind.summary({ of: 'packs', currentA: 80 }, context)).toBe('Packs · 80\u00a0A');
  });

  it('says what its state cannot settle: 29 min of rest do not settle, 30 do', () => {
    expect(cellsNotices({ state: 'rested', restedMin: 29 })).toEqual([cellsWords.restShort]);
    expect(cellsNotices({ state: 'rested', restedMin: 30 })).toEqual([]);
    expect(cellsNotices({ state: 'justEmptied' })).toEqual([cellsWords.justEmptiedSettlesNothing]);
    expect(cellsNotices({ state: 'underLoad' })).toEqual([cellsWords.underLoadSettlesNothing]);
    expect(cellsNotices({ state: 'nearFull' })).toEqual([]);
  });
});
