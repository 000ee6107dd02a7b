import { requirePositive } from './rated-energy.ts';

/** mm² in one circular mil, the area of a circle 0.001 in across: π/4 · 0.0254², exact by definition. */
const MM2_PER_CIRCULAR_MIL = (Math.PI / 4) * 0.0254 ** 2;
/** Melting point of copper as the equation has it. */
const COPPER_MELTS_DEG_C = 1083;
/** Beyond this heat escapes and copper may never melt. Source: the published derivation says about 10 s. */
export const MELTING_TIME_HOLDS_TO_S = 10;

/**
 * Time a copper conductor takes to melt: the upper bound on what a lead can stand, whatever it is covered with.
 *
 * Units   mm², A, °C in; s out.
 * Error   no heat lost; holds to about 10 s, and is no promise that the lead lasts so long.
 * Throws  RangeError if area or current is not positive or the start is not from −40 °C to below melting.
 * Source  I. M. Onderdonk: t = A² · log₁₀(1 + (1083 − Ta) / (234 + Ta)) / (33 I²), A in circular mils
 * Check   tests/calc/melting-time.test.ts
 */
export function meltingTimeS({ areaMm2, currentA, startDegC }: MeltingLead): number {
  requirePositive('meltingTimeS: areaMm2', areaMm2);
  requirePositive('meltingTimeS: currentA', currentA);
  if (!(startDegC >= -40 && startDegC < COPPER_MELTS_DEG_C)) {
    throw new RangeError(`meltingTimeS: startDegC must be −40 to under ${COPPER_MELTS_DEG_C}, got ${startDegC}`);
  }
  const circularMils = areaMm2 / MM2_PER_CIRCULAR_MIL;
  const spanLog = Math.log10(1 + (COPPER_MELTS_DEG_C - startDegC) / (234 + startDegC));
  return (circularMils ** 2 * spanLog) / (33 * currentA ** 2);
}

export interface MeltingLead {
  areaMm2: number;
  currentA: number;
  startDegC: number;
}
