import { riseAtRatedK } from '../../calc/joint-rise.ts';
import type { Joint } from '../../schema/live-tests/joint.ts';
import type { Derivation } from './derivation.ts';
import { atLeast, exactly, type Reading } from './figure.ts';

/** Our choice: by then posts of such packs have come near what they come to; the checklist asks for it. */
const SETTLED_AFTER_MIN = 30;
/** Our choice: brought over from less, an error of one kelvin would be one of sixteen and more. */
const LEAST_SHARE_OF_RATED = 0.25;

/**
 * How much warmer than around it the worst terminal is, brought to the continuous claim by the square of the current.
 * Read before it had settled, or at too little current to bring over, it is at least so warm; such a reading counts for
 * no more than that beside one that tells.
 */
export const terminalRise: Derivation = ({ tests, nameplate }) => {
  const ratedA = nameplate.continuousCurrentA;
  if (ratedA === undefined) return null;
  const rises = tests.joints.flatMap((joint) => riseOf(joint, ratedA) ?? []);
  if (rises.length === 0) return null;
  const oneTells = rises.some(({ tells }) => tells);
  const readings = rises.map(
    ({ riseK }): Reading => ({ case: 'any', figure: oneTells ? exactly(riseK) : atLeast(riseK) }),
  );
  return { alternatives: [readings] };
};

function riseOf(joint: Joint, ratedA: number): { riseK: number; tells: boolean } | null {
  const { place, currentA, jointDegC, aroundDegC, afterMin } = joint;
  if (place !== 'terminal' || currentA === undefined || jointDegC === undefined || aroundDegC === undefined)
    return null;
  // A post that is cooler than the air has no rise of its own.
  const riseK = Math.max(0, jointDegC - aroundDegC);
  if (currentA < LEAST_SHARE_OF_RATED * ratedA) return { riseK, tells: false };
  const tells = afterMin !== undefined && afterMin >= SETTLED_AFTER_MIN;
  return { riseK: riseAtRatedK({ riseK, currentA, ratedA }), tells };
}
