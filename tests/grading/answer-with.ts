import type { Answer } from '../../src/schema/answer.ts';
import type { Evidence, Grade } from '../../src/schema/grade.ts';

export function graded(grade: Grade, evidence: Evidence = 'seen'): Answer {
  return { kind: 'grade', grade, evidence };
}

export function notSeen(reason = 'under potting'): Answer {
  return { kind: 'notSeen', reason };
}

export function doesNotApply(reason = 'none fitted'): Answer {
  return { kind: 'doesNotApply', reason };
}
