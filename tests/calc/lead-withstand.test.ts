import { describe, expect, it } from 'vitest';
import { leadWithstandS } from '../../src/calc/lead-withstand.ts';
import k from '../fixtures/adiabatic-k.json' with { type: 'json' };
import worked from '../fixtures/adiabatic-worked-examples.json' with { type: 'json' };

// Public worked examples of S = √(I² t)/k. A size half a unit above the printed one stands longer, one below shorter.
const printed = worked.rows.flatMap((row) =>
  row.printedMm2 === null || row.halfUnit === null
    ? []
    : [{ ...row, halfUnit: row.halfUnit, printedMm2: row.printedMm2 }],
);
it.each(printed.map((row) => [row.id, row.printedMm2, row.timeS, row.currentA, row] as const))(
  '%s: %d mm² stands for %d s at %d A',
  (_id, printedMm2, timeS, currentA, row) => {
    const standsS = (areaMm2: number) => leadWithstandS({ areaMm2, currentA, insulation: row.k, startDegC: 70 }).timeS;
    expect(standsS(printedMm2 - row.halfUnit)).toBeLessThanOrEqual(timeS);
    expect(standsS(printedMm2 + row.halfUnit)).toBeGreaterThanOrEqual(timeS);
  },
);

// The same source: 3000 A for 0.4 s, I·√t printed as 1897.5 (exact 1897.4) over k 115.
it('adia-2: 1897.4/115 mm² stands for 0.4 s at 3000 A', () => {
  const lead = { areaMm2: 1897.4 / 115, currentA: 3000, insulation: 115, startDegC: 70 };
  expect(leadWithstandS(lead).timeS).toBeCloseTo(0.4, 4);
});

describe('insulation', () => {
  // BS 7671 Table 43.1: start, end and k as printed.
  it.each([
    ['pvc', 70, 160, 115],
    ['xlpe', 90, 250, 143],
    ['epr', 90, 250, 143],
    ['silicone', 180, 350, 132],
  ] as const)('%s from %d °C ends at %d °C with k %d', (insulation, startDegC, finalDegC, kPrinted) => {
    const found = leadWithstandS({ areaMm2: 25, currentA: 1000, insulation, startDegC });
    expect(found.finalDegC).toBe(finalDegC);
    expect(Math.round(found.kAs05PerMm2)).toBe(kPrinted);
    expect(k.rows).toContainEqual({ metal: 'copper', startDegC, finalDegC, k: kPrinted });
  });

  it('lets PVC over 300 mm² reach only 140 °C', () => {
    const lead = { currentA: 5000, insulation: 'pvc', startDegC: 70 } as const;
    expect(leadWithstandS({ ...lead, areaMm2: 300 }).finalDegC).toBe(160);
    expect(leadWithstandS({ ...lead, areaMm2: 301 }).finalDegC).toBe(140);
  });
});

// k 141.3 for silicone-covered copper from 30 °C is not printed; closed form instead: K √ln(584.5/264.5).
it('gives 10 mm² silicone lead from 30 °C 4.04 s at 1000 A (closed form)', () => {
  const kSquared = ((0.00345 * 254.5) / 1.7241e-5) * Math.log(584.5 / 264.5);
  const found = leadWithstandS({ areaMm2: 10, currentA: 1000, insulation: 'silicone', startDegC: 30 });
  expect(found.timeS).toBeCloseTo(kSquared * 1e-4, 9);
  expect(found.timeS).toBeCloseTo(4.04, 2);
  expect(found.bound).toBe('exact');
});

it('is exact up to 5 s, and “at least” beyond', () => {
  const lead = { areaMm2: 1, insulation: 100, startDegC: 30 };
  // (100/I)²: 5 s at 100/√5 A.
  expect(leadWithstandS({ ...lead, currentA: 100 / Math.sqrt(4.999) }).bound).toBe('exact');
  expect(leadWithstandS({ ...lead, currentA: 100 / Math.sqrt(5.001) }).bound).toBe('atLeast');
});

it('quarters the time at double the current, and tells where a given k ends', () => {
  const lead = { areaMm2: 16, insulation: 115, startDegC: 70 } as const;
  const at1000 = leadWithstandS({ ...lead, currentA: 1000 });
  expect(at1000.timeS / leadWithstandS({ ...lead, currentA: 2000 }).timeS).toBeCloseTo(4, 12);
  expect(Math.abs(at1000.finalDegC - 160)).toBeLessThan(1);
});

it('takes aluminium as weaker: (94.6/142.9)² of the time of copper in XLPE', () => {
  const lead = { areaMm2: 25, currentA: 3000, insulation: 'xlpe', startDegC: 90 } as const;
  const ratio = leadWithstandS({ ...lead, metal: 'aluminium' }).timeS / leadWithstandS(lead).timeS;
  // BS 7671 prints 94 and 143.
  expect(Math.abs(ratio / (94 / 143) ** 2 - 1)).toBeLessThan(0.015);
});

it('stands 0 s when it begins at the limit or above', () => {
  const lead = { areaMm2: 25, currentA: 100, insulation: 'pvc' } as const;
  for (const startDegC of [160, 180]) {
    expect(leadWithstandS({ ...lead, startDegC })).toEqual({
      timeS: 0,
      bound: 'exact',
      kAs05PerMm2: 0,
      finalDegC: startDegC,
    });
  }
});

it.each([
  ['no area', { areaMm2: 0 }],
  ['no current', { currentA: 0 }],
  ['a k of 0', { insulation: 0 }],
  ['a start that is not a number', { startDegC: Number.NaN }],
])('refuses bad input: %s', (_name, bad) => {
  expect(() => leadWithstandS({ areaMm2: 25, currentA: 100, insulation: 'pvc', startDegC: 30, ...bad })).toThrow(
    RangeError,
  );
});
