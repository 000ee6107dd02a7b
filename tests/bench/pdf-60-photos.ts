import { performance } from 'node:perf_hooks';
import { jsPDF } from 'jspdf';
import type { Block, Sheet } from '../../src/sheet/model/sheet.ts';
import { writePdf } from '../../src/sheet/pdf/write-pdf.ts';
import { hutPhoto, hutRecord, hutSheet } from '../sheet/hut-pack.ts';
import { FONTS, jpegNumber } from '../sheet/pdf-inputs.ts';
import { median } from './percentiles.ts';

export interface PdfBench {
  oursMs: number;
  bareMs: number;
  /** Ours ÷ bare: what layout, callouts and typeface cost on top of the library alone. */
  ratio: number;
  photoCount: number;
  oursBytes: number;
  bareBytes: number;
}

const PHOTO_COUNT = 60;

/**
 * Writes one sheet with 60 photos with our writer, and the same JPEG bytes and the same words with bare jsPDF and its
 * built-in typeface, one photo a page; median of `rounds`, after one round of each to warm up.
 */
export async function benchPdf60Photos(rounds = 5): Promise<PdfBench> {
  const photos = Array.from({ length: PHOTO_COUNT }, (_, place) =>
    hutPhoto(place + 1, { widthPx: 807, heightPx: 1024, itemIds: place < 30 ? ['main-lug'] : [] }),
  );
  const sheet = hutSheet(hutRecord({ photos }));
  const bytes = new Map(photos.map(({ id }, place) => [id, jpegNumber(place + 1)]));
  const texts = textsOf(sheet);
  const ours = () =>
    writePdf({
      sheet,
      paper: 'a4',
      fonts: FONTS,
      photos: async (photoId) => ({ type: 'image/jpeg', bytes: bytes.get(photoId) ?? new ArrayBuffer(0) }),
    });
  const bare = async () => writeBare(texts, [...bytes.values()]);
  const oursBytes = (await ours()).byteLength;
  const bareBytes = (await bare()).byteLength;
  const oursMs: number[] = [];
  const bareMs: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    oursMs.push(await timedMs(ours));
    bareMs.push(await timedMs(bare));
  }
  const [mine, plain] = [median(oursMs), median(bareMs)];
  return { oursMs: mine, bareMs: plain, ratio: mine / plain, photoCount: PHOTO_COUNT, oursBytes, bareBytes };
}

function writeBare(texts: readonly string[], photos: readonly ArrayBuffer[]): ArrayBuffer {
  const doc = new jsPDF({ unit: 'pt', format: 'a4', compress: true });
  doc.setFontSize(9.5);
  const perPage = Math.ceil(texts.length / photos.length);
  photos.forEach((photo, place) => {
    if (place > 0) doc.addPage();
    doc.addImage(new Uint8Array(photo), 'JPEG', 57, 60, 236, 300, `photo-${place}`, 'NONE');
    let y = 400;
    for (const text of texts.slice(place * perPage, (place + 1) * perPage)) {
      const lines: string[] = doc.splitTextToSize(text, 360);
      doc.text(lines, 57, y);
      y += lines.length * 13;
    }
  });
  return doc.output('arraybuffer');
}

/** Every word of the sheet that its blocks hold. */
function textsOf(sheet: Sheet): string[] {
  const blocks: Block[] = sheet.sections.flatMap((section) => section.blocks);
  return [...Object.values(sheet.head).flat(), ...blocks.flatMap(stringsIn)];
}

function stringsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(stringsIn);
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(stringsIn) : [];
}

async function timedMs(work: () => Promise<unknown>): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}
