import { describe, expect, it } from 'vitest';
import { type Changes, expectRefused, type Refusal, refusalsOf } from './expect-refused.ts';

const FOUR = { sound: 'A.', passable: 'B.', weak: 'C.', failed: 'D.' };
const BMS = { id: 'bms', title: 'BMS', weight: 1 };
const HEAT = { id: 'heat', title: 'Heat', harm: 'Heat.' };
const NO_ANCHOR = 'has no item on the short route that always applies';

describe('the short route', () => {
  it.each<[string, Changes]>([
    ['no item', {}],
    [
      'an item on the whole route',
      { 'items[2].route': 'whole', 'items[2].onlyIf': undefined, 'items[2].mayNotApply': [] },
    ],
    ['an item under a fact', { 'items[2].route': 'short', 'items[2].mayNotApply': [] }],
    ['an item with a reason not to apply', { 'items[2].route': 'short', 'items[2].onlyIf': undefined }],
  ])('is refused when a zone or a hazard has only %s', (name, changes) => {
    const placed =
      name === 'no item' ? {} : { 'items[2].zone': 'bms', 'items[2].hazard': 'heat', 'items[2].severity': 3 };
    expect(refusalsOf({ 'zones[1]': BMS, 'hazards[1]': HEAT, ...placed, ...changes })).toEqual([
      { place: 'zones[1]', reason: `zone "bms" ${NO_ANCHOR}` },
      { place: 'hazards[1]', reason: `hazard "heat" ${NO_ANCHOR}` },
    ]);
  });

  it.each<Refusal>([
    [
      'safety',
      { 'items[2].safety': true, 'items[2].mayNotApply': [] },
      'items[2].route',
      'a safety item must be on the short route',
    ],
    [
      'stop',
      { 'items[2].stop': true, 'items[2].mayNotApply': [], 'items[2].grades': FOUR },
      'items[2].route',
      'a stop item must be on the short route',
    ],
  ])('is refused without a %s item', (_, changes, place, reason) => {
    expectRefused(changes, place, reason);
  });

  it.each<Refusal>([
    [
      'safety',
      { 'items[1].stop': false, 'items[1].safety': true, 'items[1].mayNotApply': ['not fitted'] },
      'items[1].mayNotApply',
      'a safety item has no reasons not to apply: only a fact decides',
    ],
    [
      'stop',
      { 'items[1].mayNotApply': ['not fitted'] },
      'items[1].mayNotApply',
      'a stop item has no reasons not to apply: only a fact decides',
    ],
  ])('is refused with a %s item that may be waved away', (_, changes, place, reason) => {
    expectRefused(changes, place, reason);
  });
});
