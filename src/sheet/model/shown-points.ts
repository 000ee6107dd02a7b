import type { Grading, Range } from '../../grading/grading.ts';
import { roundedShares } from '../../grading/largest-remainder.ts';
import { formatFixed, outward } from '../../text/format-number.ts';

/** The ledger as it is printed, in whole tenths of a point: every line and every sum agrees with the head. */
export interface ShownPoints {
  buildTenths: number;
  scoreTenths: number;
  /** By item id. */
  itemTenths: ReadonlyMap<string, number>;
  /** In the order of the ledger's factors. */
  factorTenths: number[];
}

/**
 * Apportions the lost points to tenths by largest remainder, so that items add up to 100 − Build and factors to
 * Build − Score as shown. Null where the score is withheld or there is none.
 *
 * Check   tests/sheet/shown-points.test.ts
 */
export function shownPoints({ ledger, build, score, settled }: Grading): ShownPoints | null {
  if (ledger === null || build === null || score === null) return null;
  const buildTenths = shownTenths(build, settled);
  const scoreTenths = shownTenths(score, settled);
  const counts = apportioned(ledger.lines, 1000 - buildTenths);
  return {
    buildTenths,
    scoreTenths,
    itemTenths: new Map(ledger.lines.map(({ itemId }, place) => [itemId, counts[place] ?? 0])),
    factorTenths: apportioned(ledger.factors, buildTenths - scoreTenths),
  };
}

/** As the head shows it: nearest when settled, else the low end rounded down. */
function shownTenths(range: Range, settled: boolean): number {
  const low = settled ? Number(formatFixed(range.low, 1)) : outward(range, 1).low;
  return Math.round(low * 10);
}

function apportioned(lines: readonly { lostPoints: number }[], totalCount: number): number[] {
  if (lines.length === 0) return [];
  // Float noise just off a whole tenth would cost or gain a unit in the cut: it is taken out first.
  const shares = lines.map(({ lostPoints }) => Number((lostPoints * 10).toFixed(9)));
  return roundedShares(shares, { unit: 1, totalCount });
}
