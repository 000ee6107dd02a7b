import { expect, it } from 'vitest';
import { nameplateChecks } from '../../src/calc/nameplate-checks.ts';
import { nameplateCheckSentence } from '../../src/text/nameplate-checks.ts';

const said = (figures: Parameters<typeof nameplateChecks>[0], units: 'metric' | 'imperial' = 'metric') =>
  nameplateChecks(figures).map((check) => nameplateCheckSentence(check, units).replaceAll('\u00a0', ' '));

it('says both energies and the 9 % between them', () => {
  expect(said({ nominalVoltageV: 12.8, ratedCapacityAh: 100, ratedEnergyWh: 1400 })).toEqual([
    'The label says 1400 Wh, 9 % more than its own Ah × V, 1280 Wh.',
  ]);
});

it('says that the pack figures have no source', () => {
  expect(said({ ratedEnergyWh: 2560, massKg: 20 })).toEqual([
    '128 Wh/kg at the mass found is high for a pack; 90 to 120 Wh/kg is typical (common practice, no source).',
  ]);
});

it('says 14 °F for a charge limit of −10 °C to one who reads imperial', () => {
  expect(said({ chargeLowestDegC: -10 }, 'imperial')[0]).toContain(
    'charging at 14 °F; cell data sheets allow it from 32 °F',
  );
});

it('has a sentence, with its figures and no placeholder, for every remark a nameplate can draw', () => {
  const sentences = said({
    nominalVoltageV: 24,
    ratedCapacityAh: 100,
    ratedEnergyWh: 2560,
    cellsInSeries: 8,
    continuousCurrentA: 150,
    peakCurrentA: 120,
    chargeVoltageV: 30,
    cutOffVoltageV: 16,
    chargeLowestDegC: -10,
    chargeHighestDegC: -20,
    dischargeLowestDegC: 60,
    dischargeHighestDegC: -20,
    claimedMassKg: 20,
    massKg: 15,
    lengthMm: 200,
    widthMm: 170,
    heightMm: 200,
  });
  expect(sentences).toHaveLength(12);
  for (const sentence of sentences) expect(sentence).toMatch(/^(?!.*(undefined|NaN)).*\d.*[.?]$/);
});
