import { standbyDrain } from '../../calc/standby-drain.ts';
import type { Tested } from '../judged.ts';
import type { DrainResult } from './results.ts';

/** What a day takes does not hang on it. */
const ANY_CAPACITY_AH = 1;

/** What standby takes in a day, and how many it leaves a full pack of the promised capacity. */
export function drainResults({ tests, nameplate }: Tested): DrainResult[] {
  const capacityAh = nameplate.ratedCapacityAh ?? null;
  return tests.drains.map((drain) => {
    const { drainAhPerDay, daysToFlat } = standbyDrain({
      currentMa: drain.currentMa,
      capacityAh: capacityAh ?? ANY_CAPACITY_AH,
    });
    return { drain, drainAhPerDay, daysToFlat: capacityAh === null ? null : daysToFlat, capacityAh };
  });
}
