import { formatFixed } from '../../../text/format-number.ts';
import { duration, figureIn } from '../../../text/live-tests/results/figures.ts';
import { runWords as say } from '../../../text/live-tests/run.ts';
import { hrefTo } from '../../route.ts';
import type { PackSession } from '../../state/pack-session.ts';
import { logPlace } from './log-place-id.ts';

/** Beneath a run that was read from a log: from which rows of which, and the way back to it. */
export function RunLog({ session, id }: { session: PackSession; id: string }) {
  const record = session.record.value;
  const run = record.tests.runs.find((one) => one.id === id);
  if (run?.log === undefined) return null;
  const { log } = run;
  const name = record.tests.logs.find((one) => one.id === log.logId)?.name;
  const lines = say.lines(log.firstLine, log.lastLine);
  const longest = log.longestGapS === undefined ? '' : duration(log.longestGapS);
  return (
    <section class="stack">
      <h2>{say.logTitle}</h2>
      <p>{name === undefined ? lines : say.logLine(name, lines)}</p>
      <p class="small muted">
        {say.summary([
          say.rowsRead(formatFixed(log.rowCount, 0)),
          log.gapCount === 0 ? say.noGaps : say.gaps(log.gapCount, longest),
        ])}
      </p>
      {log.counterChargeAh !== undefined && (
        <p class="small muted">{say.counter(figureIn(log.counterChargeAh, 'Ah'))}</p>
      )}
      {name !== undefined && (
        <a class="button" href={hrefTo(record.packId, 'live-test', logPlace(log.logId))}>
          {say.openLog}
        </a>
      )}
    </section>
  );
}
