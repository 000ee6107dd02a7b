import type { PackRecord } from '../record/pack-record.ts';
import type { Checklist } from '../schema/checklist.ts';
import { VERDICTS } from '../schema/verdict.ts';
import type { Core } from './core.ts';
import { factSays, type KnownFacts, knownFacts } from './facts.ts';
import type { NextQuestion } from './grading.ts';
import { isSettled, NOT_ASKED, type OutcomeSet, outcomesIn, setOf } from './outcome-set.ts';
import { type ItemOutcomes, setUnderFact } from './outcomes.ts';
import type { Reliefs } from './relief.ts';
import { standingOf } from './standing.ts';
import { verdictEnds } from './verdict.ts';

/** Widths nearer than this are ties: sums of some eighty terms near 100 carry errors of about 1e-12. Our choice. */
const TIE_POINTS = 1e-9;

export interface Scene {
  definition: Checklist;
  facts: PackRecord['facts'];
  outcomes: readonly ItemOutcomes[];
  core: Core;
  reliefs: Reliefs;
  /** Questions that can be put now; without it, all. */
  mayAsk?: (kind: NextQuestion['kind'], id: string) => boolean;
}

/** What stands between the two ends. */
interface Spread {
  verdictSteps: number;
  widthPoints: number;
}

interface Candidate {
  kind: NextQuestion['kind'];
  id: string;
  /** The sets of all items after each answer it may get. */
  trials: OutcomeSet[][];
}

/**
 * The open item or fact whose answer leaves least between the two ends on average: verdict steps first, then points.
 * Ties go to the first in definition order, facts before items, as a definition file has them.
 *
 * Each outcome an item still has, and each choice of a fact, is tried as its answer. A grade given under an open fact
 * so leaves {grade, does-not-apply}, as it will once it is given; a fact no open item hangs on is never asked.
 * Once a stop item has surely failed the range is withheld and nothing is left to narrow: null.
 *
 * Source  DESIGN §5, "Look here next"
 * Check   tests/grading/next-question.test.ts (against a whole grading of every trial record)
 */
export function nextQuestion(scene: Scene): NextQuestion | null {
  const before = spreadOf(
    scene,
    scene.outcomes.map(({ set }) => set),
  );
  if (before === null) return null;
  let best: NextQuestion | null = null;
  for (const { kind, id, trials } of candidates(scene)) {
    const mean = meanSpread(scene, trials);
    if (best !== null && !leavesLess(mean, best)) continue;
    best = {
      kind,
      id,
      meanVerdictSteps: mean.verdictSteps,
      meanWidthPoints: mean.widthPoints,
      narrowsByPoints: before.widthPoints - mean.widthPoints,
    };
  }
  return best;
}

function leavesLess(mean: Spread, best: NextQuestion): boolean {
  if (mean.verdictSteps !== best.meanVerdictSteps) return mean.verdictSteps < best.meanVerdictSteps;
  return mean.widthPoints < best.meanWidthPoints - TIE_POINTS;
}

/** A trial in which a stop item fails leaves nothing between the ends: its range is withheld. */
function meanSpread(scene: Scene, trials: OutcomeSet[][]): Spread {
  const sum = { verdictSteps: 0, widthPoints: 0 };
  for (const sets of trials) {
    const spread = spreadOf(scene, sets);
    sum.verdictSteps += spread?.verdictSteps ?? 0;
    sum.widthPoints += spread?.widthPoints ?? 0;
  }
  return { verdictSteps: sum.verdictSteps / trials.length, widthPoints: sum.widthPoints / trials.length };
}

function spreadOf({ core, reliefs }: Scene, sets: readonly OutcomeSet[]): Spread | null {
  const verdict = verdictEnds(core, sets, reliefs);
  if (verdict.high === 'stop') return null;
  const { low, high } = standingOf(core, sets, reliefs.none);
  return {
    verdictSteps: VERDICTS.indexOf(verdict.high) - VERDICTS.indexOf(verdict.low),
    widthPoints: high.score - low.score,
  };
}

function* candidates({ definition, facts, outcomes, mayAsk = () => true }: Scene): Generator<Candidate> {
  const known = knownFacts(definition, facts);
  const sets = outcomes.map(({ set }) => set);
  for (const fact of definition.facts) {
    const opens = outcomes.some(({ item, set }) => item.onlyIf?.fact === fact.id && isOpen(set));
    if (known.has(fact.id) || !opens || !mayAsk('fact', fact.id)) continue;
    const trials = fact.choices.map(({ id }) => afterFact(outcomes, new Map([...known, [fact.id, id]])));
    yield { kind: 'fact', id: fact.id, trials };
  }
  for (const [place, { item, set }] of outcomes.entries()) {
    if (!isOpen(set) || !mayAsk('item', item.id)) continue;
    const says = factSays(item, known);
    const trials = outcomesIn(set).map((outcome) => replaced(sets, place, setUnderFact(setOf(outcome), says)));
    yield { kind: 'item', id: item.id, trials };
  }
}

function afterFact(outcomes: readonly ItemOutcomes[], known: KnownFacts): OutcomeSet[] {
  return outcomes.map(({ item, own, set }) => (set === NOT_ASKED ? set : setUnderFact(own, factSays(item, known))));
}

/** As Array.prototype.with, which costs several times a slice in today's engines. */
function replaced(sets: readonly OutcomeSet[], place: number, set: OutcomeSet): OutcomeSet[] {
  const copy = sets.slice();
  copy[place] = set;
  return copy;
}

function isOpen(set: OutcomeSet): boolean {
  return set !== NOT_ASKED && !isSettled(set);
}
