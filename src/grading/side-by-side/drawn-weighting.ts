import { dirichletDraw } from '../../calc/dirichlet-draw.ts';
import type { Uniform } from '../../calc/seeded-uniform.ts';
import type { Range } from '../grading.ts';
import type { FirmPack, RiskCounts } from './side-by-side.ts';

/** How closely drawn zone weights keep to the definition's own: Dirichlet with alpha = 60 · W. Our choice. */
const CONCENTRATION = 60;
/** What a risk of each level may leave of Build; a low one leaves all. Our choice, around the usual 0.40, 0.70, 0.95. */
const K_BETWEEN = { high: [0.3, 0.5], serious: [0.6, 0.8], medium: [0.9, 0.99] } as const;

/** Zone weights, which sum to 1, and what one hazard of each risk level leaves. */
export interface Weighting {
  weights: readonly number[];
  k: RiskCounts;
}

/**
 * A weighting somebody else might have chosen: each call draws the next one.
 *
 * Source  DESIGN §5, "Side by side"
 * Check   tests/grading/side-by-side/firmness.test.ts
 */
export function weightings(zoneWeights: readonly number[], uniform: Uniform): () => Weighting {
  const sum = zoneWeights.reduce((total, weight) => total + weight, 0);
  const alphas = zoneWeights.map((weight) => (CONCENTRATION * weight) / sum);
  const between = ([from, to]: readonly [number, number]) => from + (to - from) * uniform();
  return () => ({
    weights: dirichletDraw(alphas, uniform),
    k: { high: between(K_BETWEEN.high), serious: between(K_BETWEEN.serious), medium: between(K_BETWEEN.medium) },
  });
}

/** The score a pack has by a weighting; weights are shared out over the zones that apply to it. */
export function scoreBy({ weights, k }: Weighting, { zones, risks }: Pick<FirmPack, 'zones' | 'risks'>): Range {
  let low = 0;
  let high = 0;
  let live = 0;
  for (let zone = 0; zone < zones.length; zone++) {
    const q = zones[zone];
    const weight = weights[zone];
    if (q === null || q === undefined || weight === undefined) continue;
    live += weight;
    low += weight * q.low;
    high += weight * q.high;
  }
  if (live === 0) return { low: 0, high: 0 };
  return { low: 100 * (low / live) * factorBy(k, risks.low), high: 100 * (high / live) * factorBy(k, risks.high) };
}

function factorBy(k: RiskCounts, counts: RiskCounts): number {
  return k.high ** counts.high * k.serious ** counts.serious * k.medium ** counts.medium;
}
