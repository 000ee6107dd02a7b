import { answerPhotoJob } from '../../photos/answer-photo-job.ts';
import type { PhotoJob } from '../../photos/photo-job.ts';

declare const self: DedicatedWorkerGlobalScope;

self.addEventListener('message', ({ data }: MessageEvent<PhotoJob>) => {
  // A rejection here is a fault of ours, not of the file: thrown on, it reaches the page as the worker's error event.
  answerPhotoJob(data, (message, moved) => self.postMessage(message, moved)).catch((error: unknown) => {
    setTimeout(() => {
      throw error;
    });
  });
});
