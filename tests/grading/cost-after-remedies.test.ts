import { expect, it } from 'vitest';
import { costAfterRemedies } from '../../src/grading/cost-after-remedies.ts';
import type { ItemResult, RemedyResult } from '../../src/grading/grading.ts';
import type { RemedyNote } from '../../src/schema/remedy-note.ts';
import { packOf, test } from './live-tests/tested-pack.ts';

// Definition, by hand: (price + remedies) ÷ kWh delivered.
const definition = {
  remedies: (['outside', 'workshop'] as const).map((reach) => ({
    id: reach,
    text: 'Do it.',
    reach,
    settles: [{ item: reach, leaves: 'sound' as const }],
  })),
};
const none = { low: 0, high: 0 };
const grading = {
  remedies: definition.remedies.map(
    ({ id, reach }): RemedyResult => ({
      remedyId: id,
      reach,
      itemIds: [],
      gain: none,
      buildGain: none,
      hazardGains: [],
      cumulative: none,
      clearsHazardIds: [],
    }),
  ),
  items: definition.remedies.map(
    ({ id }): ItemResult => ({
      itemId: id,
      zoneId: 'case',
      asked: true,
      possible: ['failed'],
      settled: true,
      grade: 'failed',
      evidence: 'seen',
      because: 'answered',
      loweredByTold: false,
      unlooked: false,
      measured: null,
    }),
  ),
};
const run = (figures: object) =>
  test('run', 1, { chargedToV: 14.4, taperA: 2, restMin: 120, end: 'lowVoltage', currentA: 20, ...figures });

function costs(remedyNotes: Record<string, RemedyNote>, figures: object = { chargeAh: 100, energyWh: 1250 }) {
  const plate = { ratedCapacityAh: 100, nominalVoltageV: 12.5, chargeVoltageV: 14.4, price: 500, currency: 'EUR' };
  return costAfterRemedies({ ...packOf(plate, run(figures)), remedyNotes }, definition, grading);
}

it('is 400 per kWh as found, 450 with 62.50 outside and 500 with another 62.50 in the workshop, over 1.25 kWh', () => {
  const { asFound, outside, all } = costs({ outside: { price: 62.5 }, workshop: { price: 62.5 } });
  expect([asFound?.perKwh, outside.perKwh, all.perKwh]).toEqual([400, 450, 500]);
});

it('rests on 100 Ah × 12.5 V = 1.25 kWh where no energy was measured: 450 all the same', () => {
  expect(costs({ outside: { price: 62.5 } }, { chargeAh: 100 }).outside.perKwh).toBe(450);
});

it('stays 450 after all where the workshop remedy has no price, and names it', () => {
  expect(costs({ outside: { price: 62.5 } }).all).toEqual({
    price: 62.5,
    currency: 'EUR',
    unpricedIds: ['workshop'],
    otherCurrencyIds: [],
    unsureIds: [],
    perKwh: 450,
  });
});

it('is null where no remedy has a price, and where no complete run tells the energy', () => {
  expect(costs({}).all.perKwh).toBeNull();
  const unknown = costs({ outside: { price: 62.5 } }, { chargeAh: 100, end: 'packDisconnect' });
  expect([unknown.asFound, unknown.outside.perKwh, unknown.outside.price]).toEqual([null, null, 62.5]);
});
