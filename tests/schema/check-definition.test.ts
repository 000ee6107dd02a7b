import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkDefinition } from '../../src/schema/check-definition.ts';
import { definitionArb } from '../grading/arbitrary-definition.ts';
import type { Changes } from './definition-checks/expect-refused.ts';
import { minimalDefinition, minimalDefinitionWith } from './minimal-definition.ts';

const BMS = { id: 'bms', title: 'BMS', weight: 1 };

describe('an admitted definition', () => {
  it('is the minimal one, with 3 defaults filled in', () => {
    const verdict = checkDefinition(minimalDefinition());
    if (!verdict.ok) throw new Error(JSON.stringify(verdict.problems));
    expect(verdict.definition.items[2]).toMatchObject({ safety: false, stop: false, photo: 'fault' });
  });

  it('has the 4 credits of DESIGN §5 when it states none', () => {
    const verdict = checkDefinition(minimalDefinitionWith({ credits: undefined }));
    expect(verdict).toMatchObject({
      ok: true,
      definition: { credits: { sound: 1, passable: 0.75, weak: 0.35, failed: 0 } },
    });
  });

  it.each<[string, Changes]>([
    ['every k is 1', { k: { high: 1, serious: 1, medium: 1, low: 1 } }],
    ['k of high is 0', { 'k.high': 0 }],
    ['credits fall by a hundredth', { credits: { sound: 0.04, passable: 0.03, weak: 0.02, failed: 0.01 } }],
    ['its fact is asked later than the item that hangs on it', { 'facts[0].state': 'apart', 'facts[0].zone': 'case' }],
    ['weak and failed are equally likely', { 'items[0].likelihood': { failed: 'D', because: 'It needs more.' } }],
    [
      'a likelihood stands for a grade the item does not have, so nothing falls',
      {
        'items[0].grades': { sound: 'Free.', failed: 'Sealed.' },
        'items[0].likelihood': { weak: 'A', because: 'Left over.' },
        remedies: [],
      },
    ],
    ['a safety item hangs on a fact', { 'items[1].safety': true, 'items[1].onlyIf': { fact: 'metal-case', is: 'no' } }],
    ['two grades differ in a sign', { 'items[2].grades': { sound: 'Gap ≤ 1 mm.', weak: 'Gap > 1 mm.' } }],
    ['two grades differ in a decimal point', { 'items[2].grades': { sound: 'Gap 1.5 mm.', weak: 'Gap 15 mm.' } }],
    ['one id names a zone and an item', { 'items[2].id': 'case' }],
    ['the remedy leaves weak', { 'remedies[0].settles[0].leaves': 'weak' }],
    ['a second zone has a short item that always applies', { 'zones[1]': BMS, 'items[1].zone': 'bms' }],
  ])('may be one in which %s', (_, changes) => {
    expect(checkDefinition(minimalDefinitionWith(changes))).toMatchObject({ ok: true });
  });

  it('is every one that the properties of grading are tried on (200 drawn)', () => {
    fc.assert(
      fc.property(definitionArb, (definition) => {
        const verdict = checkDefinition(definition);
        expect(verdict.ok ? [] : verdict.problems).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });
});
