import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cRatePerH } from '../../src/calc/c-rate.ts';
import { chargeFromSamplesAh } from '../../src/calc/charge-from-samples.ts';
import { combinedUncertainty } from '../../src/calc/combined-uncertainty.ts';
import { energyFromSamplesWh } from '../../src/calc/energy-from-samples.ts';
import { lagOneAutocorrelation } from '../../src/calc/lag-one-autocorrelation.ts';
import { peukertExponent } from '../../src/calc/peukert-exponent.ts';
import { ratedEnergyWh } from '../../src/calc/rated-energy.ts';
import { rectangularUncertainty } from '../../src/calc/rectangular-uncertainty.ts';
import { sampleDeviation } from '../../src/calc/sample-deviation.ts';
import { chargeShareFrac } from '../../src/calc/share-of-nameplate.ts';
import { specificEnergyWhPerKg } from '../../src/calc/specific-energy.ts';

/**
 * Check cases of runs, energy, Peukert's exponent, uncertainty and readings, by their ids. `published`: printed in the
 * source named; `recomputed`: worked out apart, and never the only check of its function.
 */
function dataset(name: string): { values: number[]; certified: Record<string, number> } {
  return JSON.parse(readFileSync(`tests/fixtures/nist-strd-${name}.json`, 'utf8'));
}

describe('capacity', () => {
  it('cap-const-20A-4h58m30s (recomputed, Q = I·t): 20 A for 17 910 s are 99.5 Ah', () => {
    expect(chargeFromSamplesAh({ timeS: [0, 17_910], currentA: [20, 20] })).toBeCloseTo(99.5, 12);
  });

  const timeS = [0, 1800, 3600, 5400, 7200, 9000, 9600];
  const currentA = [20, 20.1, 19.9, 20, 20, 19.8, 20.2];
  const voltageV = [13.4, 13.25, 13.2, 13.15, 13.08, 12.9, 10];

  it('cap-trapz-Ah and cap-trapz-Wh (recomputed): seven uneven rows are 53.2833 Ah and 695.7758 Wh', () => {
    expect(chargeFromSamplesAh({ timeS, currentA })).toBeCloseTo(53.28333333333333, 11);
    expect(energyFromSamplesWh({ timeS, voltageV, currentA })).toBeCloseTo(695.7758333333334, 10);
  });

  it('cap-soh (recomputed): 53.2833 of 60 Ah are 0.88806', () => {
    expect(chargeShareFrac({ chargeAh: 53.28333333333333, ratedCapacityAh: 60 })).toBeCloseTo(0.8880555555555555, 14);
  });

  // IEC 61434 / IEC 62620: 0.2 It of a 100 Ah battery is 20 A. Published C-rates of a 5 Ah cell: 2 h at 2.5 A, 1 h at 5 A.
  it.each([
    ['cap-ct-rate-0.2It', 20, 100, 0.2],
    ['cap-crate-5Ah-2.5A', 2.5, 5, 1 / 2],
    ['cap-crate-5Ah-5A', 5, 5, 1],
  ])('%s: %d A of %d Ah is a rate of %d per hour', (_, amperes, ratedCapacityAh, ratePerH) => {
    expect(cRatePerH({ currentA: amperes, ratedCapacityAh })).toBeCloseTo(ratePerH, 14);
  });
});

describe('energy', () => {
  it.each([
    ['nominal-16s', 16, 100, 5120],
    ['nominal-4s', 4, 280, 3584],
  ])('%s (recomputed, 3.2 V a cell): %d cells of %d Ah hold %d Wh', (_, cells, ratedCapacityAh, energyWh) => {
    expect(ratedEnergyWh({ ratedCapacityAh, nominalVoltageV: cells * 3.2 })).toBeCloseTo(energyWh, 9);
  });

  it('spec-energy (recomputed): 5120 Wh in 46 kg are 111.304 Wh/kg', () => {
    expect(specificEnergyWhPerKg({ energyWh: 5120, massKg: 46 })).toBeCloseTo(111.30434782608695, 11);
  });
});

describe('Peukert’s exponent, recovered from the hours that published examples give', () => {
  it.each([
    ['peukert-1 (published)', { currentA: 1, hours: 100 }, { currentA: 5, hours: 14.495593273553911 }, 1.2],
    ['peukert-2b, -2c (published)', { currentA: 1, hours: 250 }, { currentA: 20, hours: 5.088631644211304 }, 1.3],
    ['peukert-4 (published)', { currentA: 5, hours: 20 }, { currentA: 10, hours: 7.5 }, 1.415037499278843],
    ['peukert-H-100Ah-10A-k1.2', { currentA: 5, hours: 20 }, { currentA: 10, hours: 8.705505632961241 }, 1.2],
    ['peukert-H-100Ah-20A-k1.2', { currentA: 5, hours: 20 }, { currentA: 20, hours: 3.7892914162759954 }, 1.2],
    ['peukert-H-100Ah-100A-k1.02', { currentA: 5, hours: 20 }, { currentA: 100, hours: 0.9418449208830277 }, 1.02],
  ])('%s', (_, gentle, hard, exponent) => {
    const runs = [gentle, hard].map(({ currentA, hours }) => ({ currentA, chargeAh: currentA * hours }));
    expect(peukertExponent(runs)).toBeCloseTo(exponent, 10);
  });
});

// JCGM 100:2008 (GUM), H.1, end gauges: a half-width of 1e-6 per °C and of 0.05 °C over a gauge of 50 000 623 nm.
it('gum-h1-dalpha and gum-h1-dtheta (published): 2.887 and 16.599 nm', () => {
  const lengthNm = 50_000_623;
  const dAlpha = [{ sensitivity: lengthNm * 0.1, uncertainty: rectangularUncertainty(1e-6) }];
  const dTheta = [{ sensitivity: lengthNm * 1.15e-5, uncertainty: rectangularUncertainty(0.05) }];
  expect(combinedUncertainty(dAlpha)).toBeCloseTo(2.8867873148698995, 10);
  expect(combinedUncertainty(dTheta)).toBeCloseTo(16.599027060501925, 9);
});

it('micrometer-2 (published): a resolution of 0.001 is 0.001/√12 as a standard uncertainty', () => {
  expect(rectangularUncertainty(0.0005)).toBeCloseTo(0.0002886751345948129, 16);
});

describe('readings, against values that NIST certifies (Statistical Reference Datasets)', () => {
  it.each(['mavro', 'michelso'])('strd-%s-sd: the sample deviation to 12 digits', (name) => {
    const { values, certified } = dataset(name);
    expect(sampleDeviation(values) / (certified.standardDeviation ?? Number.NaN)).toBeCloseTo(1, 12);
  });

  it('strd-michelso-lag1: readings of the speed of light resemble the ones before by 0.535199668621283', () => {
    expect(lagOneAutocorrelation(dataset('michelso').values)).toBeCloseTo(0.535199668621283, 12);
  });

  it('refuses readings that are all alike, and fewer than two', () => {
    expect(() => lagOneAutocorrelation([3, 3, 3])).toThrow('readings must differ');
    expect(() => lagOneAutocorrelation([3])).toThrow(RangeError);
  });
});
