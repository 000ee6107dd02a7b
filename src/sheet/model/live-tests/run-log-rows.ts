import type { Run } from '../../../schema/live-tests/run.ts';
import { formatTyped } from '../../../text/format-number.ts';
import { duration, figureIn, signedPercent } from '../../../text/live-tests/results/figures.ts';
import { runWords as say } from '../../../text/live-tests/results/run.ts';
import { testWords } from '../../../text/live-tests/results/test.ts';
import type { ResultRow } from '../sheet.ts';
import type { LiveContext } from './live-context.ts';
import { row } from './test-rows.ts';

/** From which log and lines a run was read, and what the instrument's own counter says of it. */
export function logRows({ log, chargeAh }: Run, { tests }: LiveContext): ResultRow[] {
  if (log === undefined) return [];
  const name = tests.logs.find(({ id }) => id === log.logId)?.name ?? say.logLost;
  const { longestGapS, counterChargeAh: counterAh } = log;
  const gaps =
    log.gapCount === 0 ? say.noGaps : say.gaps(log.gapCount, longestGapS === undefined ? null : duration(longestGapS));
  const counter =
    counterAh === undefined
      ? null
      : chargeAh === undefined
        ? figureIn(counterAh, 'Ah')
        : say.counter(figureIn(counterAh, 'Ah'), signedPercent(counterAh / chargeAh - 1));
  return [
    ...row(
      say.labels.log,
      say.log(name, formatTyped(log.firstLine), formatTyped(log.lastLine)),
      testWords.listed([say.rows(formatTyped(log.rowCount)), gaps]),
    ),
    ...row(say.labels.counter, counter, chargeAh === undefined ? null : say.counterNote),
  ];
}
