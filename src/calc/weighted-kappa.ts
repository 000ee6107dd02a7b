export interface WeightedKappa {
  /** 1: the same grade every time; 0: no more alike than two who grade as often so and so, but by chance. */
  kappa: number;
  /** Large-sample, of Fleiss, Cohen and Everitt. */
  standardError: number;
  /** 95 %, cut off at 1. Null where the formula gives no width, which is no certainty: both agree on all, or one of them gave one grade only. */
  interval: { low: number; high: number; isCut: boolean } | null;
  /** Agreement weighted by nearness, 0–1, and what chance alone would give. */
  observedFrac: number;
  chanceFrac: number;
}

/** 97.5 % point of the standard normal distribution. Source: NIST/SEMATECH e-Handbook of Statistical Methods 1.3.6.7.1. */
const Z_95 = 1.959963984540054;

/** Below this, two graders differ by rounding alone. Our choice: a thousand times the spacing of doubles near 1. */
const ROUNDING = 2.2e-13;

/** How much a pair counts as agreement, 0–1, by the places of both grades among `size` ordered ones. */
export type AgreementWeight = (first: number, second: number, size: number) => number;

/** Falls evenly with the distance: 1, 2/3, 1/3, 0 over four grades. Source: Cicchetti and Allison 1971. */
export const linearWeight: AgreementWeight = (first, second, size) => 1 - Math.abs(first - second) / (size - 1);

/** Cohen's kappa without weights: the same grade or not. */
export const sameOnly: AgreementWeight = (first, second) => (first === second ? 1 : 0);

/**
 * How far two graders agree beyond chance on ordered grades: Cohen's kappa with linear weights, its large-sample standard
 * error and 95 % interval.
 *
 * Shape   a square table of counts in, rows by the first grader, columns by the second, best grade first; null where it
 *         cannot be told: fewer than two items, or chance alone would agree on all (both gave one and the same grade).
 * Units   none; kappa is at most 1 and may be negative.
 * Error   the interval holds for many items; with few it is too narrow. Where the standard error is 0 there is none.
 * Throws  RangeError if the table is not square, is smaller than 2×2, or a count is no whole number from 0 on.
 * Source  J. L. Fleiss, J. Cohen, B. S. Everitt, "Large sample standard errors of kappa and weighted kappa",
 *         Psychological Bulletin 72(5), 1969, 323–327
 * Check   tests/calc/weighted-kappa.test.ts
 */
export function weightedKappa(
  counts: readonly (readonly number[])[],
  weightOf: AgreementWeight = linearWeight,
): WeightedKappa | null {
  requireCounts(counts);
  const size = counts.length;
  const total = sum(counts.map(sum));
  if (total < 2) return null;
  const rows = counts.map((row) => sum(row) / total);
  const columns = counts.map((_, column) => sum(counts.map((row) => row[column] ?? 0)) / total);
  /** Sum over all cells, of a share of what stands there. */
  const overCells = (shareOf: (row: number, column: number) => number, valueAt: AgreementWeight) =>
    sum(rows.flatMap((_, row) => columns.map((__, column) => shareOf(row, column) * valueAt(row, column, size))));
  const found = (row: number, column: number) => (counts[row]?.[column] ?? 0) / total;
  const byChance = (row: number, column: number) => (rows[row] ?? 0) * (columns[column] ?? 0);

  const observedFrac = overCells(found, weightOf);
  const chanceFrac = overCells(byChance, weightOf);
  const beyondChance = 1 - chanceFrac;
  if (beyondChance < ROUNDING) return null;
  const kappa = (observedFrac - chanceFrac) / beyondChance;

  const rowWeights = rows.map((_, row) => sum(columns.map((share, column) => share * weightOf(row, column, size))));
  const columnWeights = columns.map((_, column) => sum(rows.map((share, row) => share * weightOf(row, column, size))));
  const squared = overCells(found, (row, column) => {
    const marginal = (rowWeights[row] ?? 0) + (columnWeights[column] ?? 0);
    return (weightOf(row, column, size) * beyondChance - marginal * (1 - observedFrac)) ** 2;
  });
  const mean = observedFrac * chanceFrac - 2 * chanceFrac + observedFrac;
  const variance = (squared - mean ** 2) / (total * beyondChance ** 4);
  const standardError = variance < ROUNDING ? 0 : Math.sqrt(variance);
  const high = kappa + Z_95 * standardError;
  return {
    kappa,
    standardError,
    interval:
      standardError === 0 ? null : { low: kappa - Z_95 * standardError, high: Math.min(1, high), isCut: high > 1 },
    observedFrac,
    chanceFrac,
  };
}

function requireCounts(counts: readonly (readonly number[])[]): void {
  const size = counts.length;
  if (size < 2 || counts.some((row) => row.length !== size)) {
    throw new RangeError(`weightedKappa: counts must be a square table of 2 × 2 or more, got ${shapeOf(counts)}`);
  }
  const wrong = counts.flat().find((count) => !Number.isInteger(count) || count < 0);
  if (wrong !== undefined) {
    throw new RangeError(`weightedKappa: a count must be a whole number from 0 on, got ${wrong}`);
  }
}

function shapeOf(counts: readonly (readonly number[])[]): string {
  return `rows of ${counts.map((row) => row.length).join(', ')}`;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
