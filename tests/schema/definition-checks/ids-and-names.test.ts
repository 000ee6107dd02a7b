import { describe, expect, it } from 'vitest';
import { type Changes, expectRefused, type Refusal, refusalsOf } from './expect-refused.ts';

const HEAT = { id: 'heat', title: 'Heat', harm: 'Heat.' };

describe('ids and names', () => {
  it.each<Refusal>([
    ['two zones', { 'zones[1]': { id: 'case', title: 'Case', weight: 1 } }, 'zones[1].id', '"case" is used twice'],
    ['two hazards', { 'hazards[1]': { ...HEAT, id: 'relief' } }, 'hazards[1].id', '"relief" is used twice'],
    [
      'two facts',
      {
        'facts[1]': {
          id: 'metal-case',
          zone: 'case',
          state: 'apart',
          ask: 'Again?',
          choices: [
            { id: 'yes', text: 'Y' },
            { id: 'no', text: 'N' },
          ],
        },
      },
      'facts[1].id',
      '"metal-case" is used twice',
    ],
    ['two choices', { 'facts[0].choices[1].id': 'yes' }, 'facts[0].choices[1].id', '"yes" is used twice'],
    ['two items', { 'items[2].id': 'swollen' }, 'items[2].id', '"swollen" is used twice'],
    [
      'two remedies',
      {
        'remedies[1]': {
          id: 'free-vents',
          text: 'Again.',
          reach: 'workshop',
          settles: [{ item: 'cell-vents', leaves: 'sound' }],
        },
      },
      'remedies[1].id',
      '"free-vents" is used twice',
    ],
  ])('are refused when %s share one', (_, changes, place, reason) => {
    expectRefused(changes, place, reason);
  });

  it.each<[string, Changes, string]>([
    ['definition', { id: 'constructor' }, 'id'],
    [
      'zone',
      {
        'zones[0].id': 'constructor',
        'items[0].zone': 'constructor',
        'items[1].zone': 'constructor',
        'items[2].zone': 'constructor',
      },
      'zones[0].id',
    ],
    ['hazard', { 'hazards[0].id': 'constructor', 'items[0].hazard': 'constructor' }, 'hazards[0].id'],
    ['fact', { 'facts[0].id': 'constructor', 'items[2].onlyIf.fact': 'constructor' }, 'facts[0].id'],
    ['choice', { 'facts[0].choices[1].id': 'constructor' }, 'facts[0].choices[1].id'],
    ['item', { 'items[1].id': 'constructor' }, 'items[1].id'],
    ['remedy', { 'remedies[0].id': 'constructor' }, 'remedies[0].id'],
  ])('are refused when the one of a %s is constructor', (_, changes, place) => {
    expectRefused(changes, place, '"constructor" is the name of something every object has: take another word');
  });

  it('are refused when the one of an item is prototype', () => {
    expect(refusalsOf({ 'items[1].id': 'prototype' })).toHaveLength(1);
  });

  it.each<[string, Changes, string, string]>([
    ["an item's zone", { 'items[2].zone': 'bms' }, 'items[2].zone', 'bms'],
    ["an item's hazard", { 'items[1].hazard': 'heat', 'items[1].severity': 2 }, 'items[1].hazard', 'heat'],
    ["a condition's fact", { 'items[2].onlyIf.fact': 'heater' }, 'items[2].onlyIf.fact', 'heater'],
    ["a condition's choice", { 'items[2].onlyIf.is': 'perhaps' }, 'items[2].onlyIf.is', 'perhaps'],
    ["a fact's zone", { 'facts[0].zone': 'bms' }, 'facts[0].zone', 'bms'],
    ["a remedy's item", { 'remedies[0].settles[0].item': 'vents' }, 'remedies[0].settles[0].item', 'vents'],
  ])('are refused when %s is not there', (_, changes, place, name) => {
    expectRefused(changes, place, `"${name}" is not named in this definition`);
  });
});
