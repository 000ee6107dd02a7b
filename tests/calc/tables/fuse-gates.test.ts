import { describe, expect, it } from 'vitest';
import { FUSE_FAMILIES, fuseGatesFor } from '../../../src/calc/tables/fuse-gates.ts';
import fixture from '../../fixtures/fuse-gates.json' with { type: 'json' };

// Gates that stood in a page, named in the fixture.
describe('gates that were read', () => {
  it.each(fixture.rows.map((row) => [row.family, row.ratingA, row.gates] as const))(
    '%s at %d A',
    (id, ratingA, gates) => {
      const family = FUSE_FAMILIES.find((one) => one.id === id);
      expect(['read', 'partly']).toContain(family?.status);
      const found = family === undefined ? [] : fuseGatesFor(family, ratingA);
      expect(found.map((gate) => [gate.currentFactor, gate.minTimeS ?? null, gate.maxTimeS ?? null])).toEqual(gates);
    },
  );
});

it('marks the four families whose gates nobody read, by id', () => {
  const unread = FUSE_FAMILIES.filter(({ status }) => status === 'memory' || status === 'notFound');
  expect(unread.map(({ id, status }) => [id, status])).toEqual([
    ['iso8820-3', 'memory'],
    ['iso8820-5-sf51', 'memory'],
    ['iso8820-5-sf30', 'notFound'],
    ['ul248-15-t', 'notFound'],
  ]);
});

it('has in every family rising factors, each with a time, least before most, and opens sooner at more current', () => {
  for (const family of FUSE_FAMILIES) {
    const { from, to } = family.ratingsA ?? { from: 100, to: 100 };
    for (const ratingA of [from, to]) {
      const gates = fuseGatesFor(family, ratingA);
      const factors = gates.map(({ currentFactor }) => currentFactor);
      expect(factors).toEqual([...new Set(factors)].toSorted((a, b) => a - b));
      const opens = gates.flatMap(({ maxTimeS }) => maxTimeS ?? []);
      expect(opens).toEqual(opens.toSorted((a, b) => b - a));
      for (const { minTimeS = 0, maxTimeS = Number.POSITIVE_INFINITY } of gates) {
        expect(maxTimeS - minTimeS).toBeGreaterThan(0);
        expect(minTimeS > 0 || Number.isFinite(maxTimeS)).toBe(true);
      }
    }
  }
});
