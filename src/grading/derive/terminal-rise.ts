import { riseAtRatedK } from '../../calc/joint-rise.ts';
import type { Derivation } from './derivation.ts';
import { exactly, type Reading } from './figure.ts';

/** How much warmer than around it the worst terminal is, brought to the continuous claim by the square of the current. */
export const terminalRise: Derivation = ({ tests, nameplate }) => {
  const ratedA = nameplate.continuousCurrentA;
  if (ratedA === undefined) return null;
  const readings = tests.joints.flatMap(({ place, currentA, jointDegC, aroundDegC }): Reading[] => {
    if (place !== 'terminal' || currentA === undefined || jointDegC === undefined || aroundDegC === undefined)
      return [];
    // A post that is cooler than the air has no rise of its own.
    const riseK = Math.max(0, jointDegC - aroundDegC);
    return [{ case: 'any', figure: exactly(riseAtRatedK({ riseK, currentA, ratedA })) }];
  });
  return readings.length === 0 ? null : { alternatives: [readings] };
};
