/**
 * Standard ampere ratings of fuses, smallest first; 601 A, a rating on paper only, is left out.
 *
 * Source  NEC (NFPA 70) Table 240.6(A), read in two public pages and a compressor maker's manual that agree; 1, 3, 6 and
 *         10 A for fuses in a trade journal too. The code itself was not opened. Other ratings are made and allowed.
 * Check   tests/calc/terminal-fuse-advice.test.ts
 */
export const FUSE_SIZES_A = [
  1, 3, 6, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400,
  450, 500, 600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
] as const;

/** Smallest standard rating not below a current; null above the largest. */
export function fuseSizeFromA(currentA: number): number | null {
  return FUSE_SIZES_A.find((sizeA) => sizeA >= currentA) ?? null;
}
