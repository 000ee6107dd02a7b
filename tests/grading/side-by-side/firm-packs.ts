import type { Range } from '../../../src/grading/grading.ts';
import { scoreBy } from '../../../src/grading/side-by-side/drawn-weighting.ts';
import type { FirmnessInput, FirmPack, RiskCounts } from '../../../src/grading/side-by-side/side-by-side.ts';
import type { VerdictName } from '../../../src/schema/verdict.ts';
import { deepFreeze } from '../deep-freeze.ts';

export const NO_RISKS: RiskCounts = { high: 0, serious: 0, medium: 0 };

interface Given {
  /** q by zone; null where nothing applies. */
  q: readonly (number | null)[];
  risks?: RiskCounts;
  verdict?: VerdictName;
}

/** A settled pack as the draws see it, its score at the weights given and at the factors 0.40, 0.70 and 0.95. */
export function firmPack(packId: string, zoneWeights: readonly number[], given: Given): FirmPack {
  const { q, risks = NO_RISKS, verdict = 'mindTheList' } = given;
  const zones = q.map((one): Range | null => (one === null ? null : { low: one, high: one }));
  const own = { weights: zoneWeights, k: { high: 0.4, serious: 0.7, medium: 0.95 } };
  return {
    packId,
    verdict: { low: verdict, high: verdict, settled: true },
    score: scoreBy(own, { zones, risks: { low: risks, high: risks } }),
    zones,
    risks: { low: risks, high: risks },
  };
}

export function firmInput(zoneWeights: number[], packs: Readonly<Record<string, Given>>): FirmnessInput {
  return deepFreeze({
    zoneWeights,
    packs: Object.entries(packs).map(([packId, given]) => firmPack(packId, zoneWeights, given)),
  });
}
