import type { VerdictName } from '../schema/verdict.ts';
import { type Core, MEDIUM } from './core.ts';
import { bestRank, isSettled, mayApply, mayNotApply, type OutcomeSet, setOf, worstRank } from './outcome-set.ts';
import type { Relief, Reliefs } from './relief.ts';

/** What each end holds once the remedies of a relief are done, hazard or not. */
interface Dangers {
  low: { risk: number; finding: boolean };
  high: { risk: number; finding: boolean };
}

const WEAK = 2;

/**
 * The verdict at both ends: every open item settled at its worst outcome, and at its best. Not applying is the best.
 *
 * Source  DESIGN §5, "Verdict"
 * Check   tests/grading/verdict.test.ts
 */
export function verdictEnds(
  core: Core,
  sets: ArrayLike<OutcomeSet>,
  reliefs: Reliefs,
): { low: VerdictName; high: VerdictName } {
  const found = dangersOf(core, sets, reliefs.none);
  const serious = found.low.risk > MEDIUM;
  const outside = serious ? dangersOf(core, sets, reliefs.outside) : found;
  const all = serious ? dangersOf(core, sets, reliefs.all) : found;
  const stop = stopOf(core, sets);
  const judged = (end: 'low' | 'high'): VerdictName => {
    if (found[end].risk > MEDIUM) {
      if (outside[end].risk <= MEDIUM) return 'notAsItComes';
      return all[end].risk <= MEDIUM ? 'workshopFirst' : 'keepOut';
    }
    return found[end].finding ? 'mindTheList' : 'noFinding';
  };
  return {
    low: stop === 'none' ? judged('low') : 'stop',
    high: stop === 'failed' ? 'stop' : judged('high'),
  };
}

/** Whether a stop item has surely failed, may still have failed, or cannot have. */
export function stopOf(core: Core, sets: ArrayLike<OutcomeSet>): 'none' | 'possible' | 'failed' {
  const FAILED = setOf('failed');
  let stop: 'none' | 'possible' = 'none';
  for (let place = 0; place < core.items.length; place++) {
    const set = sets[place]!;
    if (!core.items[place]!.stop || (set & FAILED) === 0) continue;
    if (isSettled(set)) return 'failed';
    stop = 'possible';
  }
  return stop;
}

function dangersOf(core: Core, sets: ArrayLike<OutcomeSet>, relief: Relief): Dangers {
  const low = { risk: 0, finding: false };
  const high = { risk: 0, finding: false };
  for (let place = 0; place < core.items.length; place++) {
    const set = sets[place]!;
    if (!mayApply(set)) continue;
    const { risk } = core.items[place]!;
    const worst = Math.min(worstRank(set), relief.low[place]!);
    low.risk = Math.max(low.risk, risk[worst]!);
    low.finding ||= worst >= WEAK;
    if (mayNotApply(set)) continue;
    const best = Math.min(bestRank(set), relief.high[place]!);
    high.risk = Math.max(high.risk, risk[best]!);
    high.finding ||= best >= WEAK;
  }
  return { low, high };
}
