import { Zip, ZipDeflate, ZipPassThrough } from 'fflate';

/** Chunks are folded into a Blob at this size, which a browser may move to disk. Our choice. */
const FOLD_BYTES = 8 * 1024 * 1024;

/**
 * Writes one zip file by file. Pictures are stored as they are: deflating JPEG costs time and saves nothing. So are logs:
 * one of nearly equal rows would shrink so far that reading takes it for a bomb, and a backup must always come back.
 */
export interface ZipWriter {
  add(path: string, bytes: Uint8Array, how: 'stored' | 'deflated'): void;
  finish(): Blob;
}

export function zipWriter(writtenAtMs: number): ZipWriter {
  let chunks: BlobPart[] = [];
  let chunkBytes = 0;
  const folded: Blob[] = [];
  const fold = () => {
    folded.push(new Blob(chunks));
    chunks = [];
    chunkBytes = 0;
  };
  const zip = new Zip((error, chunk) => {
    if (error) throw error;
    chunks.push(chunk);
    chunkBytes += chunk.byteLength;
    if (chunkBytes >= FOLD_BYTES) fold();
  });
  const mtime = zipDate(writtenAtMs);
  return {
    add: (path, bytes, how) => {
      const file = how === 'stored' ? new ZipPassThrough(path) : new ZipDeflate(path, { level: 6 });
      file.mtime = mtime;
      zip.add(file);
      file.push(bytes, true);
    },
    finish: () => {
      zip.end();
      fold();
      return new Blob(folded, { type: 'application/zip' });
    },
  };
}

/** A zip can say 1980 to 2107 (APPNOTE.TXT 4.4.6, MS-DOS date); fflate stops at 2099. */
function zipDate(ms: number): Date {
  return new Date(Math.min(Math.max(ms, Date.UTC(1980, 0, 2)), Date.UTC(2099, 11, 30)));
}
