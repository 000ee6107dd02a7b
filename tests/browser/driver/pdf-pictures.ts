import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { SCENE_PLACES } from '../photographs/scene.ts';
import type { Rgb } from './look.ts';

export interface PdfPicture {
  /** Size of the picture's own pixels. */
  widthPx: number;
  heightPx: number;
  /** How it is laid on the page: neither turned nor mirrored, and its shape kept to 1 %. */
  straight: boolean;
  /** Colours at the places of the made scene. */
  colours: Rgb[];
}

interface Decoded {
  width: number;
  height: number;
  /** Three bytes a pixel (kind 2) or four (kind 3). */
  kind: number;
  data: Uint8ClampedArray;
}

/** Every picture of a PDF, decoded by another program than the one that put it there. */
export async function pdfPictures(bytes: ArrayBuffer): Promise<PdfPicture[]> {
  const document = await getDocument({ data: new Uint8Array(bytes.slice(0)), verbosity: 0 }).promise;
  const pictures: PdfPicture[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { fnArray, argsArray } = await page.getOperatorList();
    let matrix = [1, 0, 0, 1, 0, 0];
    for (const [index, operator] of fnArray.entries()) {
      if (operator === OPS.transform) matrix = argsArray[index] as number[];
      if (operator !== OPS.paintImageXObject) continue;
      const name = (argsArray[index] as string[])[0] ?? '';
      pictures.push(pictureOf(await decoded(page, name), matrix));
    }
  }
  return pictures;
}

type PdfPage = Awaited<ReturnType<Awaited<ReturnType<typeof getDocument>['promise']>['getPage']>>;

function decoded(page: PdfPage, name: string): Promise<Decoded> {
  return new Promise((resolve) => {
    const shelf = name.startsWith('g_') ? page.commonObjs : page.objs;
    shelf.get(name, (value: Decoded) => resolve(value));
  });
}

function pictureOf({ width, height, kind, data }: Decoded, [a = 0, b = 0, c = 0, d = 0]: number[]): PdfPicture {
  const channels = kind === 3 ? 4 : 3;
  const colours = SCENE_PLACES.map(({ u, v }): Rgb => {
    const at = (Math.floor(v * height) * width + Math.floor(u * width)) * channels;
    return [data[at] ?? 0, data[at + 1] ?? 0, data[at + 2] ?? 0];
  });
  const straight = a > 0 && d > 0 && b === 0 && c === 0 && Math.abs(a / d / (width / height) - 1) < 0.01;
  return { widthPx: width, heightPx: height, straight, colours };
}
