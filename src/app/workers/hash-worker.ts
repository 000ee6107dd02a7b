import { sha256Hex } from '../../photos/sha256-hex.ts';

/** Names one file by its hash away from the page's own thread, which the copy of a large one would hold up. */
declare const self: DedicatedWorkerGlobalScope;

self.onmessage = ({ data }: MessageEvent<Blob>) => {
  data
    .arrayBuffer()
    .then(sha256Hex)
    .then(
      (hash) => self.postMessage({ ok: true, hash }),
      (reason: unknown) => self.postMessage({ ok: false, because: String(reason) }),
    );
};
