import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../../src/grading/grade-record.ts';
import { liveResults } from '../../../src/grading/live-tests/live-results.ts';
import { foldRecord } from '../../../src/record/fold-record.ts';
import { figuresOf } from '../../../src/sheet/model/sealed/figures-of.ts';
import { HUT_CHECKLIST, hutRecord } from '../hut-pack.ts';
import { DIPPER_SEAL, WREN_SEAL } from './demo-records.ts';

describe('the hut pack, worked out by hand', () => {
  const figures = figuresOf({ definition: HUT_CHECKLIST, earlier: null, record: hutRecord() });

  // Zones: enclosure lid 0–1 (open), label 0.35 of 2 each; wiring lug 0, tidy 1 → 0.2; vents 0.75 and 1 → 0.875.
  it.each([
    ['grading/zones/enclosure/q/low', 0.175],
    ['grading/zones/enclosure/q/high', 0.675],
    ['grading/zones/wiring/q/low', 0.2],
    ['grading/zones/vents/q/high', 0.875],
    ['grading/build/low', 36.25],
    ['grading/build/high', 48.75],
    ['grading/items/main-lug/grade', 'failed'],
    ['grading/items/metal-floor/because', 'factExcludes'],
    ['grading/items/case-lid/possible', 'sound, failed'],
    ['grading/stop', 'none'],
    ['grading/askedCount', 7],
    ['promised/energy/energyWh', 2560],
    ['promised/energy/from', 'computed'],
    ['promised/pricePerKwh', 250],
    ['tests/capacity/delivered', null],
  ])('%s = %s', (path, figure) => {
    if (typeof figure === 'number') expect(figures[path]).toBeCloseTo(figure, 9);
    else expect(figures[path]).toBe(figure);
  });

  it('has the grading by the earlier checklist beside the present one', () => {
    const earlier = { ...HUT_CHECKLIST, zones: HUT_CHECKLIST.zones.map((zone) => ({ ...zone, weight: 1 })) };
    const both = figuresOf({ definition: HUT_CHECKLIST, earlier, record: hutRecord() });
    // A third of 0.175 + 0.2 + 0.875.
    expect(both['earlier/build/low']).toBeCloseTo(100 * (1.25 / 3), 9);
    expect(both['grading/build/low']).toBeCloseTo(36.25, 9);
  });
});

describe.each([
  ['Wren 24', WREN_SEAL],
  ['Dipper 24', DIPPER_SEAL],
])('%s', (_, seal) => {
  const record = foldRecord(seal.packId, seal.entries);
  const figures = figuresOf({ definition: seal.definition, earlier: null, record });

  it('holds every number of the grading and of the live results, however deep', () => {
    const held = new Set(Object.values(figures));
    const results = [gradeRecord(seal.definition, record), liveResults(record)];
    const absent = results.flatMap(numbersIn).filter((value) => !held.has(value) && !heldAsWord(value));
    expect(absent).toEqual([]);
    function heldAsWord(value: number): boolean {
      // An open end is a word; a number in a list of whole ones, and the number of a cell, stand in a text or a path.
      return (
        !Number.isFinite(value) ||
        (Number.isInteger(value) && Object.keys(figures).some((p) => p.includes(`/${value}/`)))
      );
    }
  });

  it('is plain JSON: 0 figures that are not finite', () => {
    expect(Object.values(figures).filter((it) => typeof it === 'number' && !Number.isFinite(it))).toEqual([]);
    expect(JSON.parse(JSON.stringify(figures))).toEqual(figures);
  });

  it('counts only readings of derived items by their place: nothing else lacks a name of its own', () => {
    const counted = Object.keys(figures).filter((path) => /\/[^/]+ \d+\/|\/value(\/|$)/.test(path));
    expect(counted.filter((path) => !path.includes('/measured/found/alternatives/'))).toEqual([]);
  });
});

/** Numbers of results, without those of stored tests, which are sealed as entries. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null || ('id' in value && 'made' in value)) return [];
  return Object.values(value).flatMap(numbersIn);
}
