import type { FaultCurrent } from '../../calc/fault-current.ts';
import { faultCurrentA } from '../../calc/fault-current.ts';
import { meanOf } from '../../calc/mean-of.ts';
import type { Tested } from '../judged.ts';
import { resistanceResults } from './resistance-result.ts';

/**
 * Current into a dead short. From the AC resistances of all cells an upper estimate, for which the strings in parallel
 * must be known: more of them give more. Else from DC resistances of cells, or of the whole pack, a lower one.
 */
export function faultResult(tested: Tested): FaultCurrent | null {
  const { cellsInSeries, stringsInParallel } = tested.nameplate;
  if (cellsInSeries === undefined) return null;
  const cellAcMohm = wholeAcRoundMohm(tested);
  if (cellAcMohm !== null && stringsInParallel !== undefined) {
    return faultCurrentA({ cellsInSeries, cellsInParallel: stringsInParallel, cellAcMohm });
  }
  const cellDcMohm = dcOf(tested, 'cell') ?? dcRoundMohm(tested);
  // One string, where their number is not known, keeps a lower estimate a lower one.
  if (cellDcMohm !== null) return faultCurrentA({ cellsInSeries, cellsInParallel: stringsInParallel ?? 1, cellDcMohm });
  const packMohm = dcOf(tested, 'pack');
  return packMohm === null ? null : faultCurrentA({ cellsInSeries, cellDcMohm: packMohm / cellsInSeries });
}

/** Mean of the whole round that gives the most current. A cell that was not read may resist less than all that were. */
function wholeAcRoundMohm(tested: Tested): number | null {
  const whole = roundsMohm(tested, 'ac').filter(({ length }) => length === tested.nameplate.cellsInSeries);
  return whole.length === 0 ? null : Math.min(...whole.map(meanOf));
}

/** Mean of the round that read the most cells; of equal ones that with the least current. */
function dcRoundMohm(tested: Tested): number | null {
  const rounds = roundsMohm(tested, 'dc').filter(({ length }) => length > 0);
  if (rounds.length === 0) return null;
  const most = Math.max(...rounds.map(({ length }) => length));
  return Math.max(...rounds.filter(({ length }) => length === most).map(meanOf));
}

function roundsMohm({ tests }: Tested, by: 'ac' | 'dc'): number[][] {
  return tests.cellSets
    .filter(({ resistanceBy }) => resistanceBy === by)
    .map(({ cells }) => cells.flatMap(({ resistanceMohm }) => resistanceMohm ?? []));
}

function dcOf(tested: Tested, of: 'cell' | 'pack'): number | null {
  const found = resistanceResults(tested).flatMap(({ test, outcome }) =>
    test.of === of && outcome?.ok ? [outcome.resistanceMohm] : [],
  );
  return found.length === 0 ? null : meanOf(found);
}
