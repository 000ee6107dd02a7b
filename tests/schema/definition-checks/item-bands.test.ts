import { describe, expect, it } from 'vitest';
import { DERIVATIONS, MEASURES } from '../../../src/schema/figures.ts';
import { type Changes, expectRefused, type Refusal, refusalsOf } from './expect-refused.ts';

/** items[0] of the minimal definition offers all four grades, items[1] sound and failed. */
const BANDS = [
  { grade: 'sound', upTo: 10 },
  { grade: 'passable', upTo: 30 },
  { grade: 'weak', under: 50 },
  { grade: 'failed' },
];
const INPUT = { id: 'gap', title: 'Gap', unit: 'mm', least: 0, most: 50 };
const MEASURE = { inputs: [INPUT], figure: 'value', unit: 'mm', bands: { any: BANDS } };
const TWO_INPUTS = { ...MEASURE, figure: 'difference', inputs: [INPUT, { ...INPUT, id: 'other-gap' }] };
const DERIVE = { from: 'cellSpread', bands: { rested: BANDS, nearFull: BANDS } };
const OVER_CURRENT = {
  from: 'overCurrent',
  bands: {
    opened: BANDS,
    heatOnly: [{ grade: 'weak' }],
    fuseOnly: [{ grade: 'weak' }],
    noneSeen: [{ grade: 'failed' }],
  },
};

const measured = (measure: unknown): Changes => ({ 'items[0].kind': 'measure', 'items[0].measure': measure });
const derived = (derive: unknown): Changes => ({ 'items[0].kind': 'derive', 'items[0].derive': derive });
const banded = (...bands: unknown[]): Changes => measured({ ...MEASURE, bands: { any: bands } });

describe('a measured or derived item', () => {
  it.each<[string, Changes]>([
    ['is measured by one value', measured(MEASURE)],
    ['is measured by two', measured(TWO_INPUTS)],
    ['is derived with bands for each of two cases', derived(DERIVE)],
    ['is derived from over-current trials, with the fact that says a fuse is fitted', derived({ ...OVER_CURRENT, fuseFitted: { fact: 'metal-case', is: 'yes' } })],
    ['has one band that takes everything', banded({ grade: 'weak' })],
    ['skips grades', banded({ grade: 'passable', from: 3 }, { grade: 'failed' })],
    ['has a band of one figure alone', banded({ grade: 'sound', from: 5, upTo: 5 }, { grade: 'failed' })],
    ['has a band with four limits, of which the narrower two count', banded({ grade: 'sound', from: 5, over: 4, upTo: 5, under: 6 }, { grade: 'failed' })],
    ['has a band below zero', banded({ grade: 'sound', over: -20, under: -5 }, { grade: 'failed' })],
  ])('is admitted when it %s', (_, changes) => {
    expect(refusalsOf(changes)).toEqual([]);
  }); // biome-ignore format: a table

  it.each<Refusal>([
    ['kind measure alone', { 'items[0].kind': 'measure' }, 'items[0].measure', 'is missing: the item is of kind measure'],
    ['kind derive alone', { 'items[0].kind': 'derive' }, 'items[0].derive', 'is missing: the item is of kind derive'],
    ['a measure to look at', { 'items[0].measure': MEASURE }, 'items[0].measure', 'is given, but the item is of kind look'],
    ['a derivation to look at', { 'items[0].derive': DERIVE }, 'items[0].derive', 'is given, but the item is of kind look'],
    ['a derivation to measure', { ...measured(MEASURE), 'items[0].derive': DERIVE }, 'items[0].derive', 'is given, but the item is of kind measure'],
    ['a measure to derive', { ...derived(DERIVE), 'items[0].measure': MEASURE }, 'items[0].measure', 'is given, but the item is of kind derive'],
    ['one value for a difference', measured({ ...MEASURE, figure: 'difference' }), 'items[0].measure.inputs', 'are 1; difference takes 2'],
    ['two values for one', measured({ ...TWO_INPUTS, figure: 'value' }), 'items[0].measure.inputs', 'are 2; value takes 1'],
    ['two values of one name', measured({ ...TWO_INPUTS, inputs: [INPUT, INPUT] }), 'items[0].measure.inputs[1].id', '"gap" is used twice'],
    ['least and most alike', measured({ ...MEASURE, inputs: [{ ...INPUT, least: 50 }] }), 'items[0].measure.inputs[0].most', 'must be above least, 50, got 50'],
    ['most under least', measured({ ...MEASURE, inputs: [{ ...INPUT, most: -1 }] }), 'items[0].measure.inputs[0].most', 'must be above least, 0, got -1'],
    ['no bands for its only case', measured({ ...MEASURE, bands: {} }), 'items[0].measure.bands', 'has no bands for the case "any"'],
    ['no bands for one case of two', derived({ ...DERIVE, bands: { rested: BANDS } }), 'items[0].derive.bands', 'has no bands for the case "nearFull"'],
    ['bands for a made-up case', derived({ ...DERIVE, bands: { ...DERIVE.bands, boiling: BANDS } }), 'items[0].derive.bands.boiling', 'is no case of this figure'],
    ['a fuse where none can act', derived({ ...DERIVE, fuseFitted: { fact: 'metal-case', is: 'yes' } }), 'items[0].derive.fuseFitted', 'says nothing about cellSpread'],
    ['a fuse by a fact that is not there', derived({ ...OVER_CURRENT, fuseFitted: { fact: 'fuse', is: 'yes' } }), 'items[0].derive.fuseFitted.fact', '"fuse" is not named in this definition'],
    ['a fuse by a choice that is not there', derived({ ...OVER_CURRENT, fuseFitted: { fact: 'metal-case', is: 'both' } }), 'items[0].derive.fuseFitted.is', '"both" is not named in this definition'],
  ])('is refused with %s', (_, changes, place, reason) => {
    expectRefused(changes, place, reason);
  }); // biome-ignore format: a table
});

describe('its bands', () => {
  const any = 'items[0].measure.bands.any';

  it.each<Refusal>([
    ['two of one grade', banded({ grade: 'weak', upTo: 1 }, { grade: 'weak' }), `${any}[1].grade`, 'must be worse than weak before it, got weak'],
    ['a better one after a worse', banded({ grade: 'failed', upTo: 1 }, { grade: 'sound' }), `${any}[1].grade`, 'must be worse than failed before it, got sound'],
    ['a last one with a limit', banded({ grade: 'sound', upTo: 1 }, { grade: 'failed', over: 1 }), `${any}[1]`, 'is the last and must take the rest, without limits'],
    ['an only one with a limit', banded({ grade: 'failed', over: 0 }), `${any}[0]`, 'is the last and must take the rest, without limits'],
    ['a first one without', banded({ grade: 'sound' }, { grade: 'failed' }), `${any}[0]`, 'has no limit, so none after it can hold'],
    ['from above upTo', banded({ grade: 'sound', from: 5, upTo: 4 }, { grade: 'failed' }), `${any}[0]`, 'has limits that no figure can be inside'],
    ['over above under', banded({ grade: 'sound', over: 5, under: 4 }, { grade: 'failed' }), `${any}[0]`, 'has limits that no figure can be inside'],
    ['over at upTo', banded({ grade: 'sound', over: 5, upTo: 5 }, { grade: 'failed' }), `${any}[0]`, 'has limits that no figure can be inside'],
    ['from at under', banded({ grade: 'sound', from: 5, under: 5 }, { grade: 'failed' }), `${any}[0]`, 'has limits that no figure can be inside'],
    ['over at under', banded({ grade: 'sound', over: 5, under: 5 }, { grade: 'failed' }), `${any}[0]`, 'has limits that no figure can be inside'],
    ['none', banded(), any, 'is empty'],
    ['nine', banded(...Array(9).fill({ grade: 'sound', upTo: 1 })), any, 'has more than 8 entries'],
    ['a limit in words', banded({ grade: 'sound', upTo: '5' }, { grade: 'failed' }), `${any}[0].upTo`, 'must be a number, got "5"'],
    ['an unheard-of limit', banded({ grade: 'sound', below: 5 }, { grade: 'failed' }), `${any}[0].below`, 'is not a field a checklist has'],
  ])('are refused with %s', (_, changes, place, reason) => {
    expectRefused(changes, place, reason);
  }); // biome-ignore format: a table

  it('are refused with a grade that the item does not offer: weak on a stop item', () => {
    const bands = { any: [{ grade: 'sound', upTo: 1 }, { grade: 'weak', upTo: 2 }, { grade: 'failed' }] }; // biome-ignore format: one line
    const changes = { 'items[1].kind': 'measure', 'items[1].measure': { ...MEASURE, bands } };
    expectRefused(changes, 'items[1].measure.bands.any[1].grade', 'is weak, which the item does not offer');
  });
});

describe('the shape of a measure or derivation', () => {
  it.each<[string, Changes, string, RegExp]>([
    ['an unheard-of figure', measured({ ...MEASURE, figure: 'weight' }), 'items[0].measure.figure', /^must be \("value" \|/],
    ['an unheard-of source', derived({ ...DERIVE, from: 'smell' }), 'items[0].derive.from', /^must be \("overCurrent" \|/],
    ['an unheard-of unit', measured({ ...MEASURE, inputs: [{ ...INPUT, unit: 'inch' }] }), 'items[0].measure.inputs[0].unit', /^must be .*got "inch"/],
    ['no least', measured({ ...MEASURE, inputs: [{ ...INPUT, least: undefined }] }), 'items[0].measure.inputs[0].least', /^is missing$/],
    ['no inputs', measured({ ...MEASURE, inputs: [] }), 'items[0].measure.inputs', /^is empty$/],
    ['five inputs', measured({ ...MEASURE, inputs: Array(5).fill(INPUT) }), 'items[0].measure.inputs', /^has more than 4 entries$/],
    ['a unit of 13 characters', measured({ ...MEASURE, unit: 'x'.repeat(13) }), 'items[0].measure.unit', /^has more than 12 characters$/],
  ])('is refused with %s', (_, changes, place, reason) => {
    expect(refusalsOf(changes)).toEqual([{ place, reason: expect.stringMatching(reason) }]);
  }); // biome-ignore format: a table
});

it('finds 0 figures without a case, and 0 with a case twice', () => {
  for (const { cases } of [...Object.values(MEASURES), ...Object.values(DERIVATIONS)]) {
    expect(cases.length).toBeGreaterThan(0);
    expect(new Set<string>(cases).size).toBe(cases.length);
  }
});
