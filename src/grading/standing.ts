import type { Core } from './core.ts';
import { bestRank, mayApply, mayNotApply, type OutcomeSet, worstRank } from './outcome-set.ts';
import type { Relief } from './relief.ts';

/** What the outcomes still possible come to, with every open item at its worst (low end) and at its best (high end). */
export interface Standing {
  low: End;
  high: End;
  /** By zone, Σ w over items that may apply; 0 where the zone has none. */
  zoneItemWeight: number[];
  /** Σ W over zones with an item that may apply; 0 when there is nothing to score. */
  liveZoneWeight: number;
}

export interface End {
  /** By zone, Σ w·credit. */
  zoneCredit: number[];
  /** By hazard, the rank of the worst risk among its findings. */
  hazardRisk: number[];
  build: number;
  factor: number;
  score: number;
}

/**
 * Build, factor and score at both ends.
 *
 * An open item counts credit 0 and 1 while it may still not apply, else its worst and best remaining credit. It so
 * stays in the sums of weights; once it falls away, the mean over the rest lies between the two, as a mean does
 * between those with one more member at 0 and at 1. A zone whose items may all fall away counts 0 and 1 in the same way.
 *
 * Units   build and score 0–100, factor 0–1
 * Source  DESIGN §5, "Range"
 * Check   tests/grading/worked-examples.test.ts, tests/grading/properties.test.ts
 */
export function standingOf(core: Core, sets: ArrayLike<OutcomeSet>, relief: Relief): Standing {
  const zoneItemWeight: number[] = new Array(core.zoneWeight.length).fill(0);
  const low = emptyEnd(core);
  const high = emptyEnd(core);
  for (let place = 0; place < core.items.length; place++) {
    const item = core.items[place]!;
    const set = sets[place]!;
    if (!mayApply(set)) continue;
    const unsure = mayNotApply(set);
    const worst = Math.min(worstRank(set), relief.low[place]!);
    const best = Math.min(bestRank(set), relief.high[place]!);
    zoneItemWeight[item.zone]! += item.weight;
    low.zoneCredit[item.zone]! += item.weight * (unsure ? 0 : core.credit[worst]!);
    high.zoneCredit[item.zone]! += item.weight * (unsure ? 1 : core.credit[best]!);
    if (item.hazard < 0) continue;
    low.hazardRisk[item.hazard] = Math.max(low.hazardRisk[item.hazard]!, item.risk[worst]!);
    if (!unsure) high.hazardRisk[item.hazard] = Math.max(high.hazardRisk[item.hazard]!, item.risk[best]!);
  }
  const liveZoneWeight = core.zoneWeight.reduce(
    (sum, weight, zone) => sum + (zoneItemWeight[zone]! > 0 ? weight : 0),
    0,
  );
  const standing = { low, high, zoneItemWeight, liveZoneWeight };
  finish(core, standing, low);
  finish(core, standing, high);
  return standing;
}

function emptyEnd(core: Core): End {
  return {
    zoneCredit: new Array(core.zoneWeight.length).fill(0),
    hazardRisk: new Array(core.hazardCount).fill(0),
    build: 0,
    factor: 1,
    score: 0,
  };
}

function finish(core: Core, { zoneItemWeight, liveZoneWeight }: Standing, end: End): void {
  let weighted = 0;
  for (let zone = 0; zone < zoneItemWeight.length; zone++) {
    const itemWeight = zoneItemWeight[zone]!;
    if (itemWeight > 0) weighted += core.zoneWeight[zone]! * (end.zoneCredit[zone]! / itemWeight);
  }
  end.build = liveZoneWeight > 0 ? 100 * (weighted / liveZoneWeight) : 0;
  for (const risk of end.hazardRisk) end.factor *= core.k[risk]!;
  end.score = end.build * end.factor;
}
