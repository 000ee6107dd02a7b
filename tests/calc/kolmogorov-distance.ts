/**
 * √n times the distance is over this once in a thousand times where the sample is from the distribution.
 * N. Smirnov, "Table for estimating the goodness of fit of empirical distributions", Ann. Math. Stat. 19 (1948): K(1.95) = 0.9990.
 */
export const KOLMOGOROV_1_IN_1000 = 1.95;

/** Greatest distance between the steps of a sample and a distribution function. */
export function kolmogorovDistance(sample: readonly number[], cdf: (x: number) => number): number {
  const sorted = sample.toSorted((a, b) => a - b);
  return sorted.reduce((most, value, place) => {
    const below = cdf(value);
    return Math.max(most, below - place / sorted.length, (place + 1) / sorted.length - below);
  }, 0);
}
