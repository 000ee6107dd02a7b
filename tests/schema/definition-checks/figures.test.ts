import { describe, expect, it } from 'vitest';
import { checkDefinition } from '../../../src/schema/check-definition.ts';
import { minimalDefinitionWith } from '../minimal-definition.ts';
import { type Refusal, refusalsOf } from './expect-refused.ts';

const measured = (limits: object, band: object = { from: 1 }) => ({
  'items[2].kind': 'measure',
  'items[2].measure': {
    inputs: [{ id: 'gap', title: 'Gap', unit: 'mm', least: 0, most: 100, ...limits }],
    figure: 'value',
    unit: 'mm',
    bands: { any: [{ grade: 'sound', ...band }, { grade: 'weak' }] },
  },
});

describe('figures of a definition', () => {
  it('takes a weight of 1000 and limits of ±1e9', () => {
    const changes = { 'zones[0].weight': 1000, ...measured({ least: -1e9, most: 1e9 }, { from: -1e9 }) };
    expect(checkDefinition(minimalDefinitionWith(changes)).ok).toBe(true);
  });

  it.each<Refusal>([
    ['a weight of 1e308', { 'zones[0].weight': 1e308 }, 'zones[0].weight', 'must be within ±1000, got 1e+308'],
    ['a most of 1e21', measured({ most: 1e21 }), 'items[2].measure.inputs[0].most', 'must be within ±1000000000, got 1e+21'],
    ['a least of −1e308', measured({ least: -1e308 }), 'items[2].measure.inputs[0].least', 'must be within ±1000000000, got -1e+308'],
    ['a band from 1e308', measured({}, { from: 1e308 }), 'items[2].measure.bands.any[0].from', 'must be within ±1000000000, got 1e+308'],
    ['a title that runs backwards', { 'items[0].title': 'Cell \u202estnev' }, 'items[0].title', 'holds U+202E, which does not show'],
    ['a bell and a null in an ask', { 'items[1].ask': 'How\u0007 is\u0000 it?' }, 'items[1].ask', 'holds U+0007, U+0000, which does not show'],
  ])('refuses %s', (_, changes, place, reason) => {
    expect(refusalsOf(changes)).toEqual([{ place, reason }]);
  }); // biome-ignore format: a table
});
