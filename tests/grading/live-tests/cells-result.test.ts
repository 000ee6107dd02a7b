import { describe, expect, it } from 'vitest';
import { cellsResults } from '../../../src/grading/live-tests/cells-result.ts';
import { member, packOf, test } from './tested-pack.ts';

type Cell = Record<string, number>;

function cells(set: object, readings: readonly Cell[], plate = {}) {
  const entries = readings.map((cell, at) => member('cell', 1, { number: at + 1, ...cell }));
  const [result] = cellsResults(packOf(plate, test('cellSet', 1, set), ...entries));
  if (result === undefined) throw new Error('no set');
  return result;
}

const volts = (...list: number[]): Cell[] => list.map((voltageV) => ({ voltageV }));

describe('voltages', () => {
  it('spread by 10 mV from cell 3 to cell 2, with 4 of 4 read', () => {
    const result = cells({ state: 'rested', restedMin: 60 }, volts(3.303, 3.31, 3.3, 3.305), { cellsInSeries: 4 });
    expect(result).toMatchObject({ readCount: 4, expectedCount: 4 });
    expect(result.spread).toEqual({ lowV: 3.3, highV: 3.31, spreadMv: 10, lowNumber: 3, highNumber: 2 });
    expect(result.voltageOutliers).toEqual({ ok: false, because: 'fewerThanSix' });
  });

  it('set cell 7 of eight apart, whose 3.200 V lie 100 mV below the others', () => {
    const result = cells({ state: 'nearFull' }, volts(3.301, 3.302, 3.3, 3.303, 3.299, 3.302, 3.2, 3.301));
    expect(result.voltageOutliers).toEqual({ ok: true, numbers: [7] });
  });

  it('name the cell by its number, not by its place among those read: 9', () => {
    const entries = [3.301, 3.302, 3.3, 3.303, 3.299, 3.302, 3.301].map((voltageV, at) =>
      member('cell', 1, { number: at + 1, voltageV }),
    );
    const pack = packOf({}, test('cellSet', 1, { state: 'rested' }), ...entries, member('cell', 1, { number: 8 }));
    const withNinth = packOf(
      {},
      test('cellSet', 1, { state: 'rested' }),
      ...entries,
      member('cell', 1, { number: 8 }),
      member('cell', 1, { number: 9, voltageV: 3.1 }),
    );
    expect(cellsResults(pack)[0]).toMatchObject({ readCount: 7 });
    expect(cellsResults(withNinth)[0]?.voltageOutliers).toEqual({ ok: true, numbers: [9] });
  });

  it('of one cell have no spread, and of none nothing at all', () => {
    expect(cells({ state: 'rested' }, volts(3.3)).spread).toBeNull();
    expect(cells({ state: 'rested' }, [{ resistanceMohm: 0.3 }])).toMatchObject({
      readCount: 0,
      expectedCount: null,
      spread: null,
      restBands: null,
      bmsErrors: [],
      worstBmsErrorMv: null,
    });
  });
});

describe('rest voltages', () => {
  const LIST = volts(3.19, 3.28, 3.36);

  it('are bands: under 3.20 V below 20 %, over 3.35 V above 90 %, between them cannot be told', () => {
    expect(cells({ state: 'rested', restedMin: 60 }, LIST).restBands).toEqual([
      { number: 1, band: 'below20' },
      { number: 2, band: 'cannotTell' },
      { number: 3, band: 'over90' },
    ]);
  });

  it('are none after 5 minutes, or where nobody noted how long', () => {
    for (const restedMin of [{ restedMin: 5 }, {}]) {
      const bands = cells({ state: 'rested', ...restedMin }, LIST).restBands;
      expect(bands?.map(({ band }) => band)).toEqual(['notRested', 'notRested', 'notRested']);
    }
  });

  it('are not asked of cells under load', () => {
    expect(cells({ state: 'underLoad', restedMin: 60 }, LIST).restBands).toBeNull();
  });
});

it('tells a mean of 0.25 mΩ and a spread of 40 % of 0.20, 0.25, 0.25 and 0.30 mΩ', () => {
  const { resistance } = cells(
    { state: 'rested', resistanceBy: 'ac' },
    [0.2, 0.25, 0.25, 0.3].map((resistanceMohm) => ({ resistanceMohm })),
  );
  expect(resistance?.meanMohm).toBeCloseTo(0.25, 12);
  expect(resistance?.spreadFrac).toBeCloseTo(0.4, 12);
  expect(resistance).toMatchObject({ readCount: 4, outliers: { ok: false, because: 'fewerThanSix' } });
  expect(cells({ state: 'rested' }, [{ resistanceMohm: 0.3 }]).resistance).toMatchObject({ spreadFrac: null });
  expect(cells({ state: 'rested' }, volts(3.3)).resistance).toBeNull();
});

it('finds the BMS 8 mV below the meter at its worst, and leaves out cells that only one of them read', () => {
  const { bmsErrors, worstBmsErrorMv } = cells({ state: 'rested' }, [
    { voltageV: 3.31, bmsVoltageV: 3.302 },
    { voltageV: 3.305, bmsVoltageV: 3.308 },
    { voltageV: 3.306 },
    { bmsVoltageV: 3.4 },
  ]);
  expect(bmsErrors.map(({ number }) => number)).toEqual([1, 2]);
  expect(bmsErrors[0]?.errorMv).toBeCloseTo(-8, 9);
  expect(bmsErrors[1]?.errorMv).toBeCloseTo(3, 9);
  expect(worstBmsErrorMv).toBeCloseTo(8, 9);
});
