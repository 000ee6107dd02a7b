import { capacityResult } from '../../../grading/live-tests/capacity-result.ts';
import type { RunResult } from '../../../grading/live-tests/results.ts';
import { RUN_END_CHOICES, type Run } from '../../../schema/live-tests/run.ts';
import { formatTemperature } from '../../../text/format-unit.ts';
import { duration, figureIn, plusMinus, rateC, sharePercent } from '../../../text/live-tests/results/figures.ts';
import { runWords as say } from '../../../text/live-tests/results/run.ts';
import type { CalculationSource } from '../../../text/live-tests/results/sources.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block, ResultBlock, ResultRow } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';
import { evidenceWords } from './run-evidence.ts';
import { logRows } from './run-log-rows.ts';
import { notCountedBecause, runName } from './run-name.ts';
import { closingRows, figureRow, only, row, testTitle } from './test-rows.ts';
import { uncertaintyBasis, uncertaintyLacks } from './uncertainty-words.ts';
import { workedOut } from './worked-out.ts';
import { workingOf } from './working-of.ts';

/** Every run, or the one with this id: what it gave, how it began and ended, and how well that is known. */
export function runBlocks(context: LiveContext, id?: string): Block[] {
  return workedOut(say.matter, () => {
    const { runs } = capacityResult(context);
    return only(runs, id, ({ run }) => run.id).map((result) => runBlock(result, runs, context));
  });
}

function runBlock(result: RunResult, runs: readonly RunResult[], context: LiveContext): ResultBlock {
  const { run } = result;
  return {
    kind: 'result',
    id: `run-${run.id}`,
    title: testTitle(runName(runs, run.id), run),
    value: shownValue(result),
    marks: marksOf(result),
    rows: [
      ...gaveRows(result),
      ...row(say.labels.began, beganWords(result)),
      ...endedRows(result),
      ...temperatureRows(result, context),
      ...row(
        say.labels.sense,
        run.sensePoint === undefined ? testWords.notSaid : say.sense[run.sensePoint],
        run.sensePoint === 'loadEnd' ? say.senseNote.loadEnd : null,
      ),
      ...uncertaintyRows(result),
      ...logRows(run, context),
      ...closingRows(run, context),
    ],
    working: workingOfRun(result, context),
  };
}

function shownValue({ run, energyWh, completeness }: RunResult): string {
  const figures = [
    ...(run.chargeAh === undefined ? [] : [figureIn(run.chargeAh, 'Ah')]),
    ...(run.chargeAh === undefined && energyWh !== null ? [figureIn(energyWh, 'Wh')] : []),
  ];
  const [figure] = figures;
  if (figure === undefined) return say.nothingRead;
  return completeness.complete || run.end === 'taper' ? figure : testWords.atLeast(figure);
}

function marksOf({ run, completeness }: RunResult): string[] {
  if (completeness.complete) return [say.countsMark];
  return run.end === 'taper' ? [say.chargeMark] : [];
}

function gaveRows({ run, energyWh, shareOfRatedFrac, currentA, ratePerH, meanVoltageV }: RunResult): ResultRow[] {
  return [
    ...figureRow(say.labels.energy, run.chargeAh === undefined ? null : energyWh, { say: (wh) => figureIn(wh, 'Wh') }),
    ...figureRow(say.labels.share, shareOfRatedFrac, { say: sharePercent }),
    ...figureRow(say.labels.current, currentA, {
      say: (a) => figureIn(a, 'A'),
      note: ratePerH === null ? null : rateC(ratePerH),
    }),
    ...figureRow(say.labels.voltage, meanVoltageV, { say: (v) => figureIn(v, 'V') }),
    ...figureRow(say.labels.duration, run.durationS, { say: duration }),
    ...row(
      say.labels.voltages,
      fromTo(run.startVoltageV, run.endVoltageV, (v) => figureIn(v, 'V')),
    ),
  ];
}

function beganWords({ run: { chargedToV, taperA, restMin, end } }: RunResult): string | null {
  const { began } = say;
  if (end === 'taper' && chargedToV === undefined && taperA === undefined && restMin === undefined) return null;
  return testWords.listed([
    chargedToV === undefined ? began.chargedNotSaid : began.charged(figureIn(chargedToV, 'V')),
    taperA === undefined ? began.taperNotSaid : began.taper(figureIn(taperA, 'A')),
    restMin === undefined ? began.restNotSaid : began.rested(figureIn(restMin, 'min')),
  ]);
}

function endedRows(result: RunResult): ResultRow[] {
  const { run, completeness } = result;
  const because = notCountedBecause(result);
  return [
    ...row(
      say.labels.ended,
      run.end === undefined ? testWords.notSaid : say.ends[run.end],
      testWords.sentenced([...(run.openedBy === undefined ? [] : [say.openedBy[run.openedBy]]), ...endByLog(run)]),
    ),
    ...row(say.labels.evidence, evidenceWords(run.evidence)),
    ...row(
      say.labels.counts,
      completeness.complete ? testWords.yes : testWords.no,
      because.length === 0 ? null : testWords.sentenced(because),
    ),
  ];
}

function temperatureRows({ run }: RunResult, { units }: LiveContext): ResultRow[] {
  const temperature = (degC: number) => formatTemperature(degC, units);
  return [
    ...figureRow(say.labels.ambient, run.ambientDegC, { say: temperature }),
    ...row(say.labels.cells, fromTo(run.cellStartDegC, run.cellEndDegC, temperature)),
  ];
}

function uncertaintyRows(result: RunResult): ResultRow[] {
  const { chargeUncertaintyAh, energyUncertaintyWh } = result;
  const lacks = uncertaintyLacks(result);
  return [
    ...(lacks === null ? [] : row(testWords.labels.uncertainty, say.uncertainty.none, lacks)),
    ...figureRow(say.labels.chargeUncertainty, chargeUncertaintyAh, { say: (u) => plusMinus(u, 'Ah') }),
    ...figureRow(say.labels.energyUncertainty, energyUncertaintyWh, { say: (u) => plusMinus(u, 'Wh') }),
  ];
}

/** "22 °C → 31 °C"; what was not read of the two is said. */
function fromTo(from: number | undefined, to: number | undefined, words: (value: number) => string): string | null {
  if (from === undefined && to === undefined) return null;
  const end = (value: number | undefined) => (value === undefined ? testWords.notSaid : words(value));
  return testWords.fromTo(end(from), end(to));
}

function workingOfRun(result: RunResult, { nameplate }: LiveContext) {
  const { run, ratePerH, shareOfRatedFrac, chargeUncertaintyAh, energyWh } = result;
  const { formulas } = say;
  const isMean = run.currentA === undefined && result.currentA !== null;
  const isMeanVoltage = run.meanVoltageV === undefined && result.meanVoltageV !== null;
  const steps: [boolean, string, CalculationSource[]][] = [
    [run.log !== undefined, formulas.log, ['trapezoid', 'runEnd']],
    [isMean, formulas.current, ['definition']],
    [isMeanVoltage, formulas.voltage, ['definition']],
    [ratePerH !== null, formulas.rate, ['rate']],
    [shareOfRatedFrac !== null, formulas.share, ['definition']],
    [chargeUncertaintyAh !== null, formulas.uncertainty, ['uncertainty']],
  ];
  const taken = steps.filter(([isTaken]) => isTaken);
  const inputs = [
    ...figureRow(say.labels.charge, run.chargeAh, { say: (ah) => figureIn(ah, 'Ah') }),
    ...figureRow(say.labels.energy, energyWh, { say: (wh) => figureIn(wh, 'Wh') }),
    ...figureRow(say.labels.duration, run.durationS, { say: duration }),
    ...figureRow(say.labels.rated, nameplate.ratedCapacityAh, { say: (ah) => figureIn(ah, 'Ah') }),
  ];
  return workingOf({
    formulas: taken.map(([, formula]) => formula),
    inputs: inputs.map(({ label, value }) => ({ label, value })),
    uncertainty: uncertaintyBasis([result], [run.id]),
    sources: [...taken.flatMap(([, , sources]) => sources), 'completeRun'],
  });
}

/** How the log alone has it ended, where the tester says otherwise. */
function endByLog({ end, log }: Run): string[] {
  const ofLog = RUN_END_CHOICES.find((choice) => choice === log?.said?.end);
  return ofLog === undefined || ofLog === end ? [] : [say.logSays(say.ends[ofLog])];
}
