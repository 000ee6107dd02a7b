import type { CodeReading } from '../../../photos/read-codes.ts';

export interface CodesJob {
  reading: Promise<CodeReading>;
  stop(): void;
}

/** Looks for codes on a picture, in a worker of its own that ends with it. The reader is fetched with the worker. */
export function lookForCodes(picture: Blob, { closer }: { closer: boolean }): CodesJob {
  let worker: Worker | null = null;
  const reading = new Promise<CodeReading>((resolve) => {
    const cannot = () => resolve({ ok: false, because: 'noReader' });
    try {
      worker = new Worker(new URL('../../workers/code-worker.ts', import.meta.url), { type: 'module' });
    } catch {
      // Module workers are missing in old browsers.
      cannot();
      return;
    }
    worker.onmessage = ({ data }: MessageEvent<CodeReading>) => resolve(data);
    worker.onerror = cannot;
    worker.postMessage({ picture, closer });
  });
  const stop = () => worker?.terminate();
  void reading.then(stop);
  return { reading, stop };
}
