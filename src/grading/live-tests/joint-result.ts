import { jointResistanceMicroohm } from '../../calc/joint-resistance.ts';
import { riseAtRatedK } from '../../calc/joint-rise.ts';
import type { Tested } from '../judged.ts';
import type { JointResult } from './results.ts';

/** How much warmer than its surroundings each joint was, and would be at the continuous claim; its resistance. */
export function jointResults({ tests, nameplate }: Tested): JointResult[] {
  const ratedA = nameplate.continuousCurrentA ?? null;
  return tests.joints.map((joint) => {
    const { jointDegC, aroundDegC, currentA, dropMv } = joint;
    const riseK = jointDegC === undefined || aroundDegC === undefined ? null : jointDegC - aroundDegC;
    // A joint colder than around it was not warmed by the current: nothing to carry over to another.
    const canScale = riseK !== null && riseK >= 0 && currentA !== undefined && ratedA !== null;
    return {
      joint,
      riseK,
      ratedA,
      riseAtRatedK: canScale ? riseAtRatedK({ riseK, currentA, ratedA }) : null,
      resistanceMicroohm:
        dropMv === undefined || currentA === undefined ? null : jointResistanceMicroohm({ dropMv, currentA }),
    };
  });
}
