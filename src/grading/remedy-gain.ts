import type { Hazard } from '../schema/checklist.ts';
import type { Core } from './core.ts';
import type { RemedyResult } from './grading.ts';
import type { End, Standing } from './standing.ts';

/**
 * What one remedy gains, and how it divides: first the credit at the old factor, then hazard by hazard in definition
 * order at the new Build. How a product's change divides depends on the order taken; the whole does not.
 *
 * Units   points of score, 0–100
 * Check   tests/grading/remedies.test.ts, tests/grading/properties.test.ts (the parts sum to the gain within 1e-9)
 */
export function remedyGain(
  core: Core,
  hazards: readonly Hazard[],
  { before, after }: { before: Standing; after: Standing },
): Pick<RemedyResult, 'gain' | 'buildGain' | 'hazardGains'> {
  const low = partsAt(core, before.low, after.low);
  const high = partsAt(core, before.high, after.high);
  return {
    gain: { low: after.low.score - before.low.score, high: after.high.score - before.high.score },
    buildGain: { low: low.build, high: high.build },
    hazardGains: hazards
      .map(({ id: hazardId }, hazard) => ({
        hazardId,
        gain: { low: low.byHazard[hazard]!, high: high.byHazard[hazard]! },
      }))
      .filter(({ gain }) => gain.low !== 0 || gain.high !== 0),
  };
}

function partsAt(core: Core, before: End, after: End): { build: number; byHazard: number[] } {
  const risks = [...before.hazardRisk];
  let factor = before.factor;
  const byHazard = after.hazardRisk.map((risk, hazard) => {
    if (risks[hazard] === risk) return 0;
    risks[hazard] = risk;
    const next = risks.reduce((product, rank) => product * core.k[rank]!, 1);
    const gain = after.build * (next - factor);
    factor = next;
    return gain;
  });
  return { build: (after.build - before.build) * before.factor, byHazard };
}
