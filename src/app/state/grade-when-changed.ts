import { gradeRecord } from '../../grading/grade-record.ts';
import type { Grading } from '../../grading/grading.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import type { Checklist } from '../../schema/checklist.ts';

type Judged = Pick<PackRecord, 'answers' | 'facts' | 'route'>;

/**
 * Grades a record, and hands the same grading back while nothing that is judged has changed: a photo, a field of the
 * Nameplate or the stamp a written answer gets move no score, and grading is the longest work after a tap.
 */
export function gradeWhenChanged(definition: Checklist): (record: Judged) => Grading {
  let last: { record: Judged; grading: Grading } | null = null;
  return (record) => {
    if (last === null || !isSameJudged(last.record, record))
      last = { record, grading: gradeRecord(definition, record) };
    return last.grading;
  };
}

function isSameJudged(a: Judged, b: Judged): boolean {
  return a.route === b.route && haveSameMembers(a.facts, b.facts) && haveSameMembers(a.answers, b.answers);
}

function haveSameMembers(a: Record<string, unknown>, b: Record<string, unknown>): boolean {
  const names = Object.keys(a);
  if (names.length !== Object.keys(b).length) return false;
  // An answer that was not touched is the same object; one just written is a copy, compared as text.
  return names.every((name) => a[name] === b[name] || JSON.stringify(a[name]) === JSON.stringify(b[name]));
}
