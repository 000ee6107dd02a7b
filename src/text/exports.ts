import type { Grade } from '../schema/grade.ts';
import { GRADE_WORDS } from './grades.ts';
import type { verdictWords } from './verdict.ts';

/** Words inside the files that are taken away: column headings and what stands where there is nothing. */
export const exportWords = {
  /** Headings of the findings, in the order of the columns. A physical number has its unit in its heading. */
  findingColumns: {
    pack: 'Pack',
    sample: 'Sample',
    checklist: 'Checklist',
    checklistVersion: 'Checklist version',
    demo: 'Invented demo',
    route: 'Route',
    allAsked: 'All asked',
    settled: 'Settled',
    verdict: 'Verdict',
    number: 'Finding',
    itemId: 'Item id',
    title: 'Item',
    zone: 'Zone',
    grade: 'Grade',
    sure: 'Surely or maybe',
    sentence: 'What was found',
    measured: 'Measured',
    overruled: 'Graded against the measurement because',
    hazard: 'Hazard',
    severity: 'Severity',
    likelihood: 'Likelihood',
    risk: 'Risk',
    lostPoints: 'Points of Build lost',
    evidence: 'How it is known',
    note: 'Note of the tester',
    photos: 'Photo numbers',
    standing: 'Sheet',
    revision: 'Sheet revision',
    sha256: 'SHA-256 of the sheet',
    date: 'Date',
    disclosure: 'Disclosure',
  },
  yesNo: (is: boolean) => (is ? 'yes' : 'no'),
  settledOf: (settled: number, asked: number) => `${settled} of ${asked}`,
  /** An unsettled one names both its ends. */
  verdict: ({ title, line, settled }: ReturnType<typeof verdictWords>) => (settled ? title : `${title}: ${line}`),
  surely: 'surely',
  maybe: 'maybe',
  route: (route: string, asked: number, all: number) => `${route}: ${asked} of ${all} asked`,
  none: 'No item that was looked at was graded weak or failed.',
  severity: (roman: string, name: string) => `${roman} ${name}`,
  photoNumbers: (numbers: readonly number[]) => numbers.join('; '),

  /** On a callout that has no words of its own. */
  callouts: (pack: string) => `Callouts on photos of ${pack}`,
  shows: (item: string, grade: Grade | null) => (grade === null ? item : `${item}: ${GRADE_WORDS[grade]}`),
};
