import { describe, expect, it } from 'vitest';
import { checkDefinition } from '../../../src/schema/check-definition.ts';
import { minimalDefinitionWith } from '../minimal-definition.ts';
import { expectRefused, type Refusal } from './expect-refused.ts';

describe('the shape of a definition', () => {
  it.each<Refusal>([
    ['a key of its own', { 'items[0].colour': 'red' }, 'items[0].colour', 'is not a field a checklist has'],
    ['a missing field', { title: undefined }, 'title', 'is missing'],
    ['a version of two numbers', { version: '1.0' }, 'version', 'must be major.minor.patch, got "1.0"'],
    ['an id in capitals', { 'items[1].id': 'Swollen' }, 'items[1].id', 'must be kebab-case, got "Swollen"'],
    [
      'an id that is a prototype key',
      { 'items[1].id': '__proto__' },
      'items[1].id',
      'must be kebab-case, got "__proto__"',
    ],
    ['an unheard-of route', { 'items[2].route': 'long' }, 'items[2].route', 'must be ("short" | "whole"), got "long"'],
    [
      'an unheard-of grade',
      { 'items[2].grades.fair': 'Fair.' },
      'items[2].grades.fair',
      'is not a field a checklist has',
    ],
    ['a weight of 6', { 'items[0].weight': 6 }, 'items[0].weight', 'must be at most 5, got 6'],
    ['a weight of 0', { 'items[0].weight': 0 }, 'items[0].weight', 'must be at least 1, got 0'],
    ['a weight of 1.5', { 'items[0].weight': 1.5 }, 'items[0].weight', 'must be a whole number, got 1.5'],
    ['a weight in words', { 'items[0].weight': 'two' }, 'items[0].weight', 'must be a number, got "two"'],
    ['an empty grade', { 'items[2].grades.weak': '' }, 'items[2].grades.weak', 'is empty'],
    [
      'a grade of 401 characters',
      { 'items[2].grades.weak': 'x'.repeat(401) },
      'items[2].grades.weak',
      'has more than 400 characters',
    ],
    ['no basis', { 'items[0].basis': [] }, 'items[0].basis', 'is empty'],
    [
      'one choice',
      { 'facts[0].choices': [{ id: 'yes', text: 'Yes' }], 'items[2].onlyIf': undefined },
      'facts[0].choices',
      'has fewer than 2 entries',
    ],
    ['a severity of 5', { 'items[0].severity': 5 }, 'items[0].severity', 'must be (1 | 2 | 3 | 4), got 5'],
    ['items as text', { items: 'none' }, 'items', 'must be a list, got "none"'],
  ])('is refused with %s', (_, changes, place, reason) => {
    expectRefused(changes, place, reason);
  });

  it.each([
    ['null', null, 'must be an object, got null'],
    ['text', 'a definition', 'must be an object, got "a definition"'],
    ['a prototype key', JSON.parse('{"__proto__":{"ok":true}}'), 'holds the forbidden key "__proto__"'],
    [
      'a number that never ends',
      minimalDefinitionWith({ 'k.high': Number.NEGATIVE_INFINITY }),
      'holds the number -Infinity',
    ],
  ])('is refused as %s, at the definition itself', (_, input, reason) => {
    expect(checkDefinition(input)).toEqual({ ok: false, problems: [{ place: 'definition', reason }] });
  });

  it('names both of 2 problems at once', () => {
    const verdict = checkDefinition(minimalDefinitionWith({ title: undefined, 'items[0].weight': 9 }));
    expect(verdict.ok ? [] : verdict.problems.map(({ place }) => place).toSorted()).toEqual([
      'items[0].weight',
      'title',
    ]);
  });
});
