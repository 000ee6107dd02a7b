import { firmness } from '../../src/grading/side-by-side/firmness.ts';
import { MOST_PACKS } from '../../src/grading/side-by-side/side-by-side.ts';
import { firmInput } from '../grading/side-by-side/firm-packs.ts';
import { median } from './percentiles.ts';
import type { BenchRow } from './plain-table.ts';

const DRAWS = 10_000;
/** The project's own aim, in Node on the machine that measures. */
const AIM_MS = 300;

/** Zone weights of the built-in checklist; as many packs as can stand side by side, all decided by score: the most work. */
const WEIGHTS = [10, 20, 20, 10, 22, 18];
const PACKS = Array.from({ length: MOST_PACKS }, (_, pack) => ({
  q: WEIGHTS.map((_weight, zone) => 0.4 + 0.05 * ((7 * pack + 3 * zone) % 11)),
  risks: { high: pack % 2, serious: pack % 3, medium: 3 },
}));

/** How long the draws take, run after run; the first is the one a fresh worker does. */
export function firmnessDrawsMs(runs: number): number[] {
  const input = firmInput(WEIGHTS, Object.fromEntries(PACKS.map((pack, place) => [`pack ${place}`, pack])));
  return Array.from({ length: runs }, (_, seed) => {
    const start = performance.now();
    const { leads, noneLeads } = firmness(input, { draws: DRAWS, seed });
    const took = performance.now() - start;
    if (leads.reduce((sum, count) => sum + count, noneLeads) !== DRAWS) {
      throw new Error(`firmnessDrawsMs: every draw must have a leader or none, got ${leads} and ${noneLeads}`);
    }
    return took;
  });
}

export function firmnessRow(timesMs: readonly number[]): BenchRow {
  const firstMs = timesMs[0] ?? Number.NaN;
  return {
    what: `firmness of an order, ${MOST_PACKS} packs × ${DRAWS} draws, first of ${timesMs.length}`,
    measured: `${firstMs.toFixed(0)} ms, median ${median(timesMs).toFixed(0)} ms`,
    yardstick: `aim ≤ ${AIM_MS} ms`,
    ratio: firstMs / AIM_MS,
  };
}
