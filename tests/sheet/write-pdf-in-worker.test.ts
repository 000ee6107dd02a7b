import { expect, it } from 'vitest';
import type { FromPdfWorker, ToPdfWorker } from '../../src/sheet/pdf/pdf-messages.ts';
import { servePdf } from '../../src/sheet/pdf/serve-pdf.ts';
import { writePdf } from '../../src/sheet/pdf/write-pdf.ts';
import { type PdfWorker, writePdfInWorker } from '../../src/sheet/pdf/write-pdf-in-worker.ts';
import { hutPhoto, hutRecord, hutSheet } from './hut-pack.ts';
import { FONTS, jpegPhotos } from './pdf-inputs.ts';

/** A worker in this thread: every message is cloned and its buffers given away, as between real threads. */
class NearWorker implements PdfWorker {
  onmessage: PdfWorker['onmessage'] = null;
  onerror: PdfWorker['onerror'] = null;
  ended = false;
  sent: string[] = [];
  #take = servePdf((message, transfer) => {
    const data = structuredClone(message, { transfer });
    setTimeout(() => {
      if (!this.ended) this.onmessage?.({ data } as MessageEvent<FromPdfWorker>);
    });
  });

  postMessage(message: ToPdfWorker, transfer: ArrayBuffer[]) {
    this.sent.push(message.kind);
    this.#take(structuredClone(message, { transfer }));
  }

  terminate() {
    this.ended = true;
  }
}

const photos = Array.from({ length: 5 }, (_, place) => hutPhoto(place + 1));
const input = { sheet: hutSheet(hutRecord({ photos })), paper: 'a4', photos: jpegPhotos, fonts: FONTS } as const;

it('gives the very bytes that writing here gives, asks for the 5 photos one by one, reports pages, ends the worker', async () => {
  const worker = new NearWorker();
  const pages: number[] = [];
  const bytes = await writePdfInWorker(worker, { ...input, onProgress: (done) => pages.push(done) });
  expect(Buffer.from(bytes).equals(Buffer.from(await writePdf(input)))).toBe(true);
  expect(worker.sent).toEqual(['write', 'photo', 'photo', 'photo', 'photo', 'photo']);
  expect(pages).toEqual(pages.map((_, place) => place + 1));
  expect(pages.length).toBeGreaterThan(3);
  expect(worker.ended).toBe(true);
  expect(FONTS[400].byteLength).toBeGreaterThan(100_000);
});

it('ends the worker and throws the reason when cancelled half way, or before it began', async () => {
  const stop = new AbortController();
  const worker = new NearWorker();
  const written = writePdfInWorker(worker, {
    ...input,
    signal: stop.signal,
    onProgress: () => stop.abort(new Error('enough')),
  });
  await expect(written).rejects.toThrow('enough');
  expect(worker.ended).toBe(true);

  const late = new NearWorker();
  await expect(writePdfInWorker(late, { ...input, signal: AbortSignal.abort(new Error('no')) })).rejects.toThrow('no');
  expect(late.sent).toEqual([]);
  expect(late.ended).toBe(true);
});

it('throws what the worker says when a font cannot be read', async () => {
  const fonts = { ...FONTS, 500: new ArrayBuffer(64) };
  const worker = new NearWorker();
  await expect(writePdfInWorker(worker, { ...input, fonts })).rejects.toThrow('weight 500 must be a TrueType file');
  expect(worker.ended).toBe(true);
});

it('throws when a photo cannot be fetched at all', async () => {
  const failing = async () => {
    throw new Error('records are closed');
  };
  const worker = new NearWorker();
  await expect(writePdfInWorker(worker, { ...input, photos: failing })).rejects.toThrow('records are closed');
});
