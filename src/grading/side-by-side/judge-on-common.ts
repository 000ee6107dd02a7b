import type { Checklist } from '../../schema/checklist.ts';
import { adviceOf } from '../advice-of.ts';
import { coreOf, placeIn, placesOf, RISK_RANKS } from '../core.ts';
import { isSettled } from '../outcome-set.ts';
import { outcomesOf } from '../outcomes.ts';
import { coreRemedies, reliefsOf } from '../relief.ts';
import { type End, standingOf } from '../standing.ts';
import { stopOf, verdictEnds } from '../verdict.ts';
import { zonesOf } from '../zones.ts';
import type { Compared, FirmPack, RankMember, RiskCounts } from './side-by-side.ts';

/** What one pack comes to on the common items alone, and what the draws of its firmness start from. */
export type Judgement = Pick<RankMember, 'build' | 'factor' | 'score' | 'verdict' | 'settled' | 'notRanked'> &
  Pick<FirmPack, 'zones' | 'risks'>;

const STOP = { low: 'stop', high: 'stop' } as const;

/**
 * Judges one pack by the common definition. What was answered is read by the definition it was answered under, so that
 * a sentence chosen where a later version measures still counts; weights, hazards and factors are the common ones.
 *
 * A stop item that has surely failed withholds the score and settles the verdict, also where not all were asked it: such
 * a pack is treated as damaged whatever it is held against. Our choice.
 *
 * Throws  RangeError if the pack's own definition lacks a common item.
 * Source  DESIGN §5
 * Check   tests/grading/side-by-side/compare.test.ts
 */
export function judgeOnCommon(common: Checklist, { record, definition, grading }: Compared): Judgement {
  const own = outcomesOf(definition, record);
  const ownAt = placesOf(definition.items);
  const outcomes = common.items.flatMap((item) => {
    const found = own[placeIn(ownAt, item.id)];
    return found === undefined ? [] : [{ ...found, item }];
  });
  const sets = outcomes.map(({ set }) => set);
  const core = coreOf(common);
  const reliefs = reliefsOf(coreRemedies(common, adviceOf(record)), sets.length);
  const standing = standingOf(core, sets, reliefs.none);
  const scorable = standing.liveZoneWeight > 0;
  const failed = grading.stop === 'failed' || stopOf(core, sets) === 'failed';
  const ends = failed ? STOP : verdictEnds(core, sets, reliefs);
  return {
    build: scorable ? { low: standing.low.build, high: standing.high.build } : null,
    factor: { low: standing.low.factor, high: standing.high.factor },
    score: scorable && !failed ? { low: standing.low.score, high: standing.high.score } : null,
    verdict: { ...ends, settled: ends.low === ends.high },
    settled: sets.every(isSettled),
    notRanked: failed ? 'stop' : scorable ? null : 'nothingToScore',
    zones: zonesOf(common, outcomes, standing).map(({ q }) => q),
    risks: { low: riskCounts(standing.low), high: riskCounts(standing.high) },
  };
}

function riskCounts({ hazardRisk }: End): RiskCounts {
  const at = (level: keyof RiskCounts) => hazardRisk.filter((rank) => RISK_RANKS[rank] === level).length;
  return { high: at('high'), serious: at('serious'), medium: at('medium') };
}
