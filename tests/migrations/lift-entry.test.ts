import { expect, it } from 'vitest';
import { liftEntry } from '../../src/migrations/lift-entry.ts';
import { MIGRATIONS, type Migration } from '../../src/migrations/migrations.ts';
import type { Entry } from '../../src/schema/entry.ts';
import { SCHEMA_VERSION } from '../../src/schema/schema-version.ts';
import { entry } from '../record/made-entries.ts';

// A made-up ladder: 2 renames a field, 3 turns ounces into kilograms (1 oz = 28.349523125 g exactly, NIST SP 811 B.8).
const steps: Migration[] = [
  { to: 2, step: (old) => ({ ...old, key: [old.key[0], old.key[1], 'massKg'] }) },
  { to: 3, step: (old) => ({ ...old, v: Number(old.v) * 0.028349523125 }) },
];
const old: Entry = Object.freeze({ ...entry('nameplate', 'mass', 400), colour: 'grey' });

it('lifts 400 oz from version 1 to 11.33980925 kg in version 3, every step run, stamp and unknown fields kept', () => {
  const lift = liftEntry(old, 1, { steps, present: 3 });
  expect(lift.ok && lift.entry).toEqual({ ...old, key: [old.key[0], 'nameplate', 'massKg'], v: 11.33980925 });
});

it('runs only step 3 on an entry of version 2, and none on one of version 3', () => {
  expect(liftEntry(old, 2, { steps, present: 3 })).toEqual({ ok: true, entry: { ...old, v: 11.33980925 } });
  expect(liftEntry(old, 3, { steps, present: 3 })).toEqual({ ok: true, entry: old });
});

it('refuses version 4 when the app knows 3', () => {
  expect(liftEntry(old, 4, { steps, present: 3 })).toMatchObject({ ok: false, problem: 'newer' });
});

it('reports a step that throws, naming the step and the entry, and leaves the entry as it was', () => {
  const throwing: Migration[] = [
    {
      to: 2,
      step: (copy) => {
        copy.v = 'half done';
        throw new Error('no mass');
      },
    },
  ];
  const lift = liftEntry(old, 1, { steps: throwing, present: 2 });
  expect(lift).toMatchObject({
    ok: false,
    problem: 'failed',
    detail: expect.stringMatching(/step 2 on .*mass.*no mass/),
  });
  expect(old.v).toBe(400);
});

it('reports a step that touches the stamp', () => {
  const restamping: Migration[] = [{ to: 2, step: (copy) => ({ ...copy, by: '9'.repeat(32) }) }];
  expect(liftEntry(old, 1, { steps: restamping, present: 2 })).toMatchObject({ ok: false, problem: 'failed' });
});

it.each([
  ['a ladder with a gap', 1, 'step to 2'],
  ['version 0', 0, 'from must be 1'],
])('throws on %s', (_, from, reason) => {
  expect(() => liftEntry(old, from, { steps: [], present: 3 })).toThrow(reason);
});

it('has one step for each version from 2 to the present schema version', () => {
  const wanted = Array.from({ length: SCHEMA_VERSION - 1 }, (_, i) => i + 2);
  expect(MIGRATIONS.map(({ to }) => to)).toEqual(wanted);
});
