import { describe, expect, it } from 'vitest';
import { LID_OFF_STATES } from '../../../src/schema/pack-states.ts';
import { PHOTO_PLACES_OUTSIDE } from '../../../src/schema/photo.ts';
import { expectRefused, refusalsOf } from './expect-refused.ts';

describe('places', () => {
  it.each(LID_OFF_STATES)('a fact asked while the pack is %s is refused without a zone', (state) => {
    expectRefused(
      { 'facts[0].state': state },
      'facts[0].zone',
      'is missing: a fact asked under the lid is asked in a zone',
    );
  });

  it('a fact of the closed pack needs none', () => {
    expect(refusalsOf({ 'facts[0].state': 'loaded' })).toEqual([]);
  });

  it.each(PHOTO_PLACES_OUTSIDE)('a zone may not be called %s, where photos outside the zones are', (id) => {
    expect(refusalsOf({ 'zones[0].id': id })).toContainEqual({
      place: 'zones[0].id',
      reason: `"${id}" is where photos outside the zones are: take another word`,
    });
  });
});
