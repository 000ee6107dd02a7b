import { curveOf, overviewOf } from './curve-of.ts';
import { guessMapping } from './guess-mapping.ts';
import type { LayoutChoice } from './log-layout.ts';
import type { LogMapping } from './log-mapping.ts';
import { type FromLogWorker, type GuessedLog, OVERVIEW_POINTS, type ToLogWorker } from './log-messages.ts';
import type { LogReading } from './log-reading.ts';
import type { LogRun } from './log-run.ts';
import type { RunEndHelp } from './make-run.ts';
import { previewOf } from './preview-of.ts';
import { readLog } from './read-log.ts';
import { runsOf } from './runs-of.ts';

interface ServeLog {
  post: (message: FromLogWorker) => void;
  /** Lets messages that wait come in; resolves soon after. */
  breathe: () => Promise<void>;
}

/** The worker's side: feed it every message that comes in. A new read ends the one before. */
export function serveLog({ post, breathe }: ServeLog): (message: ToLogWorker) => void {
  let bytes = new Uint8Array(0);
  let reading: LogReading | null = null;
  let runs: LogRun[] = [];
  let readingJobId: number | null = null;

  async function read(jobId: number, mapping: LogMapping, help: RunEndHelp): Promise<FromLogWorker> {
    readingJobId = jobId;
    const steps = readLog(bytes, mapping);
    let step = steps.next();
    while (!step.done) {
      post({ kind: 'progress', jobId, doneFrac: step.value.doneFrac });
      await breathe();
      if (readingJobId !== jobId) return { kind: 'cancelled', jobId };
      step = steps.next();
    }
    readingJobId = null;
    reading = step.value;
    runs = runsOf(reading, help);
    const { columns, ...rest } = reading;
    const overview = overviewOf(reading, OVERVIEW_POINTS);
    return { kind: 'read', jobId, summary: { ...rest, rowCount: columns.timeS.length, runs, overview } };
  }

  function guess(choice: LayoutChoice): GuessedLog {
    const mapping = guessMapping(bytes, choice);
    return { mapping, preview: previewOf(bytes, mapping.layout) };
  }

  async function answer(message: Exclude<ToLogWorker, { kind: 'cancel' }>): Promise<FromLogWorker> {
    const { jobId } = message;
    switch (message.kind) {
      case 'open':
        bytes = new Uint8Array(message.bytes);
        return { kind: 'guessed', jobId, guessed: guess({}) };
      case 'guess':
        return { kind: 'guessed', jobId, guessed: guess(message.choice) };
      case 'preview':
        return { kind: 'preview', jobId, preview: previewOf(bytes, message.mapping.layout) };
      case 'read':
        return read(jobId, message.mapping, message.help);
      case 'curve': {
        const run = runs[message.runIndex];
        if (reading === null || run === undefined) {
          throw new RangeError(`serveLog: run must be one of ${runs.length} read, got ${message.runIndex}`);
        }
        return { kind: 'curve', jobId, curve: curveOf(reading, run, message.maxPoints) };
      }
    }
  }

  return (message) => {
    if (message.kind === 'cancel') {
      if (readingJobId === message.jobId) readingJobId = null;
      return;
    }
    answer(message).then(post, (reason: unknown) =>
      post({
        kind: 'failed',
        jobId: message.jobId,
        message: reason instanceof Error ? reason.message : String(reason),
      }),
    );
  };
}
