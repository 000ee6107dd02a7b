import { useEffect, useRef, useState } from 'preact/hooks';
import { thinnedIndexes } from '../../calc/thinned-indexes.ts';
import type { Drawing } from '../../drawing/display-list.ts';
import { type LogBand, logOverview } from '../../drawing/log-overview.ts';
import type { LogSummary } from '../../logs/log-messages.ts';
import type { LogCurve, LogRun } from '../../logs/log-run.ts';
import { formatFixed } from '../../text/format-number.ts';
import { duration } from '../../text/live-tests/results/figures.ts';
import { foundWords as say } from '../../text/logs/found.ts';
import { DrawingView } from '../../ui/drawing-view.tsx';
import type { LogRead } from './log-in-hand.ts';

/** The column of a small phone: what is narrower is scaled down. */
const LEAST_WIDTH = 280;
const HEIGHT = 250;
/** Of a phone's column each unit of width has two, which shows every dip. */
const POINTS = 700;
/** More bands than this are a grey wall, and slow: the longest are marked. Our choice. */
const MOST_BANDS = 40;
/** A log joined from many: each further part is a screen to scroll past. Our choice. */
const MOST_PARTS = 6;

/**
 * The whole log over time with the runs found as bands, those ticked drawn strong; a picture for each part of it. Made
 * after the words beside it stand and shown in a turn of its own, so that taps get through in between.
 */
export function LogPlot({ read, ticked }: { read: LogRead; ticked: ReadonlySet<number> }) {
  const { runs, overview } = read.summary;
  const section = useRef<HTMLElement>(null);
  const [drawings, setDrawings] = useState<Drawing[]>([]);
  useEffect(() => {
    let timer = setTimeout(() => {
      const width = Math.max(LEAST_WIDTH, section.current?.clientWidth ?? 0);
      const drawn = drawingsOf(read.summary, ticked, width);
      timer = setTimeout(() => setDrawings(drawn));
    });
    return () => clearTimeout(timer);
  }, [read, ticked]);
  if (overview.length === 0) return null;
  return (
    <section ref={section} class="stack">
      <h2>{say.plot}</h2>
      {drawings.length === 0 && <div class="log-plot-wait" />}
      {drawings.map((drawing, part) => (
        <figure key={part} class="sheet-plot">
          {drawings.length > 1 && <figcaption class="small muted">{say.part(part + 1)}</figcaption>}
          <DrawingView drawing={drawing} />
        </figure>
      ))}
      {runs.length > MOST_BANDS && <p class="small muted">{say.longestMarked(MOST_BANDS, runs.length)}</p>}
      {overview.length > MOST_PARTS && <p class="small muted">{say.partsLeft(overview.length - MOST_PARTS)}</p>}
    </section>
  );
}

function drawingsOf({ overview, runs, stretches }: LogSummary, ticked: ReadonlySet<number>, width: number): Drawing[] {
  const longest = [...runs.entries()].toSorted(([, one], [, other]) => other.durationS - one.durationS);
  const marked = longest.slice(0, MOST_BANDS).toSorted(([one], [other]) => one - other);
  return overview.slice(0, MOST_PARTS).map((curve, part) => {
    const { firstIndex = 0, lastIndex = 0 } = stretches[part] ?? {};
    const inPart = marked.filter(([, run]) => run.firstIndex >= firstIndex && run.lastIndex <= lastIndex);
    return drawingOf(thinned(curve), bandsOf(inPart, ticked), width);
  });
}

function thinned(curve: LogCurve): LogCurve {
  const { timeS, voltageV, currentA } = curve;
  const series = [voltageV, currentA].filter((values) => values !== null && values.length > 0) as number[][];
  if (series.length === 0) return curve;
  const kept = thinnedIndexes({ x: timeS, series, mostPoints: POINTS });
  const pick = (values: readonly number[]) => kept.map((at) => values[at] ?? 0);
  return {
    ...curve,
    timeS: pick(timeS),
    voltageV: voltageV.length === 0 ? [] : pick(voltageV),
    currentA: currentA === null ? null : pick(currentA),
  };
}

function bandsOf(runs: readonly [number, LogRun][], ticked: ReadonlySet<number>): LogBand[] {
  return runs.map(([place, run]) => ({
    fromS: run.startS,
    toS: run.endS,
    label: String(place + 1),
    chosen: ticked.has(place),
  }));
}

function drawingOf(curve: LogCurve, bands: readonly LogBand[], width: number): Drawing {
  const { seconds, minutes, hours, nothing } = say;
  return logOverview({
    width,
    height: HEIGHT,
    timeS: curve.timeS,
    voltageV: curve.voltageV.length === 0 ? null : curve.voltageV,
    currentA: curve.currentA,
    bands,
    words: {
      alt: say.alt(bands.map(({ label, fromS, toS }) => say.altBand(label, duration(fromS), duration(toS)))),
      nothing,
      voltage: say.voltage,
      current: say.current,
      seconds,
      minutes,
      hours,
      tick: formatFixed,
    },
  });
}
