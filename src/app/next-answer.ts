import type { ItemResult } from '../grading/grading.ts';
import type { Answer } from '../schema/answer.ts';
import type { Evidence, Grade } from '../schema/grade.ts';

type Readings = Extract<Answer, { kind: 'readings' }>;

export interface Graded {
  grade: Grade;
  evidence: Evidence | null;
  /** Why it counts against what was measured; null where it does not. */
  because: string | null;
}

/** The answer once a sentence was chosen. Typed readings stay, and what was measured is kept beside a grade against it. */
export function afterGrade(
  before: Answer | undefined,
  result: ItemResult | undefined,
  { grade, evidence, because }: Graded,
): Answer {
  if (before?.kind === 'readings' && result?.measured) {
    const { overruled: _old, ...rest } = before;
    return because === null ? rest : { ...rest, overruled: { grade, because } };
  }
  return {
    kind: 'grade',
    grade,
    // A claim counts against no measurement: whoever overrules one has seen why.
    evidence: because !== null && evidence === 'told' ? 'seen' : (evidence ?? 'seen'),
    ...(because !== null && { overrules: because }),
    ...noteOf(before),
  };
}

/** The answer once a box was filled or emptied; null once nothing is left of it. */
export function afterReading(before: Answer | undefined, inputId: string, value: number | null): Answer | null {
  const readings: Readings | null = before?.kind === 'readings' ? before : null;
  const { [inputId]: _old, ...others } = readings?.values ?? {};
  const values = value === null ? others : { ...others, [inputId]: value };
  if (Object.keys(values).length === 0) return before?.note ? { kind: 'open', note: before.note } : null;
  return {
    kind: 'readings',
    values,
    evidence: 'measured',
    ...(readings?.overruled && { overruled: readings.overruled }),
    ...noteOf(before),
  };
}

/** The answer with another note; null once nothing is left of it. */
export function afterNote(before: Answer | undefined, note: string): Answer | null {
  const { note: _old, ...rest } = before ?? { kind: 'open' as const, note: '' };
  if (rest.kind === 'open') return note === '' ? null : { kind: 'open', note };
  return { ...rest, ...(note !== '' && { note }) } as Answer;
}

/** The item is left without a grade, for a reason. */
export function afterReason(before: Answer | undefined, kind: 'notSeen' | 'doesNotApply', reason: string): Answer {
  return { kind, reason, ...noteOf(before) };
}

/** Of what was measured only other grades are possible. */
export function isAgainstMeasured(result: ItemResult | undefined, grade: Grade): boolean {
  return result?.measured != null && !result.measured.possible.includes(grade);
}

function noteOf(answer: Answer | undefined): { note?: string } {
  return answer?.note ? { note: answer.note } : {};
}
