import type { Intake, IntakeOptions, IntakeStep } from './intake.ts';
import { photoWorkerLine } from './photo-worker-line.ts';
import { runIntake } from './run-intake.ts';
import type { Shrink } from './shrink.ts';

export interface IntakeControl {
  signal?: AbortSignal;
  onStep?: (step: IntakeStep) => void;
}

/** Takes one picture in. Never rejects for anything a file, a browser or a full memory can do: that is a problem in the result. */
export type TakeInPhoto = (file: Blob, options: IntakeOptions, control?: IntakeControl) => Promise<Intake>;

/**
 * One function in front of two paths: the photo worker first; the page itself where the browser has no off-screen
 * canvas, or the worker cannot be started, crashes, falls silent or cannot decode. One picture at a time, in the order
 * asked for: two 48 megapixel pictures decoded at once are too much for a phone. A cancelled one answers at once.
 */
export function makePhotoIntake({ startWorker }: { startWorker: () => Worker }): TakeInPhoto {
  const askWorker = photoWorkerLine(startWorker);
  let queue: Promise<unknown> = Promise.resolve();

  async function takeTurn(
    file: Blob,
    options: IntakeOptions,
    { signal, onStep = () => {} }: IntakeControl,
  ): Promise<Intake> {
    if (signal?.aborted) return CANCELLED;
    const answer = workerCanShrink() ? await askWorker({ file, options, signal, onStep }) : 'otherPath';
    if (answer !== 'otherPath') return answer;
    const { intake } = await runIntake({ file, options, path: 'mainThread', shrink: shrinkOnPageLater, onStep });
    return intake;
  }

  return (file, options, control = {}) => {
    const turn = queue.then(() => takeTurn(file, options, control));
    queue = turn.catch(() => undefined);
    return unlessAborted(turn, control.signal);
  };
}

const CANCELLED: Intake = { ok: false, problem: 'cancelled' };

function workerCanShrink(): boolean {
  return typeof OffscreenCanvas !== 'undefined' && typeof createImageBitmap !== 'undefined';
}

/** Loaded only when needed: most browsers never are. */
const shrinkOnPageLater: Shrink = async (picture, longestSidePx) => {
  const { shrinkOnPage } = await import('./shrink-on-page.ts');
  return shrinkOnPage(picture, longestSidePx);
};

/** The turn's result, or `cancelled` as soon as the signal says so, whichever is first. */
function unlessAborted(turn: Promise<Intake>, signal: AbortSignal | undefined): Promise<Intake> {
  if (signal === undefined) return turn;
  return new Promise((resolve, reject) => {
    const cancel = () => resolve(CANCELLED);
    if (signal.aborted) cancel();
    signal.addEventListener('abort', cancel);
    turn.then(resolve, reject).finally(() => signal.removeEventListener('abort', cancel));
  });
}
