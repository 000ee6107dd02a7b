import { describe, expect, it } from 'vitest';
import { fuseResult } from '../../../src/grading/live-tests/fuse-result.ts';
import { member, packOf, test } from './tested-pack.ts';

const PLATE = { continuousCurrentA: 100, nominalVoltageV: 12.8, cellsInSeries: 4, stringsInParallel: 1 };
/** 33 CFR 183.425 Table 5: 330 A. */
const LEAD = { place: 'main', form: 'cable', printedAwg: '2/0', insulationDegC: 105 };
const AC_SET = { state: 'rested', resistanceBy: 'ac' };
const acCells = [1, 2, 3, 4].map((number) => member('cell', 5, { number, resistanceMohm: 0.25 }));
/** 20 to 100 A takes 13.2 to 13.0 V: 2.5 mΩ. */
const PACK_DC = { method: 'twoStep', of: 'pack', firstA: 20, firstV: 13.2, secondA: 100, secondV: 13.0, afterS: 1 };

describe('fuse advice', () => {
  it('is 125 A, from 125 up to 495 A, for 100 A on leads for 330 A, with 14.6 V and 14.6 kA to interrupt', () => {
    const result = fuseResult(packOf(PLATE, test('lead', 1, LEAD), test('cellSet', 5, AC_SET), ...acCells));
    expect(result.fault).toMatchObject({ bound: 'upper' });
    // 4 · 3.65 V over 4 · 0.25 mΩ.
    expect(result.fault?.currentA).toBeCloseTo(14_600, 6);
    expect(result.advice).toMatchObject({ fits: true, ratingA: 125, leastA: 125, mostA: 495, dcVoltageV: 14.6 });
    expect(result.advice).toMatchObject({ interruptAtLeast20kA: false });
    expect(result).toMatchObject({ leadAllowableA: 330, continuousCurrentA: 100, fullVoltageV: 14.6 });
  });

  it('rests on the low end of leads known as an interval: 330 A of 330 to 385', () => {
    const strands = { place: 'main', form: 'cable', way: 'bareStrands', diameterMm: 12, insulationDegC: 105 };
    expect(fuseResult(packOf(PLATE, test('lead', 1, strands))).leadAllowableA).toBe(330);
  });

  it('fits none between 125 and 0 A where air and insulation are both at 105 °C', () => {
    const { advice, leadAllowableA } = fuseResult(packOf(PLATE, test('lead', 1, { ...LEAD, aroundDegC: 105 })));
    expect(leadAllowableA).toBe(0);
    expect(advice).toEqual({ fits: false, leastA: 125, mostA: 0 });
  });

  it('takes 14.4 V from the nameplate before 3.65 V a cell, and nothing where neither is noted', () => {
    const at = (plate: object) => fuseResult(packOf(plate)).fullVoltageV;
    expect([at({ ...PLATE, chargeVoltageV: 14.4 }), at(PLATE), at({})]).toEqual([14.4, 14.6, null]);
  });

  it('names all three that are missing of a pack without tests or claims', () => {
    expect(fuseResult(packOf({}))).toEqual({
      advice: { fits: null, missing: ['continuousCurrentA', 'leadAllowableA', 'nominalVoltageV'] },
      leadAllowableA: null,
      fault: null,
      continuousCurrentA: null,
      nominalVoltageV: null,
      fullVoltageV: null,
    });
  });
});

describe('fault current', () => {
  const faultOf = (plate: object, ...entries: Parameters<typeof packOf>[1][]) =>
    fuseResult(packOf(plate, ...entries)).fault;
  const acRound = [test('cellSet', 5, AC_SET), ...acCells];
  const { stringsInParallel: _, ...noStrings } = PLATE;

  it('is at most 29.2 kA for two strings of the same cells', () => {
    const fault = faultOf({ ...PLATE, stringsInParallel: 2 }, ...acRound);
    expect(fault?.currentA).toBeCloseTo(29_200, 6);
    expect(fault?.bound).toBe('upper');
  });

  it('has no upper end while a cell is not read: it may resist less than the three that were', () => {
    expect(faultOf(PLATE, test('cellSet', 5, AC_SET), ...acCells.slice(0, 3))).toBeNull();
    const fault = faultOf(PLATE, test('cellSet', 5, AC_SET), ...acCells.slice(0, 3), test('resistance', 1, PACK_DC));
    expect(fault?.bound).toBe('lower');
  });

  // 14.6 V over 4 · 0.2 mΩ, whichever of the two rounds was made later.
  it('is at most 18.25 kA by the lesser of two whole rounds, 0.25 and 0.2 mΩ a cell, in either order', () => {
    const round = (place: number, resistanceMohm: number) => [
      test('cellSet', place, AC_SET),
      ...[1, 2, 3, 4].map((number) => member('cell', place, { number, resistanceMohm })),
    ];
    for (const [first, second] of [
      [0.25, 0.2],
      [0.2, 0.25],
    ] as const) {
      expect(faultOf(PLATE, ...round(5, first), ...round(6, second))?.currentA).toBeCloseTo(18_250, 6);
    }
  });

  it('has no upper end where the strings are not known', () => {
    expect(faultOf(noStrings, ...acRound)).toBeNull();
  });

  it('is at least 5.84 kA by 2.5 mΩ of the whole pack: 14.6 V over 2.5 mΩ, whatever its strings', () => {
    for (const plate of [noStrings, { ...PLATE, stringsInParallel: 2 }]) {
      const fault = faultOf(plate, test('resistance', 1, PACK_DC));
      expect(fault?.currentA).toBeCloseTo(5840, 6);
      expect(fault?.bound).toBe('lower');
    }
  });

  it('is at least 7.3 kA by DC readings of 0.5 mΩ at the cells, taken before those of the pack', () => {
    const cells = [1, 2, 3, 4].map((number) => member('cell', 6, { number, resistanceMohm: 0.5 }));
    const dcRound = [test('cellSet', 6, { state: 'rested', resistanceBy: 'dc' }), ...cells];
    expect(faultOf(PLATE, ...dcRound, test('resistance', 1, PACK_DC))?.currentA).toBeCloseTo(7300, 6);
  });

  it('is asked to be 20 kA where it is a lower estimate or not known', () => {
    const adviceOf = (...entries: Parameters<typeof packOf>[1][]) =>
      fuseResult(packOf(PLATE, test('lead', 1, LEAD), ...entries)).advice;
    expect(adviceOf()).toMatchObject({ interruptA: null, interruptAtLeast20kA: true });
    expect(adviceOf(test('resistance', 1, PACK_DC))).toMatchObject({ interruptA: null, interruptAtLeast20kA: true });
  });

  it('rests on no reading that does not say how it was made, and on no unknown number of cells', () => {
    const unsaid = [test('cellSet', 5, { state: 'rested' }), ...acCells];
    expect(faultOf(PLATE, ...unsaid)).toBeNull();
    expect(faultOf({ stringsInParallel: 1 }, ...acRound)).toBeNull();
  });
});
