import { curveOf } from '../../../logs/curve-of.ts';
import { guessMapping } from '../../../logs/guess-mapping.ts';
import type { LogReading } from '../../../logs/log-reading.ts';
import { readLog } from '../../../logs/read-log.ts';
import { runsOf } from '../../../logs/runs-of.ts';
import { CURVE_POINTS, runFromLog } from '../../logs/run-from-log.ts';
import { demoLogText } from './demo-log.ts';
import type { DemoLog, ReadDemoLog } from './demo-tests.ts';

/**
 * Makes a demo log's text and reads it as any log is read; its one run is kept.
 *
 * Throws  Error if the log does not read as one discharge: a fault of the demo, held by its tests.
 */
export async function readDemoLog(
  log: DemoLog,
  hash: (bytes: Uint8Array<ArrayBuffer>) => Promise<string>,
): Promise<ReadDemoLog & { bytes: ArrayBuffer }> {
  const bytes = new TextEncoder().encode(demoLogText(log.title, log.pack, log.run));
  const mapping = guessMapping(bytes);
  const reading = finished(readLog(bytes, mapping));
  const runs = runsOf(reading);
  const place = runs.findIndex(({ kind }) => kind === 'discharge');
  const run = runs[place];
  if (run === undefined) throw new Error(`${log.fileName} must read as one discharge`);
  const sha256 = await hash(bytes);
  const rowCount = reading.counts.rowsRead;
  return {
    sha256,
    byteCount: bytes.byteLength,
    rowCount,
    bytes: bytes.buffer,
    run: runFromLog({
      runs,
      place,
      curve: curveOf(reading, run, CURVE_POINTS),
      logId: sha256,
      mapping,
      rowCount,
      startedAtMs: reading.startedAtMs,
    }),
  };
}

function finished(steps: Generator<unknown, LogReading>): LogReading {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
