import { type CodePass, codePasses } from './code-passes.ts';

type PicturePoint = [x: number, y: number];

export interface FoundCode {
  text: string;
  /** QRCode, DataMatrix or Code128. */
  symbology: string;
  /** Middle of the code, 0–1 of the picture. */
  at: PicturePoint;
}

export type CodeReading = { ok: true; codes: FoundCode[] } | { ok: false; because: 'cannotDecode' | 'noReader' };

/** A code in the pixels it was given, its middle in those pixels. */
export interface DecodedCode {
  text: string;
  symbology: string;
  atPx: PicturePoint;
}

export interface CodesInput {
  picture: Blob;
  /** All ways to look, even where the first finds something. */
  closer: boolean;
  decode: (pixels: ImageData) => Promise<DecodedCode[]>;
}

/** Codes on a picture, each once. Looks again at a larger size, then piece by piece, while nothing was found. */
export async function readCodes({ picture, closer, decode }: CodesInput): Promise<CodeReading> {
  const bitmap = await createImageBitmap(picture).catch(() => null);
  if (bitmap === null) return { ok: false, because: 'cannotDecode' };
  const size = { widthPx: bitmap.width, heightPx: bitmap.height };
  const found = new Map<string, FoundCode>();
  try {
    for (const passes of codePasses(size)) {
      for (const pass of passes) {
        for (const code of await decode(pixelsOf(bitmap, pass))) {
          const key = `${code.symbology}\n${code.text}`;
          if (!found.has(key)) found.set(key, placed(code, pass, size));
        }
      }
      if (found.size > 0 && !closer) break;
    }
  } finally {
    bitmap.close();
  }
  return { ok: true, codes: [...found.values()] };
}

function placed(
  { text, symbology, atPx }: DecodedCode,
  { leftPx, topPx, scale }: CodePass,
  size: { widthPx: number; heightPx: number },
): FoundCode {
  const at: PicturePoint = [(leftPx + atPx[0] / scale) / size.widthPx, (topPx + atPx[1] / scale) / size.heightPx];
  return { text, symbology, at };
}

function pixelsOf(bitmap: ImageBitmap, { leftPx, topPx, widthPx, heightPx, scale }: CodePass): ImageData {
  const width = Math.max(1, Math.round(widthPx * scale));
  const height = Math.max(1, Math.round(heightPx * scale));
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (context === null) throw new Error('readCodes: needs a 2D canvas, got none');
  context.imageSmoothingQuality = 'high';
  context.drawImage(bitmap, leftPx, topPx, widthPx, heightPx, 0, 0, width, height);
  return context.getImageData(0, 0, width, height);
}
