import type { FaultCurrent } from '../../calc/fault-current.ts';
import { faultCurrentA } from '../../calc/fault-current.ts';
import { meanOf } from '../../calc/mean-of.ts';
import type { Tested } from '../judged.ts';
import { resistanceResults } from './resistance-result.ts';

/**
 * Current into a dead short. From cell AC resistances an upper estimate, for which the strings in parallel must be
 * known: more of them give more. Else from DC resistances of cells, or of the whole pack, a lower one.
 */
export function faultResult(tested: Tested): FaultCurrent | null {
  const { cellsInSeries, stringsInParallel } = tested.nameplate;
  if (cellsInSeries === undefined) return null;
  const cellAcMohm = cellSetsMohm(tested, 'ac');
  if (cellAcMohm !== null && stringsInParallel !== undefined) {
    return faultCurrentA({ cellsInSeries, cellsInParallel: stringsInParallel, cellAcMohm });
  }
  const cellDcMohm = dcOf(tested, 'cell') ?? cellSetsMohm(tested, 'dc');
  // One string, where their number is not known, keeps a lower estimate a lower one.
  if (cellDcMohm !== null) return faultCurrentA({ cellsInSeries, cellsInParallel: stringsInParallel ?? 1, cellDcMohm });
  const packMohm = dcOf(tested, 'pack');
  return packMohm === null ? null : faultCurrentA({ cellsInSeries, cellDcMohm: packMohm / cellsInSeries });
}

/** Mean of the round that read the most cells; of two equal ones the later. */
function cellSetsMohm({ tests }: Tested, by: 'ac' | 'dc'): number | null {
  const rounds = tests.cellSets
    .filter(({ resistanceBy }) => resistanceBy === by)
    .map(({ cells }) => cells.flatMap(({ resistanceMohm }) => resistanceMohm ?? []));
  const most = Math.max(0, ...rounds.map(({ length }) => length));
  const fullest = rounds.findLast(({ length }) => length === most);
  return fullest === undefined || most === 0 ? null : meanOf(fullest);
}

function dcOf(tested: Tested, of: 'cell' | 'pack'): number | null {
  const found = resistanceResults(tested).flatMap(({ test, outcome }) =>
    test.of === of && outcome?.ok ? [outcome.resistanceMohm] : [],
  );
  return found.length === 0 ? null : meanOf(found);
}
