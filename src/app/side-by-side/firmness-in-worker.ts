import type { Draws } from '../../grading/side-by-side/firmness.ts';
import type { FirmnessAnswer, FirmnessJob } from '../../grading/side-by-side/firmness-job.ts';
import type { Firmness, FirmnessInput } from '../../grading/side-by-side/side-by-side.ts';

/** What is needed of a Worker. */
export interface FirmnessWorker {
  onmessage: ((event: MessageEvent<FirmnessAnswer>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  onmessageerror: ((event: MessageEvent) => void) | null;
  postMessage(job: FirmnessJob): void;
  terminate(): void;
}

/**
 * How firm an order is, worked out in a worker of its own that ends with it. Rejects where a worker cannot be had or
 * fails, and with the signal's reason once that is aborted.
 */
export async function firmnessInWorker(input: FirmnessInput, options: Draws, signal?: AbortSignal): Promise<Firmness> {
  signal?.throwIfAborted();
  const worker = new Worker(new URL('../workers/firmness-worker.ts', import.meta.url), { type: 'module' });
  return firmnessFrom(worker, { input, options }, signal);
}

/** Gives one job to a worker that has just been started, and ends it whatever comes of it. */
export function firmnessFrom(worker: FirmnessWorker, job: FirmnessJob, signal?: AbortSignal): Promise<Firmness> {
  let cancel = () => {};
  return new Promise<Firmness>((resolve, reject) => {
    cancel = () => reject(signal?.reason);
    signal?.addEventListener('abort', cancel);
    worker.onmessage = ({ data }) => {
      if (data.ok) resolve(data.firmness);
      else reject(new Error(data.because));
    };
    worker.onerror = (event) => reject(new Error(event.message));
    worker.onmessageerror = () => reject(new Error('the answer of the worker could not be read'));
    worker.postMessage(job);
  }).finally(() => {
    signal?.removeEventListener('abort', cancel);
    worker.terminate();
  });
}
