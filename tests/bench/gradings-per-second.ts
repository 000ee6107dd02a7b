import { readFileSync } from 'node:fs';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import type { Answer } from '../../src/schema/answer.ts';
import { checkDefinition } from '../../src/schema/check-definition.ts';
import { GRADES } from '../../src/schema/grade.ts';

const DEFINITION = new URL('../../checklists/lfp-drop-in/1.0.0.json', import.meta.url);
const WARM_UP = 50;
const MEASURE_MS = 1000;

/**
 * How many whole gradings a second a half-answered record of the built-in checklist takes, next question included:
 * every other item is answered, grades in turn, every other fact is known.
 */
export async function gradingsPerSecond(file: URL = DEFINITION): Promise<{ perSecond: number; items: number }> {
  const verdict = checkDefinition(JSON.parse(readFileSync(file, 'utf8')));
  if (!verdict.ok) throw new Error(`gradingsPerSecond: the checklist must be admitted, got ${JSON.stringify(verdict)}`);
  const { definition } = verdict;
  const half = <T>(list: readonly T[]) => list.filter((_, place) => place % 2 === 0);
  const answers: [string, Answer][] = half(definition.items).map((item, place) => {
    const offered = GRADES.filter((grade) => item.grades[grade] !== undefined && !(item.stop && grade === 'failed'));
    const grade = offered[place % offered.length] ?? 'sound';
    return [item.id, { kind: 'grade', grade, evidence: 'seen' }];
  });
  const facts = half(definition.facts).map(({ id, choices }) => [id, choices[0]?.id ?? '']);
  const record = {
    route: 'whole' as const,
    answers: Object.fromEntries(answers),
    facts: Object.fromEntries(facts) as Record<string, string>,
  };

  for (let run = 0; run < WARM_UP; run++) gradeRecord(definition, record);
  const start = performance.now();
  let count = 0;
  while (performance.now() - start < MEASURE_MS) {
    if (gradeRecord(definition, record).settled) throw new Error('gradingsPerSecond: the record must be open');
    count++;
  }
  return { perSecond: (1000 * count) / (performance.now() - start), items: definition.items.length };
}
