import { promisedEnergy } from '../../calc/promised-energy.ts';
import { capacityResult } from '../../grading/live-tests/capacity-result.ts';
import { cutOffResults } from '../../grading/live-tests/cut-off-results.ts';
import { overcurrentResult } from '../../grading/live-tests/overcurrent-result.ts';
import type { CutOffTrial } from '../../grading/live-tests/results.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import { formatValue } from '../../text/format-unit.ts';
import { letterWords as say } from '../../text/letter.ts';
import { cutOffWords } from '../../text/live-tests/results/cut-off.ts';
import { duration, figureIn } from '../../text/live-tests/results/figures.ts';
import { overcurrentWords } from '../../text/live-tests/results/over-current.ts';
import { deliveredFigure } from './live-tests/delivered-blocks.ts';

type Tested = Pick<PackRecord, 'nameplate' | 'tests'>;

/** What the live tests read, a sentence for each matter; what was not tried is said, never left out. */
export function letterReadings(record: Tested): string[] {
  const { runs, trips, cutOffs } = record.tests;
  return [
    runs.length === 0 ? say.notDelivered : workedOut(say.matters.delivered, () => deliveredLine(record)),
    trips.length === 0 ? say.noOvercurrent : workedOut(say.matters.overcurrent, () => overcurrentLine(record)),
    cutOffs.length === 0 ? say.noCutOffs : workedOut(say.matters.cutOffs, () => cutOffLine(record)),
  ];
}

/** A figure so far out that a calculation refuses it: it was tried all the same. */
function workedOut(matter: string, line: () => string): string {
  try {
    return line();
  } catch (error) {
    if (error instanceof RangeError) return say.notWorkedOut(matter);
    throw error;
  }
}

function deliveredLine(record: Tested): string {
  const delivered = deliveredFigure(capacityResult(record).delivered);
  if (delivered === null) return say.noFigure;
  const { ratedCapacityAh } = record.nameplate;
  const energy = promisedEnergy(record.nameplate);
  const promised = [
    ...(ratedCapacityAh === undefined ? [] : [formatValue(ratedCapacityAh, 'Ah')]),
    ...(energy === null ? [] : [formatValue(energy.energyWh, 'Wh')]),
  ];
  return say.delivered(delivered, promised.length === 0 ? null : promised.join(' · '));
}

function overcurrentLine(record: Tested): string {
  const { behaviour } = overcurrentResult(record);
  const { verdict, kinds, slowestS, slowestAtA, heatAtA, heatAfterS, highestHeldA, highestHeldForS } = behaviour;
  const at = (currentA: number | null, timeS: number | null) =>
    currentA === null || timeS === null
      ? null
      : overcurrentWords.after(figureIn(currentA, 'A'), timeS === 0 ? overcurrentWords.atOnce : duration(timeS));
  if (verdict === 'tripped') {
    const said = overcurrentWords.kindsJoined(kinds.map((kind) => overcurrentWords.kinds[kind]));
    return say.overcurrent(overcurrentWords.verdicts.tripped(said), at(slowestAtA, slowestS));
  }
  const detail = verdict === 'heatOnly' ? at(heatAtA, heatAfterS) : heldWords(highestHeldA, highestHeldForS);
  return say.overcurrent(overcurrentWords.verdicts[verdict], detail);
}

function heldWords(currentA: number | null, timeS: number | null): string | null {
  return currentA === null || timeS === null
    ? null
    : overcurrentWords.heldFor(figureIn(currentA, 'A'), duration(timeS));
}

function cutOffLine(record: Tested): string {
  const trials = cutOffResults(record).flatMap((result) => result.trials);
  return say.cutOffsTried(trials.map((trial) => say.trial(cutOffWords.kinds[trial.cutOff.kind], outcomeWords(trial))));
}

function outcomeWords({ cutOff, verdict }: CutOffTrial): string {
  if (verdict !== null) return cutOffWords.verdicts[verdict];
  return cutOff.acted ? cutOffWords.actedUnheld : cutOffWords.notActedUnheld;
}
