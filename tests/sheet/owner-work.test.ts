import { expect, it } from 'vitest';
import { foundOf } from '../../src/sheet/model/owner-found.ts';
import { workOf } from '../../src/sheet/model/owner-work.ts';
import { sheetContext } from '../../src/sheet/model/sheet-context.ts';
import { inputOf } from './exports/inputs.ts';
import { HUT_CHECKLIST, hutRecord } from './hut-pack.ts';

it('puts what clears the high risk first, though it is printed as number 2, and counts that 1 as what matters', () => {
  const remedies = HUT_CHECKLIST.remedies.map((one) => ({ ...one, reach: 'workshop' as const }));
  const input = inputOf(hutRecord(), { ...HUT_CHECKLIST, remedies });
  // By gain the lug is printed first: turned round, so that the order of this page is its own.
  const context = sheetContext({
    ...input,
    grading: { ...input.grading, remedies: input.grading.remedies.toReversed() },
  });
  expect(workOf(context, 'workshop', foundOf(context))).toEqual({
    items: [
      { text: '2. Clears a high risk: Crimp a new main lug.' },
      { text: '1. Would also help: Put a true label on the case.' },
    ],
    firstCount: 1,
  });
});
