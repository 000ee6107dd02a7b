import type { LidOffState } from '../schema/checklist.ts';
import { type Asking, type Question, questionId, questionsOf } from './questions.ts';

export interface AskNext {
  question: Question;
  /** Points the range would narrow by on average; null where the engine's choice lies in another state. */
  narrowsByPoints: number | null;
}

/**
 * The question to look at next in the present state: the engine's, when it can be answered now; else the first open
 * safety item of the state, else its first open question. Null when all are answered.
 */
export function askNext(asking: Asking, state: LidOffState): AskNext | null {
  const open = asking.definition.zones.flatMap(({ id }) => questionsOf(asking, state, id)).filter((one) => one.open);
  const { next } = asking.grading;
  const engine = next && open.find((one) => one.kind === next.kind && questionId(one) === next.id);
  if (next && engine) return { question: engine, narrowsByPoints: next.narrowsByPoints };
  const question = open.find((one) => one.kind === 'item' && one.item.safety) ?? open[0];
  return question ? { question, narrowsByPoints: null } : null;
}
