import { seededUniform } from '../../calc/seeded-uniform.ts';
import { scoreBy, weightings } from './drawn-weighting.ts';
import type { Firmness, FirmnessInput } from './side-by-side.ts';
import { scoresDecide, standsAbove } from './stands-above.ts';

export interface Draws {
  draws: number;
  /** A whole number of 32 bits. */
  seed: number;
}

/**
 * In how many of many weightings each order between packs holds. A draw takes zone weights around the definition's own
 * and factors around the usual ones, the same for all packs, and ranks by the same rule; verdicts do not hang on
 * weights and stay as they are.
 *
 * Shape   two or more packs in; counts out, by place of the pack. The same seed gives the same counts, and the order in
 *         which the packs come changes none.
 * Error   binomial: the count of an order that holds with probability p has the deviation √(draws · p · (1 − p)).
 * Throws  RangeError with fewer than two packs, less than one draw, or a pack that has not one place for each zone.
 * Source  DESIGN §5, "Side by side"
 * Check   tests/grading/side-by-side/firmness.test.ts
 */
export function firmness({ zoneWeights, packs }: FirmnessInput, { draws, seed }: Draws): Firmness {
  requireDrawable({ zoneWeights, packs }, draws);
  const nextWeighting = weightings(zoneWeights, seededUniform(seed));
  const own = packs.map((x) => packs.map((y) => x !== y && standsAbove(x, y)));
  // Weights move scores alone: every other pair stands in each draw as it does here.
  const byScore = packs.map((x) => packs.map((y) => x !== y && scoresDecide(x, y)));
  const leads = packs.map(() => 0);
  const above = packs.map(() => packs.map(() => 0));
  let noneLeads = 0;
  let orderHolds = 0;
  for (let draw = 0; draw < draws; draw++) {
    const weighting = nextWeighting();
    const scores = packs.map((pack) => scoreBy(weighting, pack));
    let leader = -1;
    let holds = true;
    for (let x = 0; x < scores.length; x++) {
      let below = 0;
      for (let y = 0; y < scores.length; y++) {
        const stands = byScore[x]![y]! ? scores[x]!.low > scores[y]!.high : own[x]![y]!;
        if (stands !== own[x]![y]) holds = false;
        if (!stands) continue;
        below++;
        above[x]![y]!++;
      }
      if (below === scores.length - 1) leader = x;
    }
    if (leader < 0) noneLeads++;
    else leads[leader]!++;
    if (holds) orderHolds++;
  }
  return { draws, seed, packIds: packs.map(({ packId }) => packId), leads, noneLeads, above, orderHolds };
}

function requireDrawable({ zoneWeights, packs }: FirmnessInput, draws: number): void {
  if (packs.length < 2) throw new RangeError(`firmness: needs at least 2 packs, got ${packs.length}`);
  if (!(Number.isInteger(draws) && draws >= 1)) {
    throw new RangeError(`firmness: draws must be a whole number from 1 on, got ${draws}`);
  }
  for (const { packId, zones } of packs) {
    if (zones.length !== zoneWeights.length) {
      throw new RangeError(`firmness: ${packId} must have ${zoneWeights.length} zones, got ${zones.length}`);
    }
  }
}
