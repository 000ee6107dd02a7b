import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lookHereNext } from '../../src/grading/look-here-next.ts';
import { sceneArb } from './arbitrary-record.ts';
import { definitionWith, rawItem } from './small-definition.ts';

describe('look here next, among the questions that can be put now', () => {
  it('is the engine’s own choice when every question can be put', () => {
    fc.assert(
      fc.property(sceneArb, ({ definition, record }) => {
        const among = lookHereNext(definition, record, { mayAsk: () => true });
        expect(among).toEqual(lookHereNext(definition, record));
      }),
      { numRuns: 500 },
    );
  });

  // Weights 3 and 1 without hazard: the heavier narrows more, so it is next; when it cannot be put, the lighter is.
  it('is the second best of 2 items when the best cannot be put, and null when neither can', () => {
    const items = [rawItem({ id: 'a', zone: 'case', weight: 3 }), rawItem({ id: 'b', zone: 'case' })];
    const definition = definitionWith({ zones: [{ id: 'case', title: 'Case', weight: 1 }], remedies: [], items });
    const record = { route: 'short' as const, facts: {}, answers: {} };
    const asked = (mayAsk: (id: string) => boolean) =>
      lookHereNext(definition, record, { mayAsk: (_kind, id) => mayAsk(id) })?.id ?? null;
    expect([asked(() => true), asked((id) => id !== 'a'), asked(() => false)]).toEqual(['a', 'b', null]);
  });
});
