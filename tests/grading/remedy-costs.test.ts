import { describe, expect, it } from 'vitest';
import type { ItemResult, RemedyResult } from '../../src/grading/grading.ts';
import { costBound, remedyCosts, remedyPrice } from '../../src/grading/remedy-costs.ts';
import type { RemedyNote } from '../../src/schema/remedy-note.ts';
import { deepFreeze } from './deep-freeze.ts';

// Expected sums are added up by hand.
const definition = deepFreeze({
  remedies: ['fuse', 'cap', 'rebind', 'recrimp'].map((id) => ({
    id,
    text: `Remedy ${id}.`,
    reach: id === 'fuse' || id === 'cap' ? ('outside' as const) : ('workshop' as const),
    settles: [{ item: `${id}-item`, leaves: 'passable' as const }],
  })),
});

/** What is left of the item that a remedy bears on. */
function item(remedyId: string, possible: ItemResult['possible'] = ['failed']): ItemResult {
  const result = { itemId: `${remedyId}-item`, zoneId: 'case', asked: true, possible, settled: possible.length === 1 };
  const answered = { grade: null, evidence: null, because: 'answered' as const, loweredByTold: false };
  return { ...result, ...answered, unlooked: false, measured: null };
}

function listed(remedyId: string, reach: RemedyResult['reach'], ruledOut = false): RemedyResult {
  const none = { low: 0, high: 0 };
  const result = { remedyId, reach, itemIds: [], gain: none, buildGain: none, hazardGains: [], cumulative: none };
  return { ...result, clearsHazardIds: [], ...(ruledOut && { ruledOut: 'fuseFits' as const }) };
}

const grading = deepFreeze({
  remedies: [listed('fuse', 'outside'), listed('cap', 'outside'), listed('rebind', 'workshop')],
  items: [item('fuse'), item('cap', ['weak', 'failed']), item('rebind')],
});
const none = { unpricedIds: [], otherCurrencyIds: [], unsureIds: [] };

function costs(remedyNotes: Record<string, RemedyNote>, currency: string | undefined = 'EUR') {
  const nameplate = currency === undefined ? {} : { currency };
  const record = deepFreeze({ nameplate, remedyNotes });
  return remedyCosts({ record, definition, grading, currency: currency ?? null });
}

describe('remedyCosts', () => {
  it('adds 24.50 and 3 to 27.50 outside, and 40 of the workshop to 67.50 in all', () => {
    expect(costs({ fuse: { price: 24.5, currency: 'EUR' }, cap: { price: 3 }, rebind: { price: 40 } })).toEqual({
      outside: { ...none, price: 27.5, currency: 'EUR' },
      all: { ...none, price: 67.5, currency: 'EUR' },
    });
  });

  it('has no price where none was typed, and names all 3 as unpriced', () => {
    expect(costs({ cap: { note: 'From the drawer.' } })).toEqual({
      outside: { ...none, price: null, currency: 'EUR', unpricedIds: ['fuse', 'cap'] },
      all: { ...none, price: null, currency: 'EUR', unpricedIds: ['fuse', 'cap', 'rebind'] },
    });
  });

  it('takes a price of 0 for a price', () => {
    expect(costs({ cap: { price: 0 } }).outside).toEqual({
      ...none,
      price: 0,
      currency: 'EUR',
      unpricedIds: ['fuse'],
    });
  });

  it('does not count 12 USD beside a pack in EUR, and names it apart from those without a price', () => {
    expect(costs({ fuse: { price: 12, currency: 'USD' }, cap: { price: 3, currency: 'EUR' } }).all).toEqual({
      price: 3,
      currency: 'EUR',
      unpricedIds: ['rebind'],
      otherCurrencyIds: ['fuse'],
      unsureIds: [],
    });
  });

  it('counts the 12 USD, and not the 3 of a pack in EUR, where it is counted in USD', () => {
    const record = {
      nameplate: { currency: 'EUR' },
      remedyNotes: { fuse: { price: 12, currency: 'USD' }, cap: { price: 3 } },
    };
    expect(remedyCosts({ record, definition, grading, currency: 'USD' }).outside).toEqual({
      price: 12,
      currency: 'USD',
      unpricedIds: [],
      otherCurrencyIds: ['cap'],
      unsureIds: [],
    });
  });

  it.each<[string, ItemResult['possible']]>([
    ['nothing is known of the item', ['sound', 'passable', 'weak', 'failed']],
    ['it may be as good as the remedy leaves it', ['passable', 'failed']],
    ['it may not apply', ['failed', 'doesNotApply']],
  ])('counts a remedy of 3 as one that may not be needed where %s', (_, possible) => {
    const given = { remedies: [listed('cap', 'outside')], items: [item('cap', possible)] };
    const record = { nameplate: {}, remedyNotes: { cap: { price: 3 } } };
    const { outside } = remedyCosts({ record, definition, grading: given, currency: null });
    expect(outside).toEqual({ ...none, price: 3, currency: null, unsureIds: ['cap'] });
  });

  it('counts a fuse of 24.50 that may not fit as one that may not be done', () => {
    const open = { ...listed('fuse', 'outside'), open: 'fuseFits' as const };
    const record = { nameplate: {}, remedyNotes: { fuse: { price: 24.5 } } };
    const given = { remedies: [open], items: [item('fuse')] };
    expect(remedyCosts({ record, definition, grading: given, currency: null }).all.unsureIds).toEqual(['fuse']);
  });

  it('has currency null where the nameplate has none, and takes only prices without one', () => {
    const record = { nameplate: {}, remedyNotes: { fuse: { price: 12, currency: 'USD' }, cap: { price: 3 } } };
    expect(remedyCosts({ record, definition, grading, currency: null }).outside).toEqual({
      ...none,
      price: 3,
      currency: null,
      otherCurrencyIds: ['fuse'],
    });
  });

  it('leaves out one that is not listed and one that is ruled out: 40 is left of 67.50', () => {
    const ruled = {
      remedies: [listed('fuse', 'outside', true), listed('rebind', 'workshop')],
      items: [item('rebind')],
    };
    const remedyNotes = { fuse: { price: 24.5 }, cap: { price: 3 }, rebind: { price: 40 } };
    const record = { nameplate: { currency: 'EUR' }, remedyNotes };
    const found = remedyCosts({ record, definition, grading: ruled, currency: 'EUR' });
    expect(found.outside).toEqual({ ...none, price: null, currency: 'EUR' });
    expect(found.all).toEqual({ ...none, price: 40, currency: 'EUR' });
  });

  it('refuses a grading by another definition', () => {
    const other = { remedies: [listed('weld', 'workshop')], items: [] };
    const record = { nameplate: {}, remedyNotes: {} };
    expect(() => remedyCosts({ record, definition, grading: other, currency: null })).toThrow(
      'remedyCosts: remedy must be one the definition names, got weld',
    );
  });
});

describe('costBound', () => {
  const cost = { ...none, price: 3, currency: 'EUR' };
  it.each([
    ['exact', cost],
    ['atLeast', { ...cost, unpricedIds: ['fuse'] }],
    ['atLeast', { ...cost, otherCurrencyIds: ['fuse'] }],
    ['ifNeeded', { ...cost, unsureIds: ['cap'] }],
    ['ifNeeded', { ...cost, unsureIds: ['cap'], unpricedIds: ['fuse'] }],
  ])('is %s of %o', (bound, given) => {
    expect(costBound(given)).toBe(bound);
  });
});

describe('remedyPrice', () => {
  it('is null for a remedy nobody wrote of, and 3 for one of 3 without a currency', () => {
    const record = { nameplate: { currency: 'EUR' }, remedyNotes: { cap: { price: 3 } } };
    expect(remedyPrice(record, 'fuse')).toBeNull();
    expect(remedyPrice(record, 'cap')).toBe(3);
  });
});
