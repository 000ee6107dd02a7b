import { Zip, ZipDeflate, ZipPassThrough } from 'fflate';

/** Chunks are handed on in pieces of about this size: few enough calls, little enough memory. Our choice. */
const PIECE_BYTES = 8 * 1024 * 1024;

/** Where a zip goes, piece by piece, in order; the next is made once one is taken. */
export interface ZipSink {
  write(piece: Blob): Promise<void>;
}

/**
 * Writes one zip file by file. Pictures are stored as they are: deflating JPEG costs time and saves nothing. So are logs:
 * one of nearly equal rows would shrink so far that reading takes it for a bomb, and a backup must always come back.
 */
export interface ZipWriter {
  add(path: string, bytes: Uint8Array<ArrayBuffer>, how: 'stored' | 'deflated'): Promise<void>;
  finish(): Promise<void>;
}

export function zipWriter(writtenAtMs: number, sink: ZipSink): ZipWriter {
  let chunks: Uint8Array<ArrayBuffer>[] = [];
  let chunkBytes = 0;
  const zip = new Zip((error, chunk) => {
    if (error) throw error;
    chunks.push(chunk);
    chunkBytes += chunk.byteLength;
  });
  const handOn = async (fromBytes: number) => {
    if (chunkBytes < fromBytes) return;
    const piece = new Blob(chunks);
    chunks = [];
    chunkBytes = 0;
    await sink.write(piece);
  };
  const mtime = zipDate(writtenAtMs);
  return {
    add: async (path, bytes, how) => {
      const file = how === 'stored' ? new ZipPassThrough(path) : new ZipDeflate(path, { level: 6 });
      file.mtime = mtime;
      zip.add(file);
      file.push(bytes, true);
      await handOn(PIECE_BYTES);
    },
    finish: async () => {
      zip.end();
      await handOn(1);
    },
  };
}

/** Gathers a zip as a Blob, of whose pieces a browser may move each to disk. */
export function blobSink(): ZipSink & { blob(): Blob } {
  const pieces: Blob[] = [];
  return {
    write: async (piece) => {
      pieces.push(piece);
    },
    blob: () => new Blob(pieces, { type: 'application/zip' }),
  };
}

/** A zip can say 1980 to 2107 (APPNOTE.TXT 4.4.6, MS-DOS date); fflate stops at 2099. */
function zipDate(ms: number): Date {
  return new Date(Math.min(Math.max(ms, Date.UTC(1980, 0, 2)), Date.UTC(2099, 11, 30)));
}
