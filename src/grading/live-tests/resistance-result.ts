import type { DcResistance } from '../../calc/dc-resistance.ts';
import { dcResistancePulseMohm } from '../../calc/dc-resistance-pulse.ts';
import { dcResistanceTwoStepMohm } from '../../calc/dc-resistance-two-step.ts';
import type { Nameplate } from '../../schema/nameplate.ts';
import type { Tested } from '../judged.ts';
import type { ResistanceResult } from './results.ts';

type TestedResistance = Tested['tests']['resistances'][number];

/** DC resistance of the pack or a cell, test by test, or why it was refused. */
export function resistanceResults({ tests, nameplate }: Tested): ResistanceResult[] {
  return tests.resistances.map((test) => ({ test, outcome: outcomeOf(test, nameplate) }));
}

/** A pulse without its time is no figure: after 10 s it is easily half as much again as after 1 s. */
function outcomeOf(test: TestedResistance, nameplate: Nameplate): DcResistance | null {
  const { firstA, firstV, secondA, secondV, afterS } = test;
  const cellsInSeries = test.of === 'cell' ? 1 : nameplate.cellsInSeries;
  if (firstA === undefined || firstV === undefined || secondA === undefined || secondV === undefined) return null;
  if (cellsInSeries === undefined) return null;
  const readings = { firstA, firstV, secondA, secondV, cellsInSeries };
  if (test.method === 'twoStep') {
    return dcResistanceTwoStepMohm(afterS === undefined ? readings : { ...readings, timeS: afterS });
  }
  return afterS === undefined || afterS === 0 ? null : dcResistancePulseMohm({ ...readings, timeS: afterS });
}
