/** The photo intake alone on a page, so that tests and benchmarks can drive it without the app around it. */
import { burnInCovers, type CoverBox } from '../../../src/photos/burn-in-covers.ts';
import type { IntakeOptions, IntakeProblem, TakenIn } from '../../../src/photos/intake.ts';
import { makePhotoIntake } from '../../../src/photos/take-in-photo.ts';

/** An intake made fit for the way out of the browser: bytes as base64. */
export type PortableIntake =
  | { ok: false; problem: IntakeProblem; steps: string[] }
  | {
      ok: true;
      steps: string[];
      photo: Omit<TakenIn, 'bytes' | 'thumb' | 'original'>;
      picture: string;
      thumb: string;
      original: string | null;
    };

export type Rgb = [red: number, green: number, blue: number];

export interface PhotoPage {
  takeIn(options: IntakeOptions & { path: 'worker' | 'page' }): Promise<PortableIntake>;
  /** Starts, waits, cancels, then takes the same picture in again: the two results and how soon the cancelled one came. */
  cancelThenTakeIn(afterMs: number): Promise<{ first: PortableIntake; answeredMs: number; second: PortableIntake }>;
  coverUp(base64: string, covers: CoverBox[]): Promise<string>;
  /** Size and colours of a JPEG as the browser shows it, at places given 0–1. */
  look(
    base64: string,
    places: { u: number; v: number }[],
  ): Promise<{ widthPx: number; heightPx: number; colours: Rgb[] }>;
  /** A half transparent picture, red over nothing on its left half, put in place of the picked file. */
  pickTransparent(type: 'image/png' | 'image/webp'): Promise<void>;
  /** One intake in the worker, in ms; the longest time the page did not answer meanwhile. */
  timeIntake(): Promise<{ tookMs: number; longestStallMs: number }>;
  /** The least a browser can do for the same picture, also in a worker; for a landscape file only. */
  timeBrowserAlone(): Promise<{ tookMs: number; longestStallMs: number }>;
}

declare global {
  var photoPage: PhotoPage;
}

const startWorker = () =>
  new Worker(new URL('../../../src/app/workers/photo-worker.ts', import.meta.url), { type: 'module' });
const intakes = {
  worker: makePhotoIntake({ startWorker }),
  page: makePhotoIntake({
    startWorker: () => {
      throw new Error('no worker in this test');
    },
  }),
};
const browserAlone = new Worker(new URL('./browser-alone-worker.ts', import.meta.url), { type: 'module' });
let replaced: Blob | null = null;

globalThis.photoPage = {
  async takeIn({ path, ...options }) {
    const steps: string[] = [];
    return portable(await intakes[path](picked(), options, { onStep: (step) => steps.push(step) }), steps);
  },

  async cancelThenTakeIn(afterMs) {
    const options = { detail: false, keepOriginal: false };
    const control = new AbortController();
    const began = performance.now();
    const firstResult = intakes.worker(picked(), options, { signal: control.signal });
    setTimeout(() => control.abort(), afterMs);
    const first = await portable(await firstResult, []);
    const answeredMs = performance.now() - began - afterMs;
    return { first, answeredMs, second: await portable(await intakes.worker(picked(), options), []) };
  },

  async coverUp(base64, covers) {
    return toBase64(await burnInCovers({ bytes: fromBase64(base64), covers }));
  },

  async look(base64, places) {
    const bitmap = await createImageBitmap(new Blob([fromBase64(base64)], { type: 'image/jpeg' }));
    const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d', { willReadFrequently: true });
    if (context === null) throw new Error('no canvas');
    context.drawImage(bitmap, 0, 0);
    const colours = places.map(({ u, v }): Rgb => {
      // The mean of 5 × 5 px, so that a single grain does not decide; cut at the edge.
      const left = Math.min(bitmap.width - 5, Math.max(0, Math.floor(u * bitmap.width) - 2));
      const top = Math.min(bitmap.height - 5, Math.max(0, Math.floor(v * bitmap.height) - 2));
      const { data } = context.getImageData(left, top, 5, 5);
      const mean = (channel: number) =>
        Array.from({ length: 25 }, (_, i) => data[4 * i + channel] ?? 0).reduce((a, b) => a + b) / 25;
      return [mean(0), mean(1), mean(2)];
    });
    return { widthPx: bitmap.width, heightPx: bitmap.height, colours };
  },

  async pickTransparent(type) {
    const canvas = new OffscreenCanvas(400, 200);
    const context = canvas.getContext('2d');
    if (context === null) throw new Error('no canvas');
    context.fillStyle = 'rgb(200 0 0 / 0.5)';
    context.fillRect(0, 0, 200, 200);
    replaced = await canvas.convertToBlob({ type, quality: 1 });
  },

  timeIntake: () =>
    timed(async () => {
      const result = await intakes.worker(picked(), { detail: false, keepOriginal: false });
      if (!result.ok || result.photo.path !== 'worker') throw new Error(`timeIntake: not taken in by the worker`);
    }),

  timeBrowserAlone: () =>
    timed(
      () =>
        new Promise((resolve, reject) => {
          browserAlone.onmessage = () => resolve();
          browserAlone.onerror = () => reject(new Error('timeBrowserAlone: the worker failed'));
          browserAlone.postMessage(picked());
        }),
    ),
};

const pick = document.getElementById('pick') as HTMLInputElement;
pick.addEventListener('change', () => {
  replaced = null;
});

function picked(): Blob {
  const file = replaced ?? pick.files?.[0];
  if (file === undefined) throw new Error('pick a file first');
  return file;
}

async function timed(work: () => Promise<void>): Promise<{ tookMs: number; longestStallMs: number }> {
  let longestStallMs = 0;
  let last = performance.now();
  const channel = new MessageChannel();
  const beat = () => {
    const now = performance.now();
    longestStallMs = Math.max(longestStallMs, now - last);
    last = now;
    channel.port2.postMessage(0);
  };
  channel.port1.onmessage = beat;
  beat();
  const began = performance.now();
  await work();
  const tookMs = performance.now() - began;
  channel.port1.close();
  return { tookMs, longestStallMs };
}

async function portable(intake: Awaited<ReturnType<typeof intakes.worker>>, steps: string[]): Promise<PortableIntake> {
  if (!intake.ok) return { ...intake, steps };
  const { bytes, thumb, original, ...photo } = intake.photo;
  const originalText = original === null ? null : await toBase64(original.bytes);
  return {
    ok: true,
    steps,
    photo,
    picture: await toBase64(bytes),
    thumb: await toBase64(thumb.bytes),
    original: originalText,
  };
}

function toBase64(bytes: ArrayBuffer): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result).split(',')[1] ?? '');
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(new Blob([bytes]));
  });
}

function fromBase64(text: string): ArrayBuffer {
  return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)).buffer;
}
