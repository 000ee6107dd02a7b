import { cutOffResults, isByPackVoltsOnly } from '../../../grading/live-tests/cut-off-results.ts';
import type { CutOffLimit, CutOffResult, CutOffTrial } from '../../../grading/live-tests/results.ts';
import type { CutOffKind } from '../../../schema/live-tests/cut-off.ts';
import { formatTemperature } from '../../../text/format-unit.ts';
import { cutOffWords as say } from '../../../text/live-tests/results/cut-off.ts';
import { duration, figureIn } from '../../../text/live-tests/results/figures.ts';
import type { CalculationSource } from '../../../text/live-tests/results/sources.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { UnitChoice } from '../../../units/unit-choice.ts';
import type { Block, ResultBlock, ResultRow } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';
import { closingRows, figureRow, row, testName, testTitle } from './test-rows.ts';
import { workedOut } from './worked-out.ts';
import { workingOf } from './working-of.ts';

/** The cut-offs that were tried, trial by trial, with what is left; and which of these kinds were not tried. */
export function cutOffBlocks(context: LiveContext, kinds?: readonly CutOffKind[]): Block[] {
  return workedOut(say.matter, () => {
    const results = cutOffResults(context).filter(({ kind }) => kinds?.includes(kind) ?? true);
    if (results.every(({ trials }) => trials.length === 0)) return [];
    const untried = results.filter(({ trials }) => trials.length === 0).map(({ kind }) => say.kinds[kind]);
    return [
      ...results.flatMap((result) =>
        result.trials.map((trial, place) => trialBlock(trial, result, { place, context })),
      ),
      ...(untried.length === 0
        ? []
        : [{ kind: 'paragraph', text: say.notTriedList(untried), tone: 'muted' } satisfies Block]),
    ];
  });
}

interface TrialPlace {
  place: number;
  context: LiveContext;
}

function trialBlock(trial: CutOffTrial, result: CutOffResult, { place, context }: TrialPlace): ResultBlock {
  const { cutOff, limit } = trial;
  const ofKind = result.trials.map((one) => one.cutOff);
  const name = say.kinds[result.kind];
  const isLast = place === result.trials.length - 1;
  return {
    kind: 'result',
    id: `cut-off-${cutOff.id}`,
    title: testTitle(ofKind.length > 1 ? testName(name, ofKind, cutOff.id) : name, cutOff),
    value: shownValue(trial, context.units),
    marks: marksOf(trial),
    rows: [
      ...readRows(trial, context.units),
      ...(limit === null ? [] : row(say.labels.limit, limitWords(limit, context.units), limitFrom(limit, result.kind))),
      ...howRows(trial),
      ...afterwardsRows(trial, context.units),
      ...(isLast
        ? row(say.labels.remains, testWords.sentenced(result.remains.map((remains) => say.remains[remains])))
        : []),
      ...closingRows(cutOff, context),
    ],
    working:
      limit === null
        ? null
        : workingOf({ formulas: [say.formula], inputs: [], sources: [sourceOf(limit, result.kind)] }),
  };
}

function shownValue({ cutOff, verdict }: CutOffTrial, units: UnitChoice): string {
  const what = verdict === null ? (cutOff.acted ? say.actedUnheld : say.notActedUnheld) : say.verdicts[verdict];
  return testWords.titled([what, decidingFigure(cutOff, units) ?? say.figureUnread]);
}

/** The figure that the kind is about. */
function decidingFigure(cutOff: CutOffTrial['cutOff'], units: UnitChoice): string | null {
  const { kind, worstCellVoltageV, packVoltageV, currentA, sensorDegC } = cutOff;
  switch (kind) {
    case 'highVoltage':
    case 'lowVoltage': {
      const voltageV = worstCellVoltageV ?? packVoltageV;
      return voltageV === undefined ? null : figureIn(voltageV, 'V');
    }
    case 'chargeCurrent':
      return currentA === undefined ? null : figureIn(currentA, 'A');
    default:
      return sensorDegC === undefined ? null : formatTemperature(sensorDegC, units);
  }
}

/** What must not be overlooked: a sensor that melted, a switch that stood in, an ice pack. */
function marksOf({ cutOff }: CutOffTrial): string[] {
  return [
    ...(cutOff.sensorAfter === 'melted' ? [say.sensorMelted] : []),
    ...(cutOff.by === 'thermalSwitch' ? [say.switchMark] : []),
    ...(cutOff.method === 'icePack' ? [say.icePackMark] : []),
    ...(isByPackVoltsOnly(cutOff) ? [say.packVoltsMark] : []),
  ];
}

function readRows({ cutOff }: CutOffTrial, units: UnitChoice): ResultRow[] {
  const volts = (voltageV: number) => figureIn(voltageV, 'V');
  return [
    ...figureRow(say.labels.cell, cutOff.worstCellVoltageV, { say: volts }),
    ...figureRow(say.labels.pack, cutOff.packVoltageV, { say: volts }),
    ...figureRow(say.labels.sensor, cutOff.sensorDegC, { say: (degC) => formatTemperature(degC, units) }),
    ...figureRow(say.labels.current, cutOff.currentA, { say: (a) => figureIn(a, 'A') }),
    ...figureRow(say.labels.after, cutOff.afterS, { say: duration }),
  ];
}

function limitWords(limit: CutOffLimit, units: UnitChoice): string {
  switch (limit.of) {
    case 'sensor':
      return say.limit(formatTemperature(limit.limitDegC, units), formatTemperature(limit.lateDegC, units));
    case 'current':
      return say.limit(figureIn(limit.limitA, 'A'), figureIn(limit.lateA, 'A'));
    default:
      return say.limit(figureIn(limit.limitV, 'V'), figureIn(limit.lateV, 'V'));
  }
}

function howRows({ cutOff }: CutOffTrial): ResultRow[] {
  const { by, method, switchFitted, sensorAfter } = cutOff;
  return [
    ...row(say.labels.by, by === undefined ? null : say.by[by]),
    ...row(say.labels.method, method === undefined ? null : say.methods[method]),
    ...row(say.labels.switchFitted, switchFitted === undefined ? null : switchFitted ? say.fitted : say.notFitted),
    ...row(say.labels.sensorAfter, sensorAfter === undefined ? null : say.sensorAfter[sensorAfter]),
  ];
}

function afterwardsRows({ cutOff }: CutOffTrial, units: UnitChoice): ResultRow[] {
  const { recovery, recoveredAtV, recoveredAtDegC, wakeUp } = cutOff;
  const where = [
    ...(recoveredAtV === undefined ? [] : [figureIn(recoveredAtV, 'V')]),
    ...(recoveredAtDegC === undefined ? [] : [formatTemperature(recoveredAtDegC, units)]),
  ];
  const how = recovery === undefined ? (where.length === 0 ? null : testWords.notSaid) : say.recoveries[recovery];
  return [
    ...row(
      say.labels.recovery,
      how === null || where.length === 0 ? how : say.recoveredAt(how, testWords.listed(where)),
    ),
    ...row(say.labels.wakeUp, wakeUp === undefined ? null : say.wakeUps[wakeUp]),
  ];
}

function limitFrom(limit: CutOffLimit, kind: CutOffKind): string {
  return sourceOf(limit, kind) === 'sensorLimits' ? say.limitFrom.choice : say.limitFrom[limit.from];
}

function sourceOf(limit: CutOffLimit, kind: CutOffKind): CalculationSource {
  if (limit.from === 'nameplate') return limit.of === 'current' ? 'claimedCurrent' : 'claimedLimits';
  // The lowest temperature at which a cell may be charged stands in its data sheet, the highest of a sensor does not.
  return limit.of === 'sensor' && kind !== 'coldCharge' ? 'sensorLimits' : 'cellLimits';
}
