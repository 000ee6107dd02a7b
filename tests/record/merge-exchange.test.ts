import fc from 'fast-check';
import { expect, it } from 'vitest';
import { mergeEntries } from '../../src/record/merge-entries.ts';
import { anySteps, at, DEVICES, mergedInOrder, newDevices, PARTS, receive, run, written } from './exchange.ts';

const RUNS = { numRuns: 1000 };
/** Every device at least once, in any order, some more than once. */
const anyOrder = fc
  .tuple(fc.shuffledSubarray([0, 1, 2], { minLength: DEVICES }), fc.array(fc.nat(DEVICES - 1), { maxLength: 4 }))
  .map(([first, again]) => [...first, ...again]);

it('is commutative, associative and idempotent on the sets of 3 devices with jumping clocks, over 1000 histories', () => {
  fc.assert(
    fc.property(anySteps, (steps) => {
      const [a = [], b = [], c = []] = run(steps).map(({ entries }) => entries);
      expect(mergeEntries(a, b)).toEqual(mergeEntries(b, a));
      expect(mergeEntries(mergeEntries(a, b), c)).toEqual(mergeEntries(a, mergeEntries(b, c)));
      expect(mergeEntries(a, a)).toEqual(a);
    }),
    RUNS,
  );
});

it('brings 3 devices to the same set whatever the order of exchange, over 1000 histories and pairs of orders', () => {
  fc.assert(
    fc.property(anySteps, anyOrder, anyOrder, (steps, one, other) => {
      const sets = run(steps).map(({ entries }) => entries);
      expect(mergedInOrder(sets, one)).toEqual(mergedInOrder(sets, other));
    }),
    RUNS,
  );
});

it('brings 3 devices that gossip in random pairs, then all with all, to one set, over 1000 histories', () => {
  const anyPairs = fc.array(fc.tuple(fc.nat(DEVICES - 1), fc.nat(DEVICES - 1)), { maxLength: 8 });
  fc.assert(
    fc.property(anySteps, anyPairs, (steps, pairs) => {
      const devices = run(steps);
      const everyone = devices.flatMap((_, from) => devices.map((_, to): [number, number] => [from, to]));
      for (const [from, to] of [...pairs, ...everyone, ...everyone])
        receive(at(devices, to), at(devices, from).entries);
      const [first, ...others] = devices.map(({ entries }) => entries);
      for (const entries of others) expect(entries).toEqual(first);
    }),
    RUNS,
  );
});

it('lets every write stand over all that its device had seen, its clock set back or not, over 1000 histories', () => {
  fc.assert(
    fc.property(anySteps, (steps) => {
      run(steps, (entry, before) => {
        const merged = mergeEntries(before, [entry]);
        expect(merged.find(({ key }) => key[2] === entry.key[2])).toBe(entry);
        expect(mergeEntries([entry], before)).toEqual(merged);
      });
    }),
    RUNS,
  );
});

it('never draws one stamp twice, over 1000 histories of 3 devices', () => {
  fc.assert(
    fc.property(anySteps, (steps) => {
      const stamps: string[] = [];
      run(steps, (entry) => stamps.push(entry.at));
      expect(new Set(stamps).size).toBe(stamps.length);
    }),
    RUNS,
  );
});

it('loses no key that any device ever wrote, over 1000 histories', () => {
  fc.assert(
    fc.property(anySteps, anyOrder, (steps, order) => {
      const wrote = new Set<string>();
      const devices = run(steps, ({ key }) => wrote.add(key[2]));
      const merged = mergedInOrder(devices.map(({ entries }) => entries), order); // biome-ignore format: one line
      expect(merged.map(({ key }) => key[2])).toEqual([...wrote].sort());
      expect(merged.length).toBeLessThanOrEqual(PARTS.length);
    }),
    RUNS,
  );
});

it('brings a value back that was deleted elsewhere, seen, and written again by a clock set back, over 1000 clocks', () => {
  const anyMs = fc.nat(100_000_000_000);
  fc.assert(
    fc.property(anyMs, anyMs, anyMs, (wroteMs, deletedMs, againMs) => {
      const devices = newDevices();
      const one = at(devices, 0);
      const other = at(devices, 1);
      receive(one, [written(one, { part: 'name', wallMs: wroteMs, v: 'Wren' })]);
      receive(other, one.entries);
      receive(other, [written(other, { part: 'name', wallMs: deletedMs, v: null, gone: true })]);
      receive(one, other.entries);
      expect(one.entries).toMatchObject([{ gone: true }]);
      receive(one, [written(one, { part: 'name', wallMs: againMs, v: 'Wren' })]);
      receive(other, one.entries);
      for (const { entries } of [one, other]) {
        expect(entries).toHaveLength(1);
        expect(entries[0]).toMatchObject({ v: 'Wren', by: one.id });
        expect(entries[0]?.gone).toBeUndefined();
      }
    }),
    RUNS,
  );
});

it('keeps a deletion against a later-clocked write of a device that had not seen it only if its stamp is newer', () => {
  const devices = newDevices();
  const [one, other] = [at(devices, 0), at(devices, 1)];
  receive(one, [written(one, { part: 'name', wallMs: 5000, v: null, gone: true })]);
  receive(other, [written(other, { part: 'name', wallMs: 4000, v: 'Dipper' })]);
  expect(mergeEntries(one.entries, other.entries)).toMatchObject([{ gone: true }]);
  receive(other, [written(other, { part: 'name', wallMs: 6000, v: 'Dipper' })]);
  expect(mergeEntries(one.entries, other.entries)).toMatchObject([{ v: 'Dipper' }]);
});
