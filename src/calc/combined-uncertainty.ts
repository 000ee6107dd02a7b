import { requireNotNegative } from './require-not-negative.ts';

/** One input of a measurement: its standard uncertainty, and how much the result moves per unit of it. */
export interface UncertaintyComponent {
  /** ∂result/∂input. */
  sensitivity: number;
  /** One standard deviation, in the input's unit. */
  uncertainty: number;
}

/** Correlation coefficient r of two components, by their places in the list. Pairs not named are independent. */
export interface Correlation {
  between: readonly [number, number];
  r: number;
}

/** Share of the squared sum that may come out below 0 by the rounding of coefficients, and counts as 0. */
const ROUNDING_FRAC = 1e-12;

/**
 * Combined standard uncertainty of a result: u² = Σ (cᵢuᵢ)² + 2 Σ cᵢcⱼuᵢuⱼrᵢⱼ.
 *
 * Shape   n components and the correlated pairs among them in, one number out; no component, no uncertainty: 0.
 * Units   the result's unit out, k = 1.
 * Error   first order: the result is taken as straight over the uncertainties.
 * Throws  RangeError if a value is not finite, an uncertainty negative, |r| above 1, a pair not two places of the
 *         list or named twice, or if the correlations contradict one another.
 * Source  JCGM 100:2008 (GUM) eq. 10 and 16, numbers from memory
 * Check   tests/calc/combined-uncertainty.test.ts: GUM H.1 and H.2
 */
export function combinedUncertainty(
  components: readonly UncertaintyComponent[],
  correlations: readonly Correlation[] = [],
): number {
  const shares = components.map(({ sensitivity, uncertainty }) => {
    if (!Number.isFinite(sensitivity)) {
      throw new RangeError(`combinedUncertainty: sensitivity must be finite, got ${sensitivity}`);
    }
    requireNotNegative('combinedUncertainty: uncertainty', uncertainty);
    return sensitivity * uncertainty;
  });
  const alone = shares.reduce((sum, share) => sum + share ** 2, 0);
  const squared = alone + correlatedPart(shares, correlations);
  if (squared < -ROUNDING_FRAC * alone) {
    throw new RangeError(`combinedUncertainty: correlations must agree, got a variance of ${squared}`);
  }
  return Math.sqrt(Math.max(0, squared));
}

function correlatedPart(shares: readonly number[], correlations: readonly Correlation[]): number {
  const named = new Set<string>();
  let sum = 0;
  for (const { between, r } of correlations) {
    const [one, other] = between;
    const shareOne = shares[one];
    const shareOther = shares[other];
    const pair = `${Math.min(one, other)}, ${Math.max(one, other)}`;
    if (shareOne === undefined || shareOther === undefined || one === other || named.has(pair)) {
      throw new RangeError(`combinedUncertainty: a pair must be two places, named once, got ${one}, ${other}`);
    }
    if (!(Math.abs(r) <= 1)) throw new RangeError(`combinedUncertainty: r must be within ±1, got ${r}`);
    named.add(pair);
    sum += 2 * shareOne * shareOther * r;
  }
  return sum;
}
