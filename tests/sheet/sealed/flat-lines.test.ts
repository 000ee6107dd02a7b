import { expect, it } from 'vitest';
import { flatLines } from '../../../src/sheet/model/sealed/flat-lines.ts';

it('names the members of a list by their own ids, in one line more for their order: 3 lines for 2 zones', () => {
  const zones = [
    { zoneId: 'vents', q: 0.4 },
    { zoneId: 'cells', q: null },
  ];
  expect(flatLines('zones', zones)).toEqual([
    ['zones', 'vents, cells'],
    ['zones/vents/q', 0.4],
    ['zones/cells/q', null],
  ]);
});

it('says the same of a list whose members stand in another order, but for the line of their order', () => {
  const one = { itemId: 'lid', lost: 1 };
  const other = { itemId: 'lug', lost: 2 };
  const lines = flatLines('findings', [one, other]);
  const turned = flatLines('findings', [other, one]);
  expect(new Map(lines)).toEqual(new Map([...turned, ['findings', 'lid, lug']]));
  expect(turned[0]).toEqual(['findings', 'lug, lid']);
});

it('counts members that have the same name: "any", "any 2"', () => {
  const alternatives = [[{ case: 'any', figure: { low: 1 } }, { case: 'any', figure: { low: 2 } }]]; // biome-ignore format: one line
  expect(flatLines('found', alternatives)).toEqual([
    ['found', 'any'],
    ['found/any', 'any, any 2'],
    ['found/any/any/figure/low', 1],
    ['found/any/any 2/case', 'any'],
    ['found/any/any 2/figure/low', 2],
  ]);
});

it('takes of a stored test only its id, and names by it what is worked out of it', () => {
  const run = { id: 'r1', made: 'stamp', chargeAh: 100 };
  const instrument = { id: 'm1', made: 'stamp', name: 'Meter' };
  expect(flatLines('runs', [{ run, instrument, ratePerH: 0.2 }])).toEqual([
    ['runs', 'r1'],
    ['runs/r1/instrument', 'm1'],
    ['runs/r1/ratePerH', 0.2],
  ]);
});

it.each([
  ['an open end', Number.POSITIVE_INFINITY, 'noLimit'],
  ['the other open end', Number.NEGATIVE_INFINITY, 'noLimit'],
  ['what is no number', Number.NaN, null],
])('writes %s so that JSON can hold it', (_, value, figure) => {
  expect(flatLines('figure', { value })).toEqual([['figure/value', figure]]);
});

it('joins words and whole numbers, and gives each fraction a line to be compared as a number', () => {
  expect(flatLines('kinds', ['instant', 'delayed'])).toEqual([['kinds', 'instant, delayed']]);
  expect(flatLines('numbers', [3, 7])).toEqual([['numbers', '3, 7']]);
  expect(flatLines('z', [0.5, 1.25])).toEqual([
    ['z', 'value, value 2'],
    ['z/value', 0.5],
    ['z/value 2', 1.25],
  ]);
});

it('leaves out what is undefined, and refuses what is no plain value', () => {
  expect(flatLines('a', { b: undefined })).toEqual([]);
  expect(() => flatLines('a', { b: () => 1 })).toThrow('flatLines: a/b must be a plain value, got function');
});
