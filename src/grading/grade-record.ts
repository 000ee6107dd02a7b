import type { Checklist } from '../schema/checklist.ts';
import { adviceOf } from './advice-of.ts';
import { coreOf } from './core.ts';
import { findingsOf } from './findings.ts';
import type { Grading, ItemResult } from './grading.ts';
import { hazardsOf } from './hazards.ts';
import type { Judged } from './judged.ts';
import { ledgerOf, lostPointsOf } from './ledger.ts';
import { isSettled, outcomesIn } from './outcome-set.ts';
import { type ItemOutcomes, outcomesOf } from './outcomes.ts';
import { type Advice, coreRemedies, reliefsOf } from './relief.ts';
import { printedRemedies } from './remedies.ts';
import { standingOf } from './standing.ts';
import { stopOf, verdictEnds } from './verdict.ts';
import { settledShareFrac, zonesOf } from './zones.ts';

/**
 * Grades a record by a checklist definition: outcomes, ranges, verdict, findings, remedies, ledger, next question.
 * Pure; nothing is rounded; sums are taken in definition order. An item whose computation throws is one `error`
 * outcome and settles nothing.
 *
 * Units   build, score and points 0–100; factor, q and shares 0–1
 * Source  DESIGN §5
 * Check   tests/grading/
 */
export function gradeRecord(definition: Checklist, record: Judged, advice: Advice = adviceOf(record)): Grading {
  const outcomes = outcomesOf(definition, record);
  const core = coreOf(definition);
  const sets = outcomes.map(({ set }) => set);
  const remedies = coreRemedies(definition, advice);
  const reliefs = reliefsOf(remedies, sets.length);

  const standing = standingOf(core, sets, reliefs.none);
  const stop = stopOf(core, sets);
  const ends = verdictEnds(core, sets, reliefs);
  const asked = outcomes.filter(({ because }) => because !== 'notAsked');
  const scorable = standing.liveZoneWeight > 0;
  const shown = scorable && stop !== 'failed';
  const after = shown ? printedRemedies({ definition, core, sets }, remedies) : null;

  return {
    route: record.route,
    items: outcomes.map(itemResult),
    zones: zonesOf(definition, outcomes, standing),
    askedCount: asked.length,
    itemCount: outcomes.length,
    settledCount: asked.filter(({ set }) => isSettled(set)).length,
    unlookedCount: asked.filter(({ unlooked }) => unlooked).length,
    build: scorable ? { low: standing.low.build, high: standing.high.build } : null,
    factor: { low: standing.low.factor, high: standing.high.factor },
    score: shown ? { low: standing.low.score, high: standing.high.score } : null,
    settled: asked.every(({ set }) => isSettled(set)),
    settledShareFrac: settledShareFrac(definition, outcomes, standing),
    stop,
    verdict: { ...ends, settled: ends.low === ends.high },
    hazards: hazardsOf(definition, core, { sets, standing }),
    findings: findingsOf(outcomes, lostPointsOf(core, sets, standing)),
    remedies: after?.printed ?? [],
    after: after?.after ?? { outside: null, workshop: null },
    ledger: shown ? ledgerOf(definition, core, { sets, standing }) : null,
    openSafetyItemIds: asked.filter(({ item, set }) => item.safety && !isSettled(set)).map(({ item }) => item.id),
  };
}

function itemResult({ item, set, own: _own, ...outcome }: ItemOutcomes): ItemResult {
  return {
    itemId: item.id,
    zoneId: item.zone,
    asked: outcome.because !== 'notAsked',
    possible: outcomesIn(set),
    settled: isSettled(set),
    ...outcome,
  };
}
