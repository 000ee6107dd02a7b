import { parallelSharing } from '../../calc/parallel-sharing.ts';
import type { Tested } from '../judged.ts';
import type { ParallelResult } from './results.ts';

/** How packs or strings side by side shared each run. */
export function parallelResults({ tests }: Tested): ParallelResult[] {
  return tests.parallelRuns.map((run) => ({ run, sharing: sharingOf(run) }));
}

/** Shares of a whole of which a part is not known cannot be told. */
function sharingOf({ shares }: ParallelResult['run']): ParallelResult['sharing'] {
  const given = shares.flatMap(({ number, chargeAh }) => (chargeAh === undefined ? [] : [{ number, chargeAh }]));
  const nothingCame = given.every(({ chargeAh }) => chargeAh === 0);
  if (given.length < 2 || given.length < shares.length || nothingCame) return null;
  const { shares: fractions, worstDivergenceFrac } = parallelSharing(given);
  return {
    shares: given.flatMap(({ number }, index) => {
      const shareFrac = fractions[index];
      return shareFrac === undefined ? [] : [{ number, shareFrac }];
    }),
    worstDivergenceFrac,
  };
}
