import { decodeCodes } from '../../photos/decode-codes.ts';
import { readCodes } from '../../photos/read-codes.ts';

/** Looks for codes on one picture after the other, away from the page's own thread. */
declare const self: DedicatedWorkerGlobalScope;

self.onmessage = ({ data }: MessageEvent<{ picture: Blob; closer: boolean }>) => {
  readCodes({ ...data, decode: decodeCodes }).then(
    (reading) => self.postMessage(reading),
    // A browser without what the reader needs; the page says so, and the code is typed.
    () => self.postMessage({ ok: false, because: 'noReader' }),
  );
};
