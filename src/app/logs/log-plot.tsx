import { useMemo } from 'preact/hooks';
import { logOverview } from '../../drawing/log-overview.ts';
import type { LogCurve, LogRun } from '../../logs/log-run.ts';
import { formatFixed } from '../../text/format-number.ts';
import { duration } from '../../text/live-tests/results/figures.ts';
import { foundWords as say } from '../../text/logs/found.ts';
import { DrawingView } from '../../ui/drawing-view.tsx';
import type { LogRead } from './log-in-hand.ts';

/** As wide as the column of a phone; wider screens scale it up. */
const WIDTH = 350;
const HEIGHT = 250;

/** The whole log over time with the runs found as bands, those ticked drawn strong; a picture for each part of it. */
export function LogPlot({ read, ticked }: { read: LogRead; ticked: ReadonlySet<number> }) {
  const { overview, runs, stretches } = read.summary;
  const drawings = useMemo(
    () =>
      overview.map((curve, part) => {
        const stretch = stretches[part];
        const inPart = [...runs.entries()].filter(
          ([, run]) =>
            stretch !== undefined && run.firstIndex >= stretch.firstIndex && run.lastIndex <= stretch.lastIndex,
        );
        return drawingOf(curve, inPart, ticked);
      }),
    [read, ticked],
  );
  if (drawings.length === 0) return null;
  return (
    <section class="stack">
      <h2>{say.plot}</h2>
      {drawings.map((drawing, part) => (
        <figure key={part} class="sheet-plot">
          {drawings.length > 1 && <figcaption class="small muted">{say.part(part + 1)}</figcaption>}
          <DrawingView drawing={drawing} />
        </figure>
      ))}
    </section>
  );
}

function drawingOf(curve: LogCurve, runs: readonly [number, LogRun][], ticked: ReadonlySet<number>) {
  const bands = runs.map(([place, run]) => ({
    fromS: run.startS,
    toS: run.endS,
    label: String(place + 1),
    chosen: ticked.has(place),
  }));
  const { seconds, minutes, hours, nothing } = say;
  return logOverview({
    width: WIDTH,
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
