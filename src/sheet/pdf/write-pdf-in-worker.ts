import type { FromPdfWorker, ToPdfWorker } from './pdf-messages.ts';
import type { PdfInput } from './write-pdf.ts';

/** What is needed of a Worker; it is ended when the sheet is written, cancelled or failed. */
export interface PdfWorker {
  onmessage: ((event: MessageEvent<FromPdfWorker>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  postMessage(message: ToPdfWorker, transfer: ArrayBuffer[]): void;
  terminate(): void;
}

/**
 * The page's side: writes a sheet in a worker of its own. Photos are read when the worker asks for them and their bytes
 * given away, so that at most one is held here.
 *
 * Throws  the signal's reason once it is aborted; Error with the worker's message if it fails.
 * Check   tests/sheet/write-pdf-in-worker.test.ts
 */
export function writePdfInWorker(worker: PdfWorker, input: PdfInput): Promise<ArrayBuffer> {
  const { sheet, paper, fonts, signal } = input;
  return new Promise<ArrayBuffer>((resolve, reject) => {
    const cancel = () => reject(signal?.reason);
    if (signal?.aborted) {
      cancel();
      return;
    }
    signal?.addEventListener('abort', cancel, { once: true });
    worker.onerror = (event) => reject(new Error(event.message));
    worker.onmessage = ({ data }) => {
      switch (data.kind) {
        case 'wantPhoto':
          sendPhoto(worker, input, data.photoId).catch(reject);
          return;
        case 'progress':
          input.onProgress?.(data.done, data.pages);
          return;
        case 'done':
          resolve(data.bytes);
          return;
        case 'failed':
          reject(new Error(data.message));
      }
    };
    worker.postMessage({ kind: 'write', sheet, paper, fonts }, []);
  }).finally(() => worker.terminate());
}

async function sendPhoto(worker: PdfWorker, { photos }: PdfInput, photoId: string): Promise<void> {
  const photo = await photos(photoId);
  worker.postMessage({ kind: 'photo', photoId, photo }, photo === null ? [] : [photo.bytes]);
}
