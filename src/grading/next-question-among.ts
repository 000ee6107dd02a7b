import type { PackRecord } from '../record/pack-record.ts';
import type { Checklist } from '../schema/checklist.ts';
import { coreOf } from './core.ts';
import type { NextQuestion } from './grading.ts';
import { nextQuestion, type Scene } from './next-question.ts';
import { outcomesOf } from './outcomes.ts';
import { type Advice, coreRemedies, reliefsOf } from './relief.ts';

/**
 * "Look here next" among the questions that can be put now, e.g. in the present state of the pack: of those, the one
 * whose answer leaves least between the two ends. Null when none of them is open.
 *
 * Source  DESIGN §5, "Look here next"
 * Check   tests/grading/next-question-among.test.ts
 */
export function nextQuestionAmong(
  definition: Checklist,
  record: Pick<PackRecord, 'answers' | 'facts' | 'route'>,
  { mayAsk, advice = { fuseFits: null } }: { mayAsk: NonNullable<Scene['mayAsk']>; advice?: Advice },
): NextQuestion | null {
  const outcomes = outcomesOf(definition, record);
  const reliefs = reliefsOf(coreRemedies(definition, advice), outcomes.length);
  return nextQuestion({ definition, facts: record.facts, outcomes, core: coreOf(definition), reliefs, mayAsk });
}
