import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../src/schema/grade.ts';
import { foundOf } from '../../src/sheet/model/owner-found.ts';
import { sheetContext } from '../../src/sheet/model/sheet-context.ts';
import { inputOf } from './exports/inputs.ts';
import { hutRecord } from './hut-pack.ts';

/** The hut's pack with its lug measured, so that just these grades are left and nobody chose one. */
function foundWith(possible: Outcome[]) {
  const input = inputOf(hutRecord());
  const { findings, items } = input.grading;
  return foundOf(
    sheetContext({
      ...input,
      grading: {
        ...input.grading,
        findings: findings.filter(({ itemId }) => itemId !== 'main-lug'),
        items: items.map((item) =>
          item.itemId === 'main-lug' ? { ...item, possible, grade: null, settled: false, because: 'measured' } : item,
        ),
      },
    }),
  );
}

const names = (found: ReturnType<typeof foundOf>) => found.map(({ item, risk, isSure }) => [item.id, risk, isSure]);

describe('what counts as found of the hut’s pack', () => {
  it('is the weak label without a hazard and the failed lug of high risk, not the passable vents nor the unseen lid', () => {
    expect(names(foundOf(sheetContext(inputOf(hutRecord()))))).toEqual([
      ['case-label', null, true],
      ['main-lug', 'high', true],
    ]);
  });

  it('is a lug measured weak or failed, by the worse of the two; not one that may be passable', () => {
    expect(names(foundWith(['weak', 'failed']))).toContainEqual(['main-lug', 'high', true]);
    expect(names(foundWith(['passable', 'weak', 'failed']))).toEqual([['case-label', null, true]]);
  });

  it('is not sure where it may still not apply', () => {
    expect(names(foundWith(['failed', 'doesNotApply']))).toContainEqual(['main-lug', 'high', false]);
  });
});
