import type { Checklist } from '../schema/checklist.ts';
import { gradeRank, type Outcome } from '../schema/grade.ts';
import { type Core, coreOf, MEDIUM, placeIn, placesOf } from './core.ts';
import type { Grading } from './grading.ts';
import { bestRank, mayApply, mayNotApply, setOf, worstRank } from './outcome-set.ts';
import { smallestCover } from './smallest-cover.ts';

/** The fewest remedies that leave no hazard high or serious, as one end of the range has it. */
export interface SmallestSet {
  /** In the definition's order; empty where there is nothing to clear, or nothing that can be. */
  remedyIds: string[];
  /** Hazards that stay high or serious whatever is done; `remedyIds` then clears all the others. */
  unclearedHazardIds: string[];
  /** False: there were too many remedies to try every set, and a smaller one may do. */
  isExact: boolean;
}

type EndName = 'low' | 'high';

/** An item that is high or serious at an end: its hazard, and the places of the remedies that each relieve it. */
interface Need {
  hazardId: string;
  relievedBy: number[];
}

/**
 * The smallest set of the listed remedies that brings every high and serious risk to medium or lower: at the low end
 * (every open item at its worst) and at the high end. Among equally few: fewer workshop ones, then fewer without a
 * price, then the cheaper, then the definition's order.
 *
 * Shape   `priceOf` says the price of a remedy in one currency, or null.
 * Error   none up to 20 remedies that bear on it; above, the set may not be the smallest and says so.
 * Source  DESIGN §5, "Verdict": cleared = every hazard medium or lower
 * Check   tests/grading/remedies-smallest.test.ts, against every subset
 */
export function smallestRemedies(
  definition: Checklist,
  grading: Pick<Grading, 'items' | 'remedies'>,
  priceOf: (remedyId: string) => number | null,
): { low: SmallestSet; high: SmallestSet } {
  const core = coreOf(definition);
  return {
    low: smallestAt('low', { definition, core, grading, priceOf }),
    high: smallestAt('high', { definition, core, grading, priceOf }),
  };
}

interface Scene {
  definition: Checklist;
  core: Core;
  grading: Pick<Grading, 'items' | 'remedies'>;
  priceOf: (remedyId: string) => number | null;
}

function smallestAt(end: EndName, scene: Scene): SmallestSet {
  const { definition, priceOf } = scene;
  const needs = needsAt(end, scene);
  const lost = new Set(needs.filter(({ relievedBy }) => relievedBy.length === 0).map(({ hazardId }) => hazardId));
  const { places, isExact } = smallestCover(
    needs.filter(({ hazardId }) => !lost.has(hazardId)).map(({ relievedBy }) => relievedBy),
    definition.remedies.map(({ id, reach }) => ({ isCostly: reach === 'workshop', price: priceOf(id) })),
  );
  return {
    remedyIds: places.map((place) => definition.remedies[place]!.id),
    unclearedHazardIds: definition.hazards.filter(({ id }) => lost.has(id)).map(({ id }) => id),
    isExact,
  };
}

function needsAt(end: EndName, { definition, core, grading }: Scene): Need[] {
  const remedyAt = placesOf(definition.remedies);
  const counted = grading.remedies
    .filter(({ open, ruledOut }) => ruledOut === undefined && (end === 'high' || open === undefined))
    .map(({ remedyId }) => placeIn(remedyAt, remedyId));
  return definition.items.flatMap((item, place): Need[] => {
    const rank = rankAt(end, grading.items[place]?.possible ?? []);
    const { risk } = core.items[place]!;
    if (item.hazard === undefined || rank === null || risk[rank]! <= MEDIUM) return [];
    const relieves = (remedy: number): boolean =>
      definition.remedies[remedy]!.settles.some(
        (settled) => settled.item === item.id && risk[Math.min(rank, gradeRank(settled.leaves))]! <= MEDIUM,
      );
    return [{ hazardId: item.hazard, relievedBy: counted.filter(relieves) }];
  });
}

/** Rank of the grade an end takes an item at; null where it does not apply, or is taken not to. */
function rankAt(end: EndName, possible: readonly Outcome[]): number | null {
  const set = possible.reduce((all, outcome) => all | setOf(outcome), 0);
  if (!mayApply(set) || (end === 'high' && mayNotApply(set))) return null;
  return end === 'low' ? worstRank(set) : bestRank(set);
}
