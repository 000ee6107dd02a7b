import { describe, expect, it } from 'vitest';
import type { RemedyResult } from '../../src/grading/grading.ts';
import { remedyCosts, remedyPrice } from '../../src/grading/remedy-costs.ts';
import type { RemedyNote } from '../../src/schema/remedy-note.ts';
import { deepFreeze } from './deep-freeze.ts';

// Expected sums are added up by hand.
const definition = deepFreeze({
  remedies: ['fuse', 'cap', 'rebind', 'recrimp'].map((id) => ({
    id,
    text: `Remedy ${id}.`,
    reach: id === 'fuse' || id === 'cap' ? ('outside' as const) : ('workshop' as const),
    settles: [],
  })),
});

function listed(remedyId: string, reach: RemedyResult['reach'], ruledOut = false): RemedyResult {
  const none = { low: 0, high: 0 };
  const result = { remedyId, reach, itemIds: [], gain: none, buildGain: none, hazardGains: [], cumulative: none };
  return { ...result, clearsHazardIds: [], ...(ruledOut && { ruledOut: 'fuseFits' as const }) };
}

const grading = deepFreeze({
  remedies: [listed('fuse', 'outside'), listed('cap', 'outside'), listed('rebind', 'workshop')],
});

function costs(remedyNotes: Record<string, RemedyNote>, currency: string | undefined = 'EUR') {
  const nameplate = currency === undefined ? {} : { currency };
  return remedyCosts(deepFreeze({ nameplate, remedyNotes }), definition, grading);
}

describe('remedyCosts', () => {
  it('adds 24.50 and 3 to 27.50 outside, and 40 of the workshop to 67.50 in all', () => {
    expect(costs({ fuse: { price: 24.5, currency: 'EUR' }, cap: { price: 3 }, rebind: { price: 40 } })).toEqual({
      outside: { price: 27.5, currency: 'EUR', unpricedIds: [] },
      all: { price: 67.5, currency: 'EUR', unpricedIds: [] },
    });
  });

  it('has no price where none was typed, and names all 3 as unpriced', () => {
    expect(costs({ cap: { note: 'From the drawer.' } })).toEqual({
      outside: { price: null, currency: 'EUR', unpricedIds: ['fuse', 'cap'] },
      all: { price: null, currency: 'EUR', unpricedIds: ['fuse', 'cap', 'rebind'] },
    });
  });

  it('takes a price of 0 for a price', () => {
    expect(costs({ cap: { price: 0 } }).outside).toEqual({ price: 0, currency: 'EUR', unpricedIds: ['fuse'] });
  });

  it('counts 12 USD beside a pack in EUR as unpriced', () => {
    expect(costs({ fuse: { price: 12, currency: 'USD' }, cap: { price: 3, currency: 'EUR' } }).outside).toEqual({
      price: 3,
      currency: 'EUR',
      unpricedIds: ['fuse'],
    });
  });

  it('has currency null where the nameplate has none, and takes only prices without one', () => {
    const nameplate = {};
    const remedyNotes = { fuse: { price: 12, currency: 'USD' }, cap: { price: 3 } };
    expect(remedyCosts({ nameplate, remedyNotes }, definition, grading).outside).toEqual({
      price: 3,
      currency: null,
      unpricedIds: ['fuse'],
    });
  });

  it('leaves out one that is not listed and one that is ruled out: 40 is left of 67.50', () => {
    const ruled = { remedies: [listed('fuse', 'outside', true), listed('rebind', 'workshop')] };
    const remedyNotes = { fuse: { price: 24.5 }, cap: { price: 3 }, rebind: { price: 40 } };
    const found = remedyCosts({ nameplate: { currency: 'EUR' }, remedyNotes }, definition, ruled);
    expect(found.outside).toEqual({ price: null, currency: 'EUR', unpricedIds: [] });
    expect(found.all).toEqual({ price: 40, currency: 'EUR', unpricedIds: [] });
  });

  it('refuses a grading by another definition', () => {
    const other = { remedies: [listed('weld', 'workshop')] };
    expect(() => remedyCosts({ nameplate: {}, remedyNotes: {} }, definition, other)).toThrow(
      'remedyCosts: remedy must be one the definition names, got weld',
    );
  });
});

describe('remedyPrice', () => {
  it('is null for a remedy nobody wrote of, and 3 for one of 3 without a currency', () => {
    const record = { nameplate: { currency: 'EUR' }, remedyNotes: { cap: { price: 3 } } };
    expect(remedyPrice(record, 'fuse')).toBeNull();
    expect(remedyPrice(record, 'cap')).toBe(3);
  });
});
