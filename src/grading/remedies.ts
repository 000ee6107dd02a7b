import type { Checklist } from '../schema/checklist.ts';
import { type Core, MEDIUM } from './core.ts';
import type { Range, RemedyResult } from './grading.ts';
import { mayApply, type OutcomeSet, worstRank } from './outcome-set.ts';
import { type CoreRemedy, noRelief, type Relief, withRemedy } from './relief.ts';
import { remedyGain } from './remedy-gain.ts';
import { type Standing, standingOf } from './standing.ts';

/** Gains nearer than this are ties, as in next-question.ts. */
const TIE_POINTS = 1e-9;

interface Scene {
  definition: Checklist;
  core: Core;
  sets: readonly OutcomeSet[];
}

/** Remedies done so far, and what the record comes to with them. */
interface Progress {
  relief: Relief;
  standing: Standing;
}

/**
 * The remedies that settle an item with a remaining outcome worse than they leave, as printed: outside before workshop,
 * within each the one that gains most on top of those before it. The low end decides, then the high end, then the
 * definition's order. Cumulative scores so end at the after-score of each reach.
 *
 * Source  DESIGN §5, "Remedies"
 * Check   tests/grading/remedies.test.ts
 */
export function printedRemedies(
  scene: Scene,
  remedies: readonly CoreRemedy[],
): { printed: RemedyResult[]; after: { outside: Range; workshop: Range } } {
  const listed = remedies.filter((remedy) => settledPlaces(scene, remedy).length > 0);
  const relief = noRelief(scene.core.items.length);
  let progress: Progress = { relief, standing: standingOf(scene.core, scene.sets, relief) };
  const printed: RemedyResult[] = [];
  const printAll = (reach: CoreRemedy['reach']): Range => {
    let left = listed.filter((remedy) => remedy.reach === reach);
    while (left.length > 0) {
      const { remedy, next } = bestOf(scene, progress, left);
      printed.push(resultOf(scene, remedy, { before: progress.standing, after: next.standing }));
      progress = next;
      left = left.filter((other) => other !== remedy);
    }
    return scoreOf(progress.standing);
  };
  const outside = printAll('outside');
  const workshop = printAll('workshop');
  return { printed, after: { outside, workshop } };
}

function bestOf({ core, sets }: Scene, from: Progress, left: readonly CoreRemedy[]) {
  const tried = left.map((remedy) => {
    const relief = withRemedy(from.relief, remedy);
    return { remedy, next: { relief, standing: standingOf(core, sets, relief) } };
  });
  return tried.reduce((best, other) => (gainsMore(other.next.standing, best.next.standing) ? other : best));
}

function gainsMore(one: Standing, other: Standing): boolean {
  const atLow = one.low.score - other.low.score;
  if (Math.abs(atLow) > TIE_POINTS) return atLow > 0;
  return one.high.score - other.high.score > TIE_POINTS;
}

function resultOf(scene: Scene, remedy: CoreRemedy, step: { before: Standing; after: Standing }): RemedyResult {
  const { definition, core } = scene;
  const end = remedy.need === 'open' ? 'high' : 'low';
  const cleared = definition.hazards.filter(
    (_, hazard) => step.before[end].hazardRisk[hazard]! > MEDIUM && step.after[end].hazardRisk[hazard]! <= MEDIUM,
  );
  return {
    remedyId: remedy.id,
    reach: remedy.reach,
    itemIds: settledPlaces(scene, remedy).map((place) => definition.items[place]!.id),
    ...remedyGain(core, definition.hazards, step),
    cumulative: scoreOf(step.after),
    clearsHazardIds: cleared.map(({ id }) => id),
    ...(remedy.need === 'open' ? { open: 'fuseFits' } : {}),
    ...(remedy.need === 'ruledOut' ? { ruledOut: 'fuseFits' } : {}),
  };
}

/** Places of the items that still have an outcome worse than the remedy leaves, in the remedy's order. */
function settledPlaces({ sets }: Scene, remedy: CoreRemedy): number[] {
  const worse = remedy.settles.filter(
    ({ place, leaves }) => mayApply(sets[place]!) && worstRank(sets[place]!) > leaves,
  );
  return worse.map(({ place }) => place);
}

function scoreOf({ low, high }: Standing): Range {
  return { low: low.score, high: high.score };
}
