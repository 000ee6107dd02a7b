import type { Sheet } from '../../sheet/model/sheet.ts';
import type { Paper } from '../../sheet/pdf/paper.ts';
import { writePdfInWorker } from '../../sheet/pdf/write-pdf-in-worker.ts';
import { fileName } from '../file-name.ts';
import { photoForExport } from '../photos/photo-for-export.ts';

export interface MakePdf {
  sheet: Sheet;
  paper: Paper;
  /** Of a closed sheet; null of an open one. */
  revision: number | null;
  signal: AbortSignal;
  onProgress: (page: number, pages: number) => void;
}

export interface MadePdf {
  file: File;
  /** Photos whose bytes are not on this phone, or whose cover-ups could not be burnt in. */
  missingCount: number;
}

/** Writes the sheet as a PDF in a worker of its own; photos are read one at a time as it asks for them. */
export async function makePdf({ sheet, paper, revision, signal, onProgress }: MakePdf): Promise<MadePdf> {
  const fonts = await fontFiles();
  let missingCount = 0;
  const worker = new Worker(new URL('../workers/pdf-worker.ts', import.meta.url), { type: 'module' });
  const bytes = await writePdfInWorker(worker, {
    sheet,
    paper,
    fonts,
    signal,
    onProgress,
    photos: async (photoId) => {
      const photo = await photoForExport(sheet.photos.find((one) => one.photoId === photoId));
      if (photo === null) missingCount++;
      return photo;
    },
  });
  return {
    file: new File([bytes], fileName({ title: sheet.title, revision, what: null, ending: 'pdf' }), {
      type: 'application/pdf',
    }),
    missingCount,
  };
}

async function fontFiles() {
  const [regular, medium, semiBold] = await Promise.all([400, 500, 600].map(fontFile));
  if (!regular || !medium || !semiBold) throw new Error('the fonts of the PDF did not load');
  return { 400: regular, 500: medium, 600: semiBold };
}

async function fontFile(weight: number): Promise<ArrayBuffer> {
  const response = await fetch(`./fonts/underlid-sans-${weight}.ttf`);
  if (!response.ok) throw new Error(`the font of weight ${weight} did not load (${response.status})`);
  return response.arrayBuffer();
}
