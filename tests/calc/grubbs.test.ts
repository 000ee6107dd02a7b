import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { grubbs, grubbsP } from '../../src/calc/grubbs.ts';
import { grubbsCriticalG } from '../../src/calc/grubbs-critical.ts';
import { sampleDeviation } from '../../src/calc/sample-deviation.ts';
import { studentTCritical, studentTUpperTail } from '../../src/calc/student-t.ts';
import fixture from '../fixtures/grubbs.json';

const EXAMPLE = Object.freeze([...fixture.example.data]);

describe("Student's t", () => {
  it('has the closed tails of 1 and 2 degrees of freedom: ½ − atan(t)/π and ½ − t/(2√(2 + t²))', () => {
    for (const t of [0, 0.3, 1, 2.5, 12]) {
      expect(studentTUpperTail(t, 1)).toBeCloseTo(0.5 - Math.atan(t) / Math.PI, 13);
      expect(studentTUpperTail(t, 2)).toBeCloseTo(0.5 - t / (2 * Math.sqrt(2 + t * t)), 13);
    }
  });

  it('agrees with jstat 1.9 on tails and critical values to 1e-7', () => {
    for (const freedom of [1, 2, 4, 6, 14, 30, 100]) {
      for (const tail of [0.25, 0.05, 0.025, 0.005, 0.0005]) {
        const t = jstat.jStat.studentt.inv(1 - tail, freedom);
        expect(Math.abs(studentTCritical(tail, freedom) / t - 1)).toBeLessThan(1e-7);
        expect(studentTUpperTail(t, freedom)).toBeCloseTo(1 - jstat.jStat.studentt.cdf(t, freedom), 7);
      }
    }
  });

  it.each([
    ['negative t', () => studentTUpperTail(-1, 3)],
    ['no freedom', () => studentTUpperTail(1, 0)],
    ['probability over ½', () => studentTCritical(0.6, 3)],
    ['probability 0', () => studentTCritical(0, 3)],
  ])('refuses bad input: %s', (_name, run) => {
    expect(run).toThrow(RangeError);
  });
});

describe('grubbsCriticalG', () => {
  it.each(fixture.rows)('gives the printed one-sided 5 % value at n = $n: $oneSided', ({ n, oneSided }) => {
    expect(Math.abs(grubbsCriticalG({ count: n, sides: 1 }) - oneSided)).toBeLessThanOrEqual(0.00005001);
  });

  // The printed table gives three decimals, two of which (n = 3 and 8) are off by more than half a unit.
  it.each(fixture.rows.filter((row) => row.twoSided !== null))(
    'gives the printed two-sided 5 % value at n = $n: $twoSided',
    ({ n, twoSided, computedTwoSided }) => {
      expect(Math.abs(grubbsCriticalG({ count: n }) - (twoSided ?? Number.NaN))).toBeLessThan(0.00075);
      expect(grubbsCriticalG({ count: n })).toBeCloseTo(computedTwoSided, 4);
    },
  );

  it('gives two-sided values for n = 3 to 20 by the formula of NIST with the t of jstat 1.9', () => {
    expect(fixture.rows).toHaveLength(18);
    for (const { n } of fixture.rows) {
      const t = jstat.jStat.studentt.inv(1 - 0.05 / (2 * n), n - 2);
      const critical = ((n - 1) / Math.sqrt(n)) * Math.sqrt(t ** 2 / (n - 2 + t ** 2));
      expect(grubbsCriticalG({ count: n })).toBeCloseTo(critical, 7);
    }
  });

  it('is 1.4625 one-sided at n = 4, where t has a closed form', () => {
    expect(grubbsCriticalG({ count: 4, sides: 1 })).toBeCloseTo(1.4625, 12);
  });

  it.each([{ count: 2 }, { count: 6.5 }, { count: 8, alpha: 0 }, { count: 8, alpha: 1 }])('refuses %o', (level) => {
    expect(() => grubbsCriticalG(level)).toThrow(/^grubbsCriticalG: /);
  });
});

describe('grubbs', () => {
  it('finds 245.57 in the example of the NIST e-Handbook: G = 2.468765 over 2.126, p = 3.0e-7', () => {
    const found = grubbs(EXAMPLE);
    if (!found.ok) throw new Error(found.because);
    expect(found.index).toBe(7);
    expect(found.outlier).toBe(true);
    expect(found.g).toBeCloseTo(fixture.example.G, 12);
    expect(found.criticalG).toBeCloseTo(fixture.example.criticalTwoSided, 2);
    expect(Math.abs(found.p - fixture.example.pTwoSided)).toBeLessThan(1e-15);
  });

  it.each(fixture.cases)('reproduces $id: $expected', (row) => {
    expect(row.origin).toBe('published');
    const found = caseValue(row.id, row.inputs.n ?? 8);
    expect(Math.abs(found - row.published)).toBeLessThan(row.tolerance ?? 0.50001 * 10 ** -(row.rounding ?? 0));
    expect(Math.abs(found / row.expected - 1)).toBeLessThan(1e-9);
  });

  it('gives back 5 % at the critical value, and never more than 1 or less than 0', () => {
    for (const count of [6, 8, 16, 40]) {
      expect(grubbsP({ g: grubbsCriticalG({ count }), count, sides: 2 })).toBeCloseTo(0.05, 10);
    }
    expect(grubbsP({ g: 0.5, count: 8, sides: 2 })).toBe(1);
    expect(grubbsP({ g: 7 / Math.sqrt(8), count: 8, sides: 2 })).toBeCloseTo(0, 12);
  });

  it('cannot tell from five values, nor from equal ones', () => {
    expect(grubbs([1, 2, 3, 4, 50])).toEqual({ ok: false, because: 'fewerThanSix' });
    expect(grubbs([2, 2, 2, 2, 2, 2])).toEqual({ ok: false, because: 'noSpread' });
    expect(grubbs([1, 2, 3, 4, 5, 50])).toMatchObject({ ok: true, index: 5, outlier: true });
    expect(grubbs([1, 2, 3, 4, 5, 6])).toMatchObject({ ok: true, outlier: false });
    expect(() => grubbs([1, 2, 3, 4, 5, Number.NaN])).toThrow(RangeError);
  });
});

function caseValue(id: string, count: number): number {
  const found = grubbs(EXAMPLE);
  if (!found.ok) throw new Error(found.because);
  if (id === 'grubbs-G') return found.g;
  if (id === 'grubbs-p-two') return found.p;
  if (id === 'grubbs-sd') return sampleDeviation(EXAMPLE);
  if (id.startsWith('grubbs-two')) return grubbsCriticalG({ count });
  if (id.startsWith('grubbs-one') || id === 'grubbs-crit-one') return grubbsCriticalG({ count, sides: 1 });
  throw new Error(`no such case: ${id}`);
}
