import { lookHereNext } from '../grading/look-here-next.ts';
import type { LidOffState } from '../schema/pack-states.ts';
import { type Asking, type Question, questionId, questionsOf } from './questions.ts';

export interface AskNext {
  question: Question;
  /** Points the range would narrow by on average; null where the question narrows nothing (a fact nothing hangs on). */
  narrowsByPoints: number | null;
}

/**
 * The question to look at next in the present state: of those still open, the one whose answer settles most; when none
 * settles anything, the first open one. Null when all are answered.
 */
export function askNext(asking: Asking, state: LidOffState): AskNext | null {
  const open = asking.definition.zones.flatMap(({ id }) => questionsOf(asking, state, id)).filter((one) => one.open);
  const find = (kind: Question['kind'], id: string) => open.find((one) => one.kind === kind && questionId(one) === id);
  const next = lookHereNext(asking.definition, asking.record, {
    mayAsk: (kind, id) => find(kind, id) !== undefined,
  });
  const best = next && find(next.kind, next.id);
  if (next && best) return { question: best, narrowsByPoints: next.narrowsByPoints };
  return open[0] ? { question: open[0], narrowsByPoints: null } : null;
}
