import type { Checklist } from '../schema/checklist.ts';
import { adviceOf } from './advice-of.ts';
import { coreOf } from './core.ts';
import type { NextQuestion } from './grading.ts';
import type { Judged } from './judged.ts';
import { nextQuestion, type Scene } from './next-question.ts';
import { outcomesOf } from './outcomes.ts';
import { type Advice, coreRemedies, reliefsOf } from './relief.ts';

/**
 * "Look here next": the open question whose answer leaves least between the two ends, of all or of those that `mayAsk`
 * lets through, e.g. because they can be put in the present state of the pack. Null when none of them is open.
 * Apart from the grading, because it tries every answer to every open question: half the work of a grading.
 *
 * Source  DESIGN §5, "Look here next"
 * Check   tests/grading/next-question.test.ts, tests/grading/look-here-next.test.ts
 */
export function lookHereNext(
  definition: Checklist,
  record: Judged,
  { mayAsk, advice = adviceOf(record) }: { mayAsk?: NonNullable<Scene['mayAsk']>; advice?: Advice } = {},
): NextQuestion | null {
  const outcomes = outcomesOf(definition, record);
  const reliefs = reliefsOf(coreRemedies(definition, advice), outcomes.length);
  return nextQuestion({
    definition,
    facts: record.facts,
    outcomes,
    core: coreOf(definition),
    reliefs,
    ...(mayAsk && { mayAsk }),
  });
}
