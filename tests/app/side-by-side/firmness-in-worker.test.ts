import { expect, it } from 'vitest';
import {
  type FirmnessWorker,
  firmnessFrom,
  firmnessInWorker,
} from '../../../src/app/side-by-side/firmness-in-worker.ts';
import { firmness } from '../../../src/grading/side-by-side/firmness.ts';
import type { FirmnessAnswer, FirmnessJob } from '../../../src/grading/side-by-side/firmness-job.ts';
import { firmInput } from '../../grading/side-by-side/firm-packs.ts';

const input = firmInput([1, 1], { x: { q: [0.8, 0.6] }, y: { q: [0.7, 0.68] } });
const job: FirmnessJob = { input, options: { draws: 100, seed: 1 } };

/** Answers as told, on the next turn; counts how often it was ended. */
class NearWorker implements FirmnessWorker {
  onmessage: FirmnessWorker['onmessage'] = null;
  onerror: FirmnessWorker['onerror'] = null;
  onmessageerror: FirmnessWorker['onmessageerror'] = null;
  endedCount = 0;
  jobs: FirmnessJob[] = [];
  private readonly answer: (worker: NearWorker) => void;
  constructor(answer: (worker: NearWorker) => void) {
    this.answer = answer;
  }
  postMessage(given: FirmnessJob): void {
    this.jobs.push(structuredClone(given));
    queueMicrotask(() => this.answer(this));
  }
  terminate(): void {
    this.endedCount++;
  }
}

const saying = (data: FirmnessAnswer) => (worker: NearWorker) => worker.onmessage?.({ data } as MessageEvent);

it('gives the counts the worker found, and ends it once', async () => {
  const found = firmness(input, job.options);
  const worker = new NearWorker(saying({ ok: true, firmness: found }));
  await expect(firmnessFrom(worker, job)).resolves.toEqual(found);
  expect(worker.jobs).toEqual([job]);
  expect(worker.endedCount).toBe(1);
});

it.each<[string, (worker: NearWorker) => void, string]>([
  ['refuses the input', saying({ ok: false, because: 'needs at least 2 packs' }), 'needs at least 2 packs'],
  ['breaks', (worker) => worker.onerror?.({ message: 'out of memory' } as ErrorEvent), 'out of memory'],
  ['cannot be read', (worker) => worker.onmessageerror?.({} as MessageEvent), 'could not be read'],
])('rejects and ends the worker where it %s', async (_name, answer, message) => {
  const worker = new NearWorker(answer);
  await expect(firmnessFrom(worker, job)).rejects.toThrow(message);
  expect(worker.endedCount).toBe(1);
});

it('ends a worker that is still at it when the signal is aborted, with the reason of the signal', async () => {
  const abort = new AbortController();
  const worker = new NearWorker(() => abort.abort(new Error('left the screen')));
  await expect(firmnessFrom(worker, job, abort.signal)).rejects.toThrow('left the screen');
  expect(worker.endedCount).toBe(1);
});

it('starts no worker for a signal that is aborted already: plain Node has none, so starting one would be another error', async () => {
  const reason = new Error('left before');
  await expect(firmnessInWorker(input, job.options, AbortSignal.abort(reason))).rejects.toBe(reason);
});
