import fc from 'fast-check';
import { expect, it } from 'vitest';
import { liveResults } from '../../../src/grading/live-tests/live-results.ts';
import type { Entry } from '../../../src/schema/entry.ts';
import { entry, PHOTO, photoValue } from '../../record/made-entries.ts';
import { type DrawnTest, nameplateArb, testsArb } from './arbitrary-live-tests.ts';
import { id, member, packOf, test } from './tested-pack.ts';

it('of a pack without tests is empty: no figure, and seven cut-offs to be tried', () => {
  const results = liveResults(packOf({}));
  const { capacity, overcurrent, fuse, cutOffs, mainLeadsAllowableA, ...lists } = results;
  expect(capacity.delivered).toBeNull();
  expect(overcurrent.behaviour.verdict).toBe('notTested');
  expect(fuse.advice.fits).toBeNull();
  expect(cutOffs.map(({ remains }) => remains)).toEqual(Array(7).fill(['trial']));
  expect(mainLeadsAllowableA).toBeNull();
  expect(lists).toEqual({
    leads: [],
    cells: [],
    resistances: [],
    joints: [],
    drains: [],
    parallelRuns: [],
    cellMarks: [],
    rulers: [],
  });
});

it('of tests that note only what they must has no figure but those noted: nothing absent became 0', () => {
  const bare: [string, object][] = [
    ['run', {}],
    ['cellSet', { state: 'rested' }],
    ['lead', { place: 'main', form: 'cable' }],
    ['lead', { place: 'link', form: 'bar' }],
    ['joint', { place: 'terminal' }],
    ['parallelRun', { of: 'packs' }],
    ['resistance', { method: 'twoStep', of: 'pack' }],
    ['cutOff', { kind: 'highVoltage', acted: false }],
  ];
  const results = liveResults(packOf({}, ...bare.map(([subject, value], at) => test(subject, at + 1, value))));
  // A completed count of runs and the reference temperature of resistance are no readings.
  expect(figures(results).sort()).toEqual([
    'capacity.completeCount 0',
    'cells.0.readCount 0',
    'leads.0.resistanceAtDegC 20',
    'leads.1.resistanceAtDegC 20',
  ]);
});

it('never throws and never holds NaN or an endless figure, whatever the schema admits (1000 packs)', () => {
  const photo = entry('photo', PHOTO, photoValue());
  let figureCount = 0;
  fc.assert(
    fc.property(nameplateArb, testsArb, (nameplate, drawn) => {
      const found = figures(liveResults(packOf(nameplate, photo, ...drawn.flatMap(entriesOf))));
      figureCount += found.length;
      expect(found.filter((figure) => /(NaN|Infinity)$/.test(figure))).toEqual([]);
    }),
    { numRuns: 1000 },
  );
  expect(figureCount).toBeGreaterThan(10_000);
});

it('means the charge of exactly the runs it names near 0.2C (500 packs of complete runs)', () => {
  const figureArb = fc.double({ min: 1, max: 400, noNaN: true });
  const runsArb = fc.array(fc.record({ currentA: figureArb, chargeAh: figureArb }), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(runsArb, (runs) => {
      const complete = { end: 'lowVoltage', chargedToV: 14.4, taperA: 1, restMin: 60 };
      const plate = { ratedCapacityAh: 300, chargeVoltageV: 14.4 };
      const { gentle } = liveResults(
        packOf(plate, ...runs.map((run, at) => test('run', at + 1, { ...run, ...complete }))),
      ).capacity;
      const named = runs.filter((_, at) => gentle?.runIds.includes(id(at + 1)));
      expect(gentle?.count).toBe(named.length);
      expect(gentle?.chargeAh).toBeCloseTo(named.reduce((sum, run) => sum + run.chargeAh, 0) / named.length, 6);
      const furthestA = Math.max(...named.map(({ currentA }) => Math.abs(currentA - (gentle?.currentA ?? 0))));
      expect(furthestA).toBeLessThanOrEqual(0.2 * (gentle?.currentA ?? 0));
    }),
    { numRuns: 500 },
  );
});

it('keeps the best area and current of a lead between its ends (500 packs)', () => {
  let leadCount = 0;
  fc.assert(
    fc.property(nameplateArb, testsArb, (nameplate, drawn) => {
      const { leads } = liveResults(packOf(nameplate, ...drawn.flatMap(entriesOf)));
      for (const { allowable, areaMm2 } of leads) {
        if (areaMm2 === null) continue;
        leadCount += 1;
        expect([areaMm2.low, areaMm2.best, areaMm2.high]).toEqual(inOrder(areaMm2));
        if (allowable === null) continue;
        const { lowA, bestA, highA } = allowable;
        expect([lowA, bestA, highA]).toEqual(inOrder({ low: lowA, best: bestA, high: highA }));
      }
    }),
    { numRuns: 500 },
  );
  expect(leadCount).toBeGreaterThan(100);
});

function inOrder({ low, best, high }: { low: number; best: number; high: number }): number[] {
  return [low, best, high].sort((a, b) => a - b);
}

function entriesOf({ subject, value, members = [] }: DrawnTest, at: number): Entry[] {
  const part = subject === 'cellSet' ? 'cell' : 'parallelShare';
  return [
    test(subject, at + 1, value),
    ...members.map((given, place) => member(part, at + 1, { ...given, number: place + 1 })),
  ];
}

/** Every number of a result with the way to it; the tests themselves, which are kept beside it, are left out. */
function figures(value: unknown, way: string[] = []): string[] {
  if (typeof value === 'number') return [`${way.join('.')} ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  if ('made' in value) return [];
  return Object.entries(value).flatMap(([name, inner]) => figures(inner, [...way, name]));
}

it('keeps figures apart by their id', () => {
  expect(figures({ run: { made: 'x', a: 1 }, b: [2, { c: id(1), d: 3 }] })).toEqual(['b.0 2', 'b.1.d 3']);
});
