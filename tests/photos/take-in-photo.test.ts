import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { PhotoJob, PhotoJobMessage } from '../../src/photos/photo-job.ts';
import { makePhotoIntake } from '../../src/photos/take-in-photo.ts';
import { FRAME, jpegOf, SCAN, TABLES } from './hand-built-jpeg.ts';

const encoded = () => ({ bytes: jpegOf(TABLES, FRAME, SCAN).buffer, widthPx: 640, heightPx: 480 });
vi.mock('../../src/photos/shrink-on-page.ts', () => ({
  shrinkOnPage: async () => ({ ok: true, picture: encoded(), thumb: encoded() }),
}));

/** A worker that does nothing by itself: the test answers for it. */
class SilentWorker extends EventTarget {
  jobs: PhotoJob[] = [];
  terminated = false;
  postMessage(job: PhotoJob) {
    this.jobs.push(job);
  }
  terminate() {
    this.terminated = true;
  }
  answer(message: PhotoJobMessage) {
    this.dispatchEvent(new MessageEvent('message', { data: message }));
  }
  endLast(end: Omit<Extract<PhotoJobMessage, { kind: 'end' }>, 'jobId' | 'kind'>) {
    this.answer({ jobId: this.jobs.at(-1)!.jobId, kind: 'end', ...end });
  }
}

const PLAIN = { detail: false, keepOriginal: false };
const DAMAGED = { intake: { ok: false, problem: 'damaged' }, otherPathMayHelp: false } as const;
const file = () => new Blob([jpegOf(TABLES, FRAME, SCAN)]);
/** Lets everything that is already decided come through. */
const settle = () => vi.advanceTimersByTimeAsync(0);

let workers: SilentWorker[];
let takeInPhoto: ReturnType<typeof makePhotoIntake>;

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  vi.stubGlobal('OffscreenCanvas', class {});
  vi.stubGlobal('createImageBitmap', () => {});
  workers = [];
  const startWorker = () => {
    const worker = new SilentWorker();
    workers.push(worker);
    return worker as unknown as Worker;
  };
  takeInPhoto = makePhotoIntake({ startWorker });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

it('starts one worker for two pictures, one after the other, and passes its steps on', async () => {
  const steps: string[] = [];
  const first = takeInPhoto(file(), PLAIN, { onStep: (step) => steps.push(step) });
  const second = takeInPhoto(file(), PLAIN);
  await settle();
  expect(workers[0]!.jobs).toHaveLength(1);
  workers[0]!.answer({ jobId: workers[0]!.jobs[0]!.jobId, kind: 'step', step: 'shrinking' });
  workers[0]!.endLast(DAMAGED);
  expect(await first).toEqual({ ok: false, problem: 'damaged' });
  await settle();
  expect(workers[0]!.jobs).toHaveLength(2);
  workers[0]!.endLast(DAMAGED);
  await second;
  expect(workers).toHaveLength(1);
  expect(steps).toEqual(['shrinking']);
});

it('does the work on the page when the worker crashes, and starts a second worker for the next picture', async () => {
  const first = takeInPhoto(file(), PLAIN);
  await settle();
  workers[0]!.dispatchEvent(new Event('error'));
  expect(await first).toMatchObject({ ok: true, photo: { path: 'mainThread' } });
  expect(workers[0]!.terminated).toBe(true);
  const second = takeInPhoto(file(), PLAIN);
  await settle();
  expect(workers).toHaveLength(2);
  workers[1]!.endLast(DAMAGED);
  await second;
});

it('does the work on the page when the worker is silent for 60 s, not yet at 59 s', async () => {
  let done = false;
  const taken = takeInPhoto(file(), PLAIN).finally(() => {
    done = true;
  });
  await vi.advanceTimersByTimeAsync(59_000);
  expect(done).toBe(false);
  await vi.advanceTimersByTimeAsync(1_000);
  expect(await taken).toMatchObject({ ok: true, photo: { path: 'mainThread' } });
  expect(workers[0]!.terminated).toBe(true);
});

it('tries the page where the worker could not decode, and keeps that worker', async () => {
  const taken = takeInPhoto(file(), PLAIN);
  await settle();
  workers[0]!.endLast({ ...DAMAGED, otherPathMayHelp: true });
  expect(await taken).toMatchObject({ ok: true, photo: { path: 'mainThread' } });
  expect(workers[0]!.terminated).toBe(false);
});

it('ends the worker of a cancelled picture at once', async () => {
  const control = new AbortController();
  const taken = takeInPhoto(file(), PLAIN, { signal: control.signal });
  await settle();
  control.abort();
  expect(await taken).toEqual({ ok: false, problem: 'cancelled' });
  expect(workers[0]!.terminated).toBe(true);
});

it('a picture cancelled while it waits answers at once, never reaches the worker and disturbs none', async () => {
  const control = new AbortController();
  const first = takeInPhoto(file(), PLAIN);
  const waiting = takeInPhoto(file(), PLAIN, { signal: control.signal });
  await settle();
  control.abort();
  expect(await waiting).toEqual({ ok: false, problem: 'cancelled' });
  workers[0]!.endLast(DAMAGED);
  expect(await first).toEqual({ ok: false, problem: 'damaged' });
  await settle();
  expect(workers[0]!.jobs).toHaveLength(1);
  expect(workers[0]!.terminated).toBe(false);
});

it('goes straight to the page where the browser has no off-screen canvas', async () => {
  vi.stubGlobal('OffscreenCanvas', undefined);
  expect(await takeInPhoto(file(), PLAIN)).toMatchObject({ ok: true, photo: { path: 'mainThread' } });
  expect(workers).toHaveLength(0);
});

it('goes to the page where a worker may not be started', async () => {
  const refused = makePhotoIntake({
    startWorker: () => {
      throw new DOMException('blocked', 'SecurityError');
    },
  });
  expect(await refused(file(), PLAIN)).toMatchObject({ ok: true, photo: { path: 'mainThread' } });
});
