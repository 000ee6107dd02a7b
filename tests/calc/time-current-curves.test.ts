import { expect, it } from 'vitest';
import { FUSE_FAMILIES } from '../../src/calc/tables/fuse-gates.ts';
import { fuseGatePoints, leadWithstandCurve } from '../../src/calc/time-current-curves.ts';

const family = (id: string) => {
  const found = FUSE_FAMILIES.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no family ${id}`);
  return found;
};

// (k S / I)² with k = 115: 2.116 s at 1 kA through 12.65 mm²; 211.6 s at 100 A.
it('draws a lead’s withstand as a line of slope −2, “at least” over 5 s', () => {
  const lead = Object.freeze({ areaMm2: 12.65, insulation: 115, startDegC: 70 });
  const curve = leadWithstandCurve(lead, [100, 1000, 2000]);
  expect(curve.map(({ currentA, bound }) => [currentA, bound])).toEqual([
    [100, 'atLeast'],
    [1000, 'exact'],
    [2000, 'exact'],
  ]);
  const times = curve.map(({ timeS }) => timeS);
  expect(times[0]).toBeCloseTo((115 * 12.65) ** 2 / 1e4, 6);
  expect(times[1]).toBeCloseTo((115 * 12.65) ** 2 / 1e6, 9);
  expect(times[2]).toBeCloseTo((115 * 12.65) ** 2 / 4e6, 9);
});

it('refuses a current of 0 in a curve', () => {
  expect(() => leadWithstandCurve({ areaMm2: 10, insulation: 'pvc', startDegC: 30 }, [100, 0])).toThrow(RangeError);
});

// UL 248-14 as a maker's selection guide prints it: 135 % within 1 h, 200 % within 2 min up to 30 A.
it('puts the gates of a 20 A miniature fuse at 27 A and 40 A', () => {
  expect(fuseGatePoints(family('ul248-14'), 20)).toEqual([
    { currentA: 27, maxTimeS: 3600 },
    { currentA: 40, maxTimeS: 120 },
  ]);
});

it('has no gates for a class T fuse, and none for a rating outside a family', () => {
  expect(fuseGatePoints(family('ul248-15-t'), 200)).toEqual([]);
  expect(fuseGatePoints(family('iec60127-2-f'), 200)).toEqual([]);
});

it('refuses a rating of 0', () => {
  expect(() => fuseGatePoints(family('ul248-14'), 0)).toThrow(RangeError);
});
