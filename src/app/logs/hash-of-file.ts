type Answer = { ok: true; hash: string } | { ok: false; because: string };

/** SHA-256 of a file, in a worker. Rejects where the file cannot be read. */
export function hashOfFile(file: Blob): Promise<string> {
  const worker = new Worker(new URL('../workers/hash-worker.ts', import.meta.url), { type: 'module' });
  return new Promise<string>((resolve, reject) => {
    worker.onmessage = ({ data }: MessageEvent<Answer>) => {
      if (data.ok) resolve(data.hash);
      else reject(new Error(data.because));
    };
    worker.onerror = (event) => reject(new Error(event.message));
    worker.postMessage(file);
  }).finally(() => worker.terminate());
}
