import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkDefinition } from '../../src/schema/check-definition.ts';
import type { Checklist } from '../../src/schema/checklist.ts';
import { definitionArb } from './arbitrary-definition.ts';
import { smallDefinition } from './small-definition.ts';

describe('the definitions grading is tested with', () => {
  it('are all admitted: 5000 made-up ones', () => {
    fc.assert(
      fc.property(definitionArb, (definition) => {
        const verdict = checkDefinition(definition);
        expect(verdict.ok ? [] : verdict.problems).toEqual([]);
      }),
      { numRuns: 5000 },
    );
  });

  it('are admitted: the small one', () => {
    expect(checkDefinition(smallDefinition)).toEqual({ ok: true, definition: smallDefinition });
  });

  const has: [string, (definition: Checklist) => boolean][] = [
    ['a stop item', ({ items }) => items.some(({ stop }) => stop)],
    ['a safety item under a fact', ({ items }) => items.some(({ safety, onlyIf }) => safety && onlyIf !== undefined)],
    ['a reason not to apply', ({ items }) => items.some(({ mayNotApply }) => mayNotApply.length > 0)],
    ['a stated likelihood', ({ items }) => items.some(({ likelihood }) => likelihood?.failed !== undefined)],
    ['an item with fewer than four grades', ({ items }) => items.some(({ grades }) => Object.keys(grades).length < 4)],
    [
      'a hazard of two items',
      ({ hazards, items }) => hazards.some(({ id }) => items.filter(({ hazard }) => hazard === id).length > 1),
    ],
    ['three zones', ({ zones }) => zones.length === 3],
    ['a remedy that needs a fuse', ({ remedies }) => remedies.some(({ needs }) => needs !== undefined)],
    [
      'a workshop remedy of two items',
      ({ remedies }) => remedies.some(({ reach, settles }) => reach === 'workshop' && settles.length > 1),
    ],
  ];
  it.each(has)('have %s in at least 10 % of cases', (_, holds) => {
    const sample = fc.sample(definitionArb, { numRuns: 1000, seed: 1 });
    expect(sample.filter(holds).length).toBeGreaterThan(100);
  });
});
