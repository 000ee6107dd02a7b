import fc from 'fast-check';
import { expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import { GRADES } from '../../src/schema/grade.ts';
import { shownPoints } from '../../src/sheet/model/shown-points.ts';
import { HUT_CHECKLIST, hutRecord } from './hut-pack.ts';

const sum = (counts: Iterable<number>) => [...counts].reduce((total, count) => total + count, 0);

it('adds up to the tenth for any answers and any factors: items to 100 − Build, factors to Build − Score', () => {
  const answer = fc.option(
    fc.constantFrom(...GRADES).map((grade) => ({ kind: 'grade', grade, evidence: 'seen' }) as const),
  );
  const k = fc.tuple(...Array.from({ length: 3 }, () => fc.integer({ min: 1, max: 999 })));
  const ids = HUT_CHECKLIST.items.map(({ id }) => id);
  fc.assert(
    fc.property(fc.array(answer, { minLength: ids.length, maxLength: ids.length }), k, (given, ks) => {
      const [high = 0, serious = 0, medium = 0] = ks.map((value) => value / 1000).toSorted((a, b) => a - b);
      const answers = Object.fromEntries(given.flatMap((one, place) => (one ? [[ids[place] ?? '', one]] : [])));
      const grading = gradeRecord({ ...HUT_CHECKLIST, k: { high, serious, medium, low: 1 } }, hutRecord({ answers }));
      const points = shownPoints(grading);
      if (points === null) return grading.stop === 'failed';
      expect(sum(points.itemTenths.values())).toBe(1000 - points.buildTenths);
      expect(sum(points.factorTenths)).toBe(points.buildTenths - points.scoreTenths);
      return true;
    }),
    { numRuns: 500, seed: 20261124 },
  );
});
