import { type RunCurve, runPlot } from '../../../drawing/run-plot.ts';
import { capacityResult } from '../../../grading/live-tests/capacity-result.ts';
import type { RunResult } from '../../../grading/live-tests/results.ts';
import type { Curve } from '../../../schema/live-tests/run.ts';
import { formatFixed } from '../../../text/format-number.ts';
import { figureIn } from '../../../text/live-tests/results/figures.ts';
import { runWords, runPlotWords as say } from '../../../text/live-tests/results/run.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { Block, PlotBlock } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';
import { PLOT_HEIGHT, PLOT_WIDTH } from './plot-size.ts';
import { runName } from './run-name.ts';
import { only } from './test-rows.ts';
import { workedOut } from './worked-out.ts';

/** The runs over one another, against time and against charge; or one of them. Nothing without a curve. */
export function runPlotBlocks(context: LiveContext, id?: string): Block[] {
  return workedOut(runWords.matter, () => {
    const { runs } = capacityResult(context);
    return curvePlots(
      only(runs, id, ({ run }) => run.id).map(({ run }) => ({
        label: runName(runs, run.id),
        run,
        nameplate: context.nameplate,
      })),
    ).map(({ block }) => block);
  });
}

export interface DrawnRun {
  label: string;
  run: RunResult['run'];
  nameplate: LiveContext['nameplate'];
}

/** Curves over one another, also of several packs: against time and against charge, as far as they were logged. */
export function curvePlots(given: readonly DrawnRun[]): { by: 'time' | 'charge'; block: PlotBlock }[] {
  const drawn = given.filter(({ run }) => run.curve !== undefined);
  const curves = drawn.map(curveOf);
  const plot = (by: 'time' | 'charge') => ({ by, block: plotBlock({ by, drawn, curves }) });
  return [
    ...(curves.some(standsByTime) ? [plot('time')] : []),
    ...(curves.some(standsByCharge) ? [plot('charge')] : []),
  ];
}

interface PlotInput {
  by: 'time' | 'charge';
  drawn: readonly DrawnRun[];
  curves: readonly RunCurve[];
}

function plotBlock({ by, drawn, curves }: PlotInput): PlotBlock {
  const what = by === 'time' ? byTimeWords(curves) : say.byCharge;
  const current = by === 'time' && curves.some(hasCurrent);
  const described = drawn.map(({ label, run }) =>
    say.altRun(
      label,
      run.chargeAh === undefined ? runWords.nothingRead : figureIn(run.chargeAh, 'Ah'),
      run.end === undefined ? testWords.notSaid : runWords.ends[run.end],
    ),
  );
  return {
    kind: 'plot',
    drawing: runPlot({
      width: PLOT_WIDTH,
      height: current ? PLOT_HEIGHT.two : PLOT_HEIGHT.one,
      by,
      runs: curves,
      voltage: true,
      current,
      words: {
        ...say,
        alt: say.alt(what, described),
        ends: { ...say.ends, unclear: unclearWords(drawn) },
        cutOff: (voltageV) => say.cutOff(figureIn(voltageV, 'V')),
        tick: formatFixed,
      },
    }),
    caption: say.caption(what, curves.filter(by === 'time' ? standsByTime : standsByCharge).length),
  };
}

const hasCurrent = ({ currentA }: RunCurve) => currentA !== null;
const hasVoltage = ({ voltageV }: RunCurve) => voltageV !== null;
const standsByTime = (curve: RunCurve) => hasVoltage(curve) || hasCurrent(curve);
const standsByCharge = (curve: RunCurve) => hasVoltage(curve) && curve.chargeAh !== null;

/** Of what was logged, and of nothing else. */
function byTimeWords(curves: readonly RunCurve[]): string {
  if (!curves.some(hasCurrent)) return say.byTime.voltage;
  return curves.some(hasVoltage) ? say.byTime.both : say.byTime.current;
}

function curveOf({ label, run, nameplate }: DrawnRun): RunCurve {
  const curve = run.curve;
  return {
    label,
    timeS: curve?.timeS ?? [],
    voltageV: seriesOf(curve, curve?.voltageV),
    currentA: seriesOf(curve, curve?.currentA),
    chargeAh: seriesOf(curve, curve?.chargeAh),
    end: run.end ?? 'unclear',
    cutOffVoltageV: run.end === 'taper' ? null : (nameplate.cutOffVoltageV ?? null),
  };
}

/** A series of another length than its times cannot be drawn. */
function seriesOf(curve: Curve | undefined, series: number[] | null | undefined): number[] | null {
  if (curve === undefined || series === null || series === undefined) return null;
  return series.length === curve.timeS.length && series.length > 0 ? series : null;
}

/** The sign of an unclear end stands for one that was not said, too. */
function unclearWords(drawn: readonly DrawnRun[]): string {
  const ends = new Set(drawn.map(({ run }) => run.end));
  if (!ends.has(undefined)) return say.ends.unclear;
  return ends.has('unclear') ? say.unclearOrNotSaid : say.notSaid;
}
