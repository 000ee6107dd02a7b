import type { Item } from '../../src/schema/checklist.ts';
import type { Grade } from '../../src/schema/grade.ts';
import { graded } from '../grading/answer-with.ts';
import type { GradedRecord } from '../grading/arbitrary-record.ts';
import { builtIn } from './built-in.ts';

/** The whole route with every fact at its first choice and every item seen to be sound, but for the grades given. */
export function faultlessRecordBut(grades: Readonly<Record<string, Grade>> = {}): GradedRecord {
  return {
    route: 'whole',
    facts: Object.fromEntries(builtIn.facts.map(({ id, choices }) => [id, choices[0]?.id ?? ''])),
    answers: Object.fromEntries(builtIn.items.map(({ id }) => [id, graded(grades[id] ?? 'sound', 'measured')])),
  };
}

/** Whether an item is asked of the pack of faultlessRecordBut. */
export function appliesThere({ onlyIf }: Item): boolean {
  return onlyIf === undefined || faultlessRecordBut().facts[onlyIf.fact] === onlyIf.is;
}
