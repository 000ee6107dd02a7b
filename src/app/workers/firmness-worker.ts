import { firmness } from '../../grading/side-by-side/firmness.ts';
import type { FirmnessAnswer, FirmnessJob } from '../../grading/side-by-side/firmness-job.ts';

/** Draws thousands of weightings away from the page's own thread. */
declare const self: DedicatedWorkerGlobalScope;

self.onmessage = ({ data }: MessageEvent<FirmnessJob>) => self.postMessage(answerTo(data));

function answerTo({ input, options }: FirmnessJob): FirmnessAnswer {
  try {
    return { ok: true, firmness: firmness(input, options) };
  } catch (cause) {
    return { ok: false, because: cause instanceof Error ? cause.message : String(cause) };
  }
}
