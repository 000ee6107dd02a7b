import type { Intake, IntakeOptions, IntakeStep } from './intake.ts';
import type { PhotoJob, PhotoJobMessage } from './photo-job.ts';

export interface WorkerRequest {
  file: Blob;
  options: IntakeOptions;
  signal: AbortSignal | undefined;
  onStep: (step: IntakeStep) => void;
}

/** `otherPath`: the worker could not, and the page should try. */
export type WorkerAnswer = Intake | 'otherPath';

/** Our choice: 48 megapixels take seconds on a slow phone; one that is silent for this long has been stopped by the system. */
const LONGEST_SILENCE_MS = 60_000;

/** Talks to one photo worker at a time: started when first needed, kept between jobs, replaced after a crash or a cancelled job. */
export function photoWorkerLine(startWorker: () => Worker): (request: WorkerRequest) => Promise<WorkerAnswer> {
  let running: Worker | null = null;
  let lastJobId = 0;

  return ({ file, options, signal, onStep }) =>
    new Promise((resolve) => {
      const worker = running ?? tryToStart(startWorker);
      if (worker === null) return resolve('otherPath');
      running = worker;
      const job: PhotoJob = { jobId: ++lastJobId, file, options };
      let silence = setTimeout(giveUp, LONGEST_SILENCE_MS);

      function hear({ data }: MessageEvent<PhotoJobMessage>) {
        if (data.jobId !== job.jobId) return;
        clearTimeout(silence);
        if (data.kind === 'end') return settle(data.otherPathMayHelp ? 'otherPath' : data.intake);
        silence = setTimeout(giveUp, LONGEST_SILENCE_MS);
        onStep(data.step);
      }
      function giveUp() {
        stop();
        settle('otherPath');
      }
      // A decoder cannot be interrupted; ending its worker can.
      function cancel() {
        stop();
        settle({ ok: false, problem: 'cancelled' });
      }
      function stop() {
        worker?.terminate();
        running = null;
      }
      function settle(answer: WorkerAnswer) {
        clearTimeout(silence);
        worker?.removeEventListener('message', hear);
        worker?.removeEventListener('error', giveUp);
        worker?.removeEventListener('messageerror', giveUp);
        signal?.removeEventListener('abort', cancel);
        resolve(answer);
      }

      worker.addEventListener('message', hear);
      worker.addEventListener('error', giveUp);
      worker.addEventListener('messageerror', giveUp);
      signal?.addEventListener('abort', cancel);
      worker.postMessage(job);
    });
}

function tryToStart(startWorker: () => Worker): Worker | null {
  try {
    return startWorker();
  } catch {
    // Refused by a policy or an engine without module workers: the page does the work.
    return null;
  }
}
