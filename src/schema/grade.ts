import * as v from 'valibot';

/** The four grades of an item, best first. Order matters: everything that compares grades uses it. */
export const GRADES = ['sound', 'passable', 'weak', 'failed'] as const;
export type Grade = (typeof GRADES)[number];
export const gradeSchema = v.picklist(GRADES);

/** What can still become of an item: one of the grades, or that it does not apply to this pack. */
export const OUTCOMES = [...GRADES, 'doesNotApply'] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** How a person knows what they answered. `told` is somebody's claim, not looked at here. */
export const EVIDENCE = ['seen', 'measured', 'told'] as const;
export type Evidence = (typeof EVIDENCE)[number];
export const evidenceSchema = v.picklist(EVIDENCE);

/** Position of a grade from best (0) to worst (3). */
export function gradeRank(grade: Grade): number {
  return GRADES.indexOf(grade);
}
