import { gradeRecord } from '../../../src/grading/grade-record.ts';
import type { Compared } from '../../../src/grading/side-by-side/side-by-side.ts';
import { foldRecord } from '../../../src/record/fold-record.ts';
import type { PackRecord } from '../../../src/record/pack-record.ts';
import type { Answer } from '../../../src/schema/answer.ts';
import type { Checklist } from '../../../src/schema/checklist.ts';
import type { Grade } from '../../../src/schema/grade.ts';
import { graded } from '../answer-with.ts';
import { deepFreeze } from '../deep-freeze.ts';
import { smallDefinition } from '../small-definition.ts';

/** A pack as it comes to the comparison, graded by the definition it is on; frozen. */
export function compared(
  packId: string,
  given: Partial<PackRecord>,
  definition: Checklist = smallDefinition,
): Compared {
  const record: PackRecord = { ...foldRecord(packId, []), route: 'whole', ...given };
  return deepFreeze({ packId, record, definition, grading: gradeRecord(definition, record) });
}

/** Every item of the small definition sound and the case not of metal, but for what is given; null leaves it open. */
export function smallPack(
  packId: string,
  grades: Readonly<Record<string, Grade | null>> = {},
  given: Partial<PackRecord> & { definition?: Checklist } = {},
): Compared {
  const { definition = smallDefinition, ...record } = given;
  const ids = definition.items.map(({ id }) => id).filter((id) => id !== 'metal-floor');
  const answers = ids.flatMap((id): [string, Answer][] => {
    const grade = Object.hasOwn(grades, id) ? grades[id] : 'sound';
    return grade ? [[id, graded(grade)]] : [];
  });
  return compared(
    packId,
    { facts: { 'metal-case': 'no' }, answers: Object.fromEntries(answers), ...record },
    definition,
  );
}
