import { describe, expect, it } from 'vitest';
import { restIsSound } from '../../src/grading/rest-is-sound.ts';
import type { Answer } from '../../src/schema/answer.ts';
import { doesNotApply, graded, notSeen } from './answer-with.ts';
import { deepFreeze } from './deep-freeze.ts';
import { definitionWith, rawItem } from './small-definition.ts';

const metal = { fact: 'metal-case', is: 'yes' };

/** Only `plain`, `hazardous` (severity II), `floor` (in a metal case) and `deep` (whole route) may ever be answered. */
const definition = definitionWith({
  remedies: [],
  items: [
    rawItem({ id: 'plain', zone: 'cells' }),
    rawItem({ id: 'hazardous', zone: 'cells', hazard: 'chafe', severity: 2 }),
    rawItem({ id: 'grave', zone: 'cells', hazard: 'relief', severity: 1 }),
    rawItem({ id: 'guarded', zone: 'cells', safety: true }),
    rawItem({ id: 'stopping', zone: 'cells', stop: true }),
    rawItem({ id: 'no-sound', zone: 'cells', grades: { weak: 'W.', failed: 'F.' } }),
    rawItem({ id: 'floor', zone: 'cells', onlyIf: metal }),
    rawItem({ id: 'deep', zone: 'cells', route: 'whole' }),
    rawItem({ id: 'later', zone: 'cells', state: 'apart' }),
    rawItem({ id: 'elsewhere', zone: 'bms' }),
  ],
});

function rest({ answers = {}, facts = {}, route = 'whole' }: Partial<Parameters<typeof restIsSound>[1]>): string[] {
  return restIsSound(definition, deepFreeze({ answers, facts, route }), { zoneId: 'cells', state: 'untouched' });
}

describe('the rest of this zone is sound', () => {
  it('answers the plain, the severity II and the whole-route item; not safety, stop, severity I, nor without a sound grade', () => {
    expect(rest({})).toEqual(['plain', 'hazardous', 'deep']);
  });

  it('answers an item under a fact only once the fact lets it apply', () => {
    expect(rest({ facts: { 'metal-case': 'yes' } })).toEqual(['plain', 'hazardous', 'floor', 'deep']);
    expect(rest({ facts: { 'metal-case': 'no' } })).toEqual(['plain', 'hazardous', 'deep']);
  });

  it('answers only what the short route asks', () => {
    expect(rest({ route: 'short' })).toEqual(['plain', 'hazardous']);
  });

  it.each([
    ['graded', graded('weak')],
    ['not seen', notSeen()],
    ['does not apply', doesNotApply()],
  ])('keeps an answer that is there: %s', (_, answer) => {
    expect(rest({ answers: { plain: answer } })).toEqual(['hazardous', 'deep']);
  });

  it('takes an item with only a note for unanswered', () => {
    const answers: Record<string, Answer> = { plain: { kind: 'open', note: 'clean' } };
    expect(rest({ answers })).toEqual(['plain', 'hazardous', 'deep']);
  });

  it('asks each state and zone for itself', () => {
    const record = { answers: {}, facts: {}, route: 'whole' } as const;
    expect(restIsSound(definition, record, { zoneId: 'cells', state: 'apart' })).toEqual(['later']);
    expect(restIsSound(definition, record, { zoneId: 'bms', state: 'untouched' })).toEqual(['elsewhere']);
    expect(restIsSound(definition, record, { zoneId: 'bms', state: 'liveOpen' })).toEqual([]);
  });
});
