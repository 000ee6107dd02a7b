import fc from 'fast-check';
import { expect, it } from 'vitest';
import { mergeEntries } from '../../src/record/merge-entries.ts';
import { nextStamp } from '../../src/record/next-stamp.ts';
import type { Entry } from '../../src/schema/entry.ts';
import { DEVICE, entry, OTHER_DEVICE, PACK, stampAt, tombstone } from './made-entries.ts';

/** Few keys, few stamps, few values: collisions of every kind are common. */
const anyEntry: fc.Arbitrary<Entry> = fc
  .record({
    part: fc.constantFrom('name', 'maker', 'model'),
    value: fc.constantFrom<unknown>('Wren', 'Dipper', 100, null, { a: 1, b: [2] }),
    ms: fc.integer({ min: 1, max: 3 }),
    device: fc.constantFrom(DEVICE, OTHER_DEVICE),
    by: fc.constantFrom(DEVICE, OTHER_DEVICE),
    gone: fc.boolean(),
    why: fc.option(fc.constantFrom('typed wrong', 'seen again')),
  })
  .map(({ part, value, ms, device, by, gone, why }) => ({
    key: [PACK, 'nameplate', part],
    v: gone ? null : value,
    at: stampAt(ms, device),
    by,
    ...(gone ? { gone: true as const } : {}),
    ...(why === null ? {} : { why }),
  }));
const anySet = fc.array(anyEntry, { maxLength: 8 });

it('is commutative over 1000 random pairs', () => {
  fc.assert(
    fc.property(anySet, anySet, (a, b) => {
      expect(mergeEntries(a, b)).toEqual(mergeEntries(b, a));
    }),
    { numRuns: 1000 },
  );
});

it('is associative over 1000 random triples', () => {
  fc.assert(
    fc.property(anySet, anySet, anySet, (a, b, c) => {
      expect(mergeEntries(mergeEntries(a, b), c)).toEqual(mergeEntries(a, mergeEntries(b, c)));
    }),
    { numRuns: 1000 },
  );
});

it('is idempotent over 1000 random sets', () => {
  fc.assert(
    fc.property(anySet, (a) => {
      const once = mergeEntries(a, []);
      expect(mergeEntries(once, once)).toEqual(once);
      expect(mergeEntries(once, a)).toEqual(once);
    }),
    { numRuns: 1000 },
  );
});

it('keeps one entry a key, and never one that another of its key surpasses', () => {
  fc.assert(
    fc.property(anySet, anySet, (a, b) => {
      const merged = mergeEntries(a, b);
      const keys = [...a, ...b].map(({ key }) => key.join('/'));
      expect(merged.map(({ key }) => key.join('/'))).toEqual([...new Set(keys)].sort());
      for (const { key, at } of merged) {
        const rivals = [...a, ...b].filter((rival) => rival.key[2] === key[2]);
        expect(at).toBe(rivals.map((rival) => rival.at).sort().at(-1)); // biome-ignore format: one line
      }
    }),
  );
});

it('lets the later of two writers win even when the clock was set back between them', () => {
  const first = entry('nameplate', 'name', 'Wren', 5000);
  const later = { ...first, v: 'Dipper', at: nextStamp({ seen: first.at, nowMs: 20, deviceId: DEVICE }) };
  expect(mergeEntries([later], [first])).toEqual([later]);
});

it('lets a newer tombstone win over a value, and a newer value over a tombstone', () => {
  const value = entry('nameplate', 'name', 'Wren', 2000);
  expect(mergeEntries([value], [tombstone('nameplate', 'name', 3000)])[0]?.gone).toBe(true);
  expect(mergeEntries([value], [tombstone('nameplate', 'name', 1000)])).toEqual([value]);
});

it('takes the greater RFC 8785 text where stamps meet: "b" over "a", 9 over 10', () => {
  const with_ = (v: unknown) => [entry('nameplate', 'name', v, 1000)];
  expect(mergeEntries(with_('b'), with_('a'))[0]?.v).toBe('b');
  expect(mergeEntries(with_(9), with_(10))[0]?.v).toBe(9);
});
