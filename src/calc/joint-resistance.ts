import { requirePositive } from './rated-energy.ts';
import { requireNotNegative } from './require-not-negative.ts';

/**
 * Resistance of a joint from the voltage across it under load.
 *
 * Units   mV, A in; µΩ out.
 * Throws  RangeError if the current is not positive or the drop is negative or not finite.
 * Source  Ohm's law: 1 mV / 1 A = 1000 µΩ
 * Check   tests/calc/joint-resistance.test.ts
 */
export function jointResistanceMicroohm({ dropMv, currentA }: { dropMv: number; currentA: number }): number {
  requirePositive('jointResistanceMicroohm: currentA', currentA);
  requireNotNegative('jointResistanceMicroohm: dropMv', dropMv);
  return (dropMv * 1000) / currentA;
}
