import { describe, expect, it } from 'vitest';
import { claimChanges } from '../../src/grading/claim-changes.ts';
import { figureChanges } from '../../src/grading/figure-changes.ts';
import { NAMEPLATE_BELONGS } from '../../src/grading/nameplate-belongs.ts';
import type { Nameplate } from '../../src/schema/nameplate.ts';
import { id, packOf, test } from './live-tests/tested-pack.ts';

const PLATE: Nameplate = {
  ratedCapacityAh: 100,
  nominalVoltageV: 25.6,
  chargeVoltageV: 28.8,
  price: 500,
  currency: 'EUR',
};
const EMPTIED = { chargedToV: 28.8, taperA: 2, restMin: 120, end: 'lowVoltage', durationS: 18_000 };
/** 0.5 % of the reading and nothing beside it: u(Q) = 0.005 · Q ÷ √3, as calc/meter-uncertainty.ts has it. */
const METER = { name: 'Bench meter', currentReadingPct: 0.5, currentAbsoluteA: 0 };

/** A pack that gave so much charge in one complete run at 20 A, unless other fields of the run are given. */
function gave(chargeAh: number, given: { run?: object; plate?: Nameplate; metered?: boolean } = {}) {
  const { run = {}, plate = {}, metered = true } = given;
  const value = { ...EMPTIED, chargeAh, currentA: 20, ...(metered ? { instrumentId: id(9) } : {}), ...run };
  return packOf({ ...PLATE, ...plate }, test('instrument', 9, METER), test('run', 1, value));
}
const charge = (was: ReturnType<typeof gave>, now: ReturnType<typeof gave>) => figureChanges(was, now)[0];
const cost = (was: ReturnType<typeof gave>, now: ReturnType<typeof gave>) =>
  figureChanges(was, now).find(({ what }) => what === 'costPerKwh');

describe('charge delivered then and now, 100 Ah at first', () => {
  // u = 0.005·√(100² + 102²)/√3 = 0.41235 Ah; twice that is 0.82 Ah.
  it('went up by 2 Ah ± 0.41 Ah with 102 Ah: more', () => {
    const change = charge(gave(100), gave(102));
    expect(change).toMatchObject({ what: 'chargeAh', tells: 'more' });
    expect(change?.difference?.value).toBeCloseTo(2, 12);
    expect(change?.difference?.uncertainty).toBeCloseTo((0.005 * Math.hypot(100, 102)) / Math.sqrt(3), 12);
    expect(charge(gave(102), gave(100))).toMatchObject({ tells: 'less', difference: { value: -2 } });
  });

  // 2·0.005·√(100² + Q²)/√3 is 0.81980 at Q = 100.8 and 0.81993 at 100.83.
  it.each([
    [100.8, 'noDifference'],
    [100.83, 'more'],
    [99.2, 'noDifference'],
    [99.17, 'less'],
  ])('%f Ah: %s, just inside and just outside of twice the combined uncertainty', (chargeAh, tells) => {
    expect(charge(gave(100), gave(chargeAh))?.tells).toBe(tells);
  });

  it('without a meter’s accuracy on either side shows the difference and judges nothing', () => {
    const change = charge(gave(100, { metered: false }), gave(90));
    expect(change).toMatchObject({ tells: 'noUncertainty', difference: { value: -10, uncertainty: null } });
  });

  it('at least 90 Ah is set against nothing', () => {
    const change = charge(gave(100), gave(90, { run: { end: 'packDisconnect' } }));
    expect(change).toMatchObject({ tells: 'atLeast', difference: null, now: { value: 90, atLeast: true } });
  });

  // The gap must be within 10 % of the harder current: 2.2 ≤ 2.22, but 2.3 > 2.23.
  it.each([
    [22.2, 'less'],
    [22.3, 'otherCurrent'],
  ])('at %f A after 20 A: %s', (currentA, tells) => {
    expect(charge(gave(100), gave(95, { run: { currentA } }))?.tells).toBe(tells);
  });

  it('was not measured then: said so, and no line at all where neither was', () => {
    expect(charge(packOf(PLATE), gave(95))).toMatchObject({ was: null, tells: 'notMeasured' });
    expect(figureChanges(packOf(PLATE), packOf(PLATE))).toEqual([]);
  });
});

describe('cost of a delivered kWh', () => {
  // 500 ÷ 2.56 kWh = 195.3125; 450 ÷ 2.56 = 175.78; each uncertain by 0.5 %/√3.
  it('fell from 195.31 to 175.78 when the price fell from 500 to 450: less', () => {
    const change = cost(gave(100), gave(100, { plate: { price: 450 } }));
    expect(change).toMatchObject({ tells: 'less', currency: { was: 'EUR', now: 'EUR' } });
    expect(change?.was?.value).toBeCloseTo(195.3125, 9);
    expect(change?.now?.value).toBeCloseTo(175.78125, 9);
    expect(change?.difference?.uncertainty).toBeCloseTo((0.005 / Math.sqrt(3)) * Math.hypot(195.3125, 175.78125), 9);
  });

  it('is not compared across currencies, nor measured energy with charge × nominal voltage', () => {
    expect(cost(gave(100), gave(100, { plate: { currency: 'CHF' } }))).toMatchObject({
      tells: 'otherCurrency',
      difference: null,
    });
    expect(cost(gave(100), gave(100, { run: { energyWh: 2500 } }))).toMatchObject({
      tells: 'otherBasis',
      difference: null,
    });
  });
});

describe('a record compared with itself', () => {
  it('shows no difference in charge and cost, and no claim that changed', () => {
    const pack = gave(100);
    expect(figureChanges(pack, pack).map(({ what, tells }) => [what, tells])).toEqual([
      ['chargeAh', 'noDifference'],
      ['costPerKwh', 'noDifference'],
    ]);
    expect(claimChanges(pack.nameplate, pack.nameplate)).toEqual([]);
  });
});

describe('nameplates', () => {
  // 640 ÷ 2.56 kWh = 250; 500 ÷ (120 Ah × 25.6 V = 3.072 kWh) = 162.76.
  it('differ in capacity, mass, price and the 250 and 162.76 that a promised kWh comes to, not in serial or day', () => {
    const was: Nameplate = { ratedCapacityAh: 100, nominalVoltageV: 25.6, massKg: 19.8, price: 640, currency: 'EUR', serial: 'A1', pricedOn: '2026-01-02' }; // biome-ignore format: one line
    const now: Nameplate = { ratedCapacityAh: 120, nominalVoltageV: 25.6, massKg: 20.4, price: 500, currency: 'EUR', serial: 'B7', seller: 'Shop' }; // biome-ignore format: one line
    expect(claimChanges(was, now)).toEqual([
      { field: 'ratedCapacityAh', was: 100, now: 120 },
      { field: 'massKg', was: 19.8, now: 20.4 },
      { field: 'price', was: 640, now: 500 },
      { field: 'pricePerPromisedKwh', was: 250, now: expect.closeTo(162.7604167, 6) },
    ]);
  });

  it('left empty is not zero: a peak current no longer stated is null, and back again', () => {
    expect(claimChanges({ peakCurrentA: 200 }, {})).toEqual([{ field: 'peakCurrentA', was: 200, now: null }]);
    expect(claimChanges({}, { peakCurrentA: 200 })).toEqual([{ field: 'peakCurrentA', was: null, now: 200 }]);
  });

  it('not weighed, measured, priced or read off yet is no change, whichever of the two it is', () => {
    const full: Nameplate = {
      massKg: 20,
      lengthMm: 300,
      price: 500,
      currency: 'EUR',
      ratedEnergyWh: 2560,
      revision: 'B',
    };
    const bare: Nameplate = { currency: 'EUR', ratedEnergyWh: 2560 };
    expect([...claimChanges(full, bare), ...claimChanges(bare, full)]).toEqual([]);
  });

  it('the same figure in another currency is another price', () => {
    const changes = claimChanges({ price: 500, currency: 'EUR' }, { price: 500, currency: 'CHF' });
    expect(changes).toEqual([{ field: 'price', was: 500, now: 500 }]);
  });
});

describe('what of a nameplate is taken over when a product is tested again', () => {
  it('22 claims, the name and the currency; nothing of the one sample or purchase', () => {
    expect(Object.values(NAMEPLATE_BELONGS).filter(({ taken }) => taken)).toHaveLength(24);
    const left = Object.entries(NAMEPLATE_BELONGS).flatMap(([field, { taken }]) => (taken ? [] : [field]));
    expect(left).toEqual([
      'sample',
      'serial',
      'revision',
      'madeOn',
      'massKg',
      'lengthMm',
      'widthMm',
      'heightMm',
      'price',
      'pricedOn',
      'seller',
      'receivedOn',
      'obtained',
      'obtainedFrom',
      'paysCommission',
      'note',
    ]);
    expect(Object.values(NAMEPLATE_BELONGS).every(({ because }) => because.length > 10)).toBe(true);
  });
});
