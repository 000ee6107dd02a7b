import { awgAreaMm2 } from './awg-area.ts';
import { requirePositive } from './rated-energy.ts';
import { requireNotNegative } from './require-not-negative.ts';

export type ConductorFromPhoto =
  | { ok: true; areaMm2: number; leastMm2: number; mostMm2: number; by: 'printed' | 'bareStrands' }
  | { ok: false; because: 'overInsulation' };

/**
 * Share of the outline of a bare strand bundle that is metal. Our choice, because round bundles of 7, 19 and 37 equal
 * strands fill 7/9, 19/25 and 37/49 of it (0.78, 0.76, 0.755), and many fine strands laid loosely somewhat less.
 */
const STRAND_FILL = { share: 0.75, plusOrMinus: 0.05 } as const;

/** How the conductor was seen: its size printed on it (mm² or gauge), its bare strands, or only its insulation. */
export type SeenConductor =
  | { way: 'printed'; printedMm2: number }
  | { way: 'printed'; gauge: number }
  | { way: 'bareStrands'; diameterMm: number; diameterUncertaintyMm?: number }
  | { way: 'overInsulation'; diameterMm?: number };

/**
 * Metal area of a conductor from what a photo shows of it.
 *
 * Shape   the printed size as it is; else the outer diameter of the bare strands, π/4 · d² · (0.75 ± 0.05). A diameter
 *         over the insulation is refused: its thickness is anyone's guess, and so would be the current. Take `leastMm2`
 *         for an allowable current.
 * Units   mm in (gauge 1/0 is 0, 4/0 is −3); mm² out.
 * Error   half-widths of fill and diameter, relative, summed as squares.
 * Throws  RangeError if a size is not positive or the diameter's uncertainty negative.
 * Source  definition; fill of strand bundles: geometry of concentric layers
 * Check   tests/calc/conductor-from-photo.test.ts
 */
export function conductorFromPhoto(seen: SeenConductor): ConductorFromPhoto {
  if (seen.way === 'overInsulation') return { ok: false, because: 'overInsulation' };
  if (seen.way === 'printed') {
    const areaMm2 = 'gauge' in seen ? awgAreaMm2(seen.gauge) : seen.printedMm2;
    requirePositive('conductorFromPhoto: printedMm2', areaMm2);
    return { ok: true, areaMm2, leastMm2: areaMm2, mostMm2: areaMm2, by: 'printed' };
  }
  const { diameterMm, diameterUncertaintyMm = 0 } = seen;
  requirePositive('conductorFromPhoto: diameterMm', diameterMm);
  requireNotNegative('conductorFromPhoto: diameterUncertaintyMm', diameterUncertaintyMm);
  const areaMm2 = (Math.PI / 4) * diameterMm ** 2 * STRAND_FILL.share;
  const offFrac = Math.hypot(STRAND_FILL.plusOrMinus / STRAND_FILL.share, (2 * diameterUncertaintyMm) / diameterMm);
  return {
    ok: true,
    areaMm2,
    leastMm2: Math.max(0, areaMm2 * (1 - offFrac)),
    mostMm2: areaMm2 * (1 + offFrac),
    by: 'bareStrands',
  };
}
