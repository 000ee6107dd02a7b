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
    const shown = only(runs, id, ({ run }) => run.id).filter(({ run }) => run.curve !== undefined);
    const curves = shown.map((result) => curveOf(result, runs, context));
    return [
      ...(curves.some(standsByTime) ? [plotBlock({ by: 'time', shown, runs, curves })] : []),
      ...(curves.some(standsByCharge) ? [plotBlock({ by: 'charge', shown, runs, curves })] : []),
    ];
  });
}

interface PlotInput {
  by: 'time' | 'charge';
  shown: readonly RunResult[];
  runs: readonly RunResult[];
  curves: readonly RunCurve[];
}

function plotBlock({ by, shown, runs, curves }: PlotInput): PlotBlock {
  const what = by === 'time' ? byTimeWords(curves) : say.byCharge;
  const current = by === 'time' && curves.some(hasCurrent);
  const described = shown.map(({ run }) =>
    say.altRun(
      runName(runs, run.id),
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
        ends: { ...say.ends, unclear: unclearWords(shown) },
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

function curveOf({ run }: RunResult, runs: readonly RunResult[], { nameplate }: LiveContext): RunCurve {
  const curve = run.curve;
  return {
    label: runName(runs, run.id),
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
function unclearWords(shown: readonly RunResult[]): string {
  const ends = new Set(shown.map(({ run }) => run.end));
  if (!ends.has(undefined)) return say.ends.unclear;
  return ends.has('unclear') ? say.unclearOrNotSaid : say.notSaid;
}
