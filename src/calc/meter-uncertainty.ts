import { combinedUncertainty } from './combined-uncertainty.ts';
import { requirePositive } from './rated-energy.ts';
import { rectangularUncertainty } from './rectangular-uncertainty.ts';
import { requireNotNegative } from './require-not-negative.ts';

/** A meter's stated accuracy: ± (readingFrac · reading + absolute), the second in the reading's unit. */
export interface MeterAccuracy {
  readingFrac: number;
  absolute: number;
}

/** Coverage factor at which uncertainties are shown, about 95 %; our choice from the 2 to 3 of GUM 6.3.3 (from memory). */
export const SHOWN_COVERAGE_FACTOR = 2;

const S_PER_H = 3600;

export interface MeteredCharge {
  chargeAh: number;
  durationS: number;
  current: MeterAccuracy;
}

/**
 * Standard uncertainty of a run's charge from the current meter's stated accuracy.
 *
 * The meter's error is one unknown error all through the run (fully correlated), so neither many samples nor several
 * runs with the same meter make it smaller. Time is taken as exact.
 *
 * Units   Ah, s, A in; Ah out, k = 1.
 * Throws  RangeError if charge or duration is not positive, or an accuracy negative.
 * Source  JCGM 100:2008 (GUM) 4.3.7 (number from memory): half-width of the integral, readingFrac·Q + absolute·t, ÷ √3
 * Check   tests/calc/meter-uncertainty.test.ts
 */
export function chargeUncertaintyAh({ chargeAh, durationS, current }: MeteredCharge): number {
  requirePositive('chargeUncertaintyAh: chargeAh', chargeAh);
  requirePositive('chargeUncertaintyAh: durationS', durationS);
  requireAccuracy('chargeUncertaintyAh: current', current);
  return rectangularUncertainty(current.readingFrac * chargeAh + (current.absolute * durationS) / S_PER_H);
}

export interface MeteredEnergy extends MeteredCharge {
  energyWh: number;
  /** Mean over time. */
  meanVoltageV: number;
  voltage: MeterAccuracy;
}

/**
 * Standard uncertainty of a run's energy from the stated accuracy of the current and the voltage meter.
 *
 * Each meter's error is fully correlated over the run; the two are independent of one another. Time is exact.
 *
 * Units   Wh, Ah, s, V, A in; Wh out, k = 1.
 * Error   first order: the product of both errors is left out.
 * Throws  RangeError if a figure is not positive, or an accuracy negative.
 * Source  JCGM 100:2008 (GUM) 4.3.7, 5.1.2 (numbers from memory); half-widths of ∫v·i: current readingFrac·E + absolute·V̄·t,
 *         voltage readingFrac·E + absolute·Q
 * Check   tests/calc/meter-uncertainty.test.ts
 */
export function energyUncertaintyWh(metered: MeteredEnergy): number {
  const { energyWh, chargeAh, durationS, meanVoltageV, current, voltage } = metered;
  requirePositive('energyUncertaintyWh: energyWh', energyWh);
  requirePositive('energyUncertaintyWh: chargeAh', chargeAh);
  requirePositive('energyUncertaintyWh: durationS', durationS);
  requirePositive('energyUncertaintyWh: meanVoltageV', meanVoltageV);
  requireAccuracy('energyUncertaintyWh: current', current);
  requireAccuracy('energyUncertaintyWh: voltage', voltage);
  const byCurrentWh = current.readingFrac * energyWh + (current.absolute * meanVoltageV * durationS) / S_PER_H;
  const byVoltageWh = voltage.readingFrac * energyWh + voltage.absolute * chargeAh;
  return combinedUncertainty([
    { sensitivity: 1, uncertainty: rectangularUncertainty(byCurrentWh) },
    { sensitivity: 1, uncertainty: rectangularUncertainty(byVoltageWh) },
  ]);
}

/**
 * Standard uncertainty of the cost of a delivered kilowatt-hour. The price is exact, so cost and energy are uncertain
 * by the same share. Where the cost rests on nominal voltage, the energy is charge × that voltage, taken as exact.
 *
 * Units   a currency per kWh, Wh in; that currency per kWh out, k = 1.
 * Error   first order.
 * Throws  RangeError if the energy is not positive, or the cost or its uncertainty negative.
 * Source  JCGM 100:2008 (GUM) 5.1.2 (number from memory) with |∂c/∂E| = c/E
 * Check   tests/calc/meter-uncertainty.test.ts
 */
export function costUncertaintyPerKwh(given: {
  costPerKwh: number;
  energyWh: number;
  energyUncertaintyWh: number;
}): number {
  requireNotNegative('costUncertaintyPerKwh: costPerKwh', given.costPerKwh);
  requirePositive('costUncertaintyPerKwh: energyWh', given.energyWh);
  requireNotNegative('costUncertaintyPerKwh: energyUncertaintyWh', given.energyUncertaintyWh);
  return (given.costPerKwh * given.energyUncertaintyWh) / given.energyWh;
}

function requireAccuracy(name: string, { readingFrac, absolute }: MeterAccuracy): void {
  requireNotNegative(`${name}.readingFrac`, readingFrac);
  requireNotNegative(`${name}.absolute`, absolute);
}
