import { gradeRecord } from '../../../src/grading/grade-record.ts';
import { chosenPrice } from '../../../src/grading/side-by-side/chosen-price.ts';
import { sideBySide } from '../../../src/grading/side-by-side/compare.ts';
import { firmness } from '../../../src/grading/side-by-side/firmness.ts';
import type { Compared } from '../../../src/grading/side-by-side/side-by-side.ts';
import type { PackRecord } from '../../../src/record/pack-record.ts';
import type { Checklist } from '../../../src/schema/checklist.ts';
import type { SideBySideInput } from '../../../src/sheet/model/side-by-side/side-by-side-input.ts';
import { deepFreeze } from '../../grading/deep-freeze.ts';
import { HUT_CHECKLIST, hutRecord } from '../hut-pack.ts';

export function compared(
  given: Partial<PackRecord> & { packId: string },
  definition: Checklist = HUT_CHECKLIST,
): Compared {
  const record = deepFreeze(hutRecord(given));
  return { packId: given.packId, record, definition, grading: deepFreeze(gradeRecord(definition, record)) };
}

/** The input of the paper, worked out by the engine from these packs; 200 draws with seed 7. */
export function comparisonOf(packs: readonly Compared[], given: Partial<SideBySideInput> = {}): SideBySideInput {
  const result = sideBySide(packs);
  return {
    compared: packs,
    result,
    firmness: result.groups.map((group) =>
      group.firmness === null ? null : firmness(group.firmness, { draws: 200, seed: 7 }),
    ),
    prices: packs.map(({ record }) => chosenPrice(record, { offerId: null, optionIds: [] })),
    protections: packs.map(() => []),
    unsealedIds: [],
    units: 'metric',
    appVersion: '0.1.0',
    utcOffsetMinutes: 60,
    ...given,
  };
}
