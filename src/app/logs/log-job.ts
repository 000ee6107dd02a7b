import type { LayoutChoice } from '../../logs/log-layout.ts';
import type { LogMapping } from '../../logs/log-mapping.ts';
import type { FromLogWorker, GuessedLog, LogPreview, LogSummary, ToLogWorker } from '../../logs/log-messages.ts';
import type { LogCurve } from '../../logs/log-run.ts';
import type { RunEndHelp } from '../../logs/make-run.ts';

/** One log being looked at, in a worker of its own, which holds its bytes and its last reading until `close`. */
export interface LogJob {
  /** How the log seems to be laid out and what its columns seem to be, with its first lines. */
  opened: Promise<GuessedLog>;
  /** The same found again around what a person has set. */
  guess(choice: LayoutChoice): Promise<GuessedLog>;
  preview(mapping: LogMapping): Promise<LogPreview>;
  /** Reads the whole log; a second call ends the first. Rejects with an `AbortError` when cancelled. */
  read(mapping: LogMapping, options?: ReadOptions): Promise<LogSummary>;
  /** Points of one run of the last reading. */
  curve(runIndex: number, maxPoints: number): Promise<LogCurve>;
  /** Stops the reading under way, if any. */
  cancel(): void;
  /** Ends the worker; whatever is under way rejects with an `AbortError`. */
  close(): void;
}

export interface ReadOptions {
  onProgress?: (doneFrac: number) => void;
  help?: RunEndHelp;
}

/** What is needed of a Worker. */
export interface LogWorker {
  onmessage: ((event: MessageEvent<FromLogWorker>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  postMessage(message: ToLogWorker): void;
  terminate(): void;
}

interface Pending {
  take: (message: FromLogWorker) => void;
  reject: (reason: unknown) => void;
  onProgress: ((doneFrac: number) => void) | undefined;
}

/** Opens a log. The bytes are copied to the worker, so that they can be stored from here. */
export function openLog(bytes: ArrayBuffer, startWorker: () => LogWorker = startLogWorker): LogJob {
  const worker = startWorker();
  const pending = new Map<number, Pending>();
  let lastJobId = 0;
  let readJobId: number | null = null;
  let closed = false;

  worker.onmessage = ({ data }) => {
    const job = pending.get(data.jobId);
    if (data.kind === 'progress') {
      job?.onProgress?.(data.doneFrac);
      return;
    }
    pending.delete(data.jobId);
    if (data.kind === 'failed') job?.reject(new Error(data.message));
    else if (data.kind === 'cancelled') job?.reject(aborted());
    else job?.take(data);
  };
  worker.onerror = (event) => rejectAll(new Error(event.message));

  function rejectAll(reason: unknown) {
    for (const { reject } of pending.values()) reject(reason);
    pending.clear();
  }

  function ask<K extends FromLogWorker['kind']>(
    kind: K,
    message: (jobId: number) => ToLogWorker,
    onProgress?: (doneFrac: number) => void,
  ): Promise<Extract<FromLogWorker, { kind: K }>> {
    if (closed) return Promise.reject(aborted());
    const jobId = ++lastJobId;
    return new Promise((resolve, reject) => {
      const take = (answer: FromLogWorker) => {
        if (isKind(answer, kind)) resolve(answer);
        else reject(new Error(`openLog: the worker must answer "${kind}", got "${answer.kind}"`));
      };
      pending.set(jobId, { take, reject, onProgress });
      worker.postMessage(message(jobId));
    });
  }

  return {
    opened: ask('guessed', (jobId) => ({ kind: 'open', jobId, bytes })).then(({ guessed }) => guessed),
    guess: (choice) => ask('guessed', (jobId) => ({ kind: 'guess', jobId, choice })).then(({ guessed }) => guessed),
    preview: (mapping) =>
      ask('preview', (jobId) => ({ kind: 'preview', jobId, mapping })).then(({ preview }) => preview),
    read: (mapping, { onProgress, help = {} } = {}) =>
      ask(
        'read',
        (jobId) => {
          readJobId = jobId;
          return { kind: 'read', jobId, mapping, help };
        },
        onProgress,
      ).then(({ summary }) => summary),
    curve: (runIndex, maxPoints) =>
      ask('curve', (jobId) => ({ kind: 'curve', jobId, runIndex, maxPoints })).then(({ curve }) => curve),
    cancel: () => {
      if (readJobId !== null) worker.postMessage({ kind: 'cancel', jobId: readJobId });
    },
    close: () => {
      closed = true;
      worker.terminate();
      rejectAll(aborted());
    },
  };
}

function isKind<K extends FromLogWorker['kind']>(
  message: FromLogWorker,
  kind: K,
): message is Extract<FromLogWorker, { kind: K }> {
  return message.kind === kind;
}

function aborted(): DOMException {
  return new DOMException('the log is not being read any more', 'AbortError');
}

function startLogWorker(): LogWorker {
  return new Worker(new URL('../workers/log-worker.ts', import.meta.url), { type: 'module' });
}
