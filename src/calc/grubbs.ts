import { grubbsCriticalG } from './grubbs-critical.ts';
import { meanOf } from './mean-of.ts';
import { sampleDeviation } from './sample-deviation.ts';
import { studentTUpperTail } from './student-t.ts';

export type Grubbs =
  | { ok: true; index: number; g: number; criticalG: number; p: number; outlier: boolean }
  | { ok: false; because: 'fewerThanSix' | 'noSpread' };

/** Our choice: with fewer values the test hardly ever sees anything, and a limit on the spread says more. */
export const GRUBBS_LEAST_COUNT = 6;

/**
 * Grubbs' test at 5 %, either way: is the value furthest from the mean an outlier of otherwise normal values?
 *
 * Shape   values in; the index of the furthest one (the first of equals), its G = |x − mean| / s, the critical G and the
 *         probability of so large a G by chance out. Cannot tell from fewer than six values or equal ones.
 * Error   tests one value; two outliers on one side hide each other, where robustZ sees them.
 * Throws  RangeError if a value is not finite.
 * Source  NIST/SEMATECH e-Handbook of Statistical Methods 1.3.5.17.1
 * Check   tests/calc/grubbs.test.ts
 */
export function grubbs(values: readonly number[]): Grubbs {
  if (values.length < GRUBBS_LEAST_COUNT) return { ok: false, because: 'fewerThanSix' };
  if (values.every((value) => value === values[0])) return { ok: false, because: 'noSpread' };
  const mean = meanOf(values);
  const deviation = sampleDeviation(values);
  const distances = values.map((value) => Math.abs(value - mean) / deviation);
  const g = Math.max(...distances);
  const criticalG = grubbsCriticalG({ count: values.length });
  return {
    ok: true,
    index: distances.indexOf(g),
    g,
    criticalG,
    p: grubbsP({ g, count: values.length, sides: 2 }),
    outlier: g > criticalG,
  };
}

/** Probability of a G at least this large by chance, at most 1. Source: inverse of the formula for the critical G. */
export function grubbsP({ g, count, sides }: { g: number; count: number; sides: 1 | 2 }): number {
  const room = (count - 1) ** 2 - count * g ** 2;
  // G cannot pass (n − 1)/√n, which one value against all others equal reaches.
  if (room <= 0) return 0;
  const t = Math.sqrt((count * (count - 2) * g ** 2) / room);
  return Math.min(1, sides * count * studentTUpperTail(t, count - 2));
}
