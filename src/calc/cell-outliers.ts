import { type Grubbs, grubbs } from './grubbs.ts';
import { type RobustZ, robustZ } from './robust-z.ts';

export type CellOutliers =
  | {
      ok: true;
      robustZ: Extract<RobustZ, { ok: true }>;
      grubbs: Extract<Grubbs, { ok: true }>;
      /** Cells, counted from 0, that either test sets apart, in order. */
      apartIndexes: number[];
    }
  | { ok: false; because: 'fewerThanSix' | 'noSpread' | 'madZero' };

/**
 * Which cells stand apart from the others, by the robust z and by Grubbs' test. Standing apart is a hint where to look;
 * how far apart is too far is the spread's matter.
 *
 * Shape   readings of the same quantity at all cells (V or mΩ) in. From fewer than six cells only the spread can be
 *         given. A MAD of 0 means that the meter's last digit hides the scatter; Grubbs' standard deviation would then
 *         be that of one digit, so neither test is used.
 * Throws  RangeError if a value is not finite.
 * Source  robust-z.ts, grubbs.ts
 * Check   tests/calc/cell-outliers.test.ts
 */
export function cellOutliers(readings: readonly number[]): CellOutliers {
  const oneTest = grubbs(readings);
  if (!oneTest.ok) return oneTest;
  const distances = robustZ(readings);
  if (!distances.ok) return distances;
  const apart = new Set(distances.outlierIndexes);
  if (oneTest.outlier) apart.add(oneTest.index);
  return {
    ok: true,
    robustZ: distances,
    grubbs: oneTest,
    apartIndexes: [...apart].toSorted((one, other) => one - other),
  };
}
