import { gradeRecord } from '../../grading/grade-record.ts';
import type { Grading } from '../../grading/grading.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import type { Checklist } from '../../schema/checklist.ts';
import type { LiveTests } from '../../schema/live-tests/live-tests.ts';

type Judged = Pick<PackRecord, 'answers' | 'facts' | 'route' | 'nameplate' | 'tests'>;

/**
 * Grades a record, and hands the same grading back while nothing that is judged has changed: a photo or the stamp that a
 * written answer or test gets move no score, and grading is the longest work after a tap.
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
  return (
    a.route === b.route &&
    haveSameMembers(a.facts, b.facts) &&
    haveSameMembers(a.answers, b.answers) &&
    haveSameMembers(a.nameplate, b.nameplate) &&
    haveSameTests(a.tests, b.tests)
  );
}

function haveSameMembers(a: object, b: object): boolean {
  const [ours, theirs] = [new Map(Object.entries(a)), new Map(Object.entries(b))];
  return ours.size === theirs.size && [...ours].every(([name, value]) => isSame(value, theirs.get(name)));
}

function haveSameTests(a: LiveTests, b: LiveTests): boolean {
  if (a === b) return true;
  const kinds = Object.keys(a) as (keyof LiveTests)[];
  return kinds.every((kind) => {
    const [ours, theirs] = [a[kind], b[kind]];
    return ours.length === theirs.length && ours.every((test, place) => isSame(test, theirs[place]));
  });
}

/** What was not touched is the same object; what was just written is a copy with another stamp, compared as text. */
function isSame(a: unknown, b: unknown): boolean {
  return a === b || textOf(a) === textOf(b);
}

function textOf(value: unknown): string | undefined {
  return JSON.stringify(value, (key, member: unknown) => (key === 'made' ? undefined : member));
}
