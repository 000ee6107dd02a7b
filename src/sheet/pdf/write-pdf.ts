import { jsPDF } from 'jspdf';
import type { PhotoBytes } from '../../schema/photo.ts';
import { sheetWords } from '../../text/sheet.ts';
import type { Sheet } from '../model/sheet.ts';
import type { Desk } from './desk.ts';
import { addBookmarks, setDocumentFacts } from './document-facts.ts';
import { flow, type Placed } from './flow.ts';
import { jpegSize } from './jpeg-size.ts';
import { lackingCount } from './lacking-count.ts';
import { layOut } from './lay-out.ts';
import { type Page, pageOf } from './page.ts';
import { paintEdges, paintGround } from './page-edges.ts';
import { PAPERS, type Paper, pageFrame } from './paper.ts';
import { paragraphChunks } from './prose-chunks.ts';
import { embedTypeface, type FontFiles } from './typeface.ts';

export interface PdfInput {
  sheet: Sheet;
  paper: Paper;
  /** Stored JPEG bytes, cover-ups burnt in, free of metadata: they are embedded as they are. Null: not on this phone. */
  photos: (photoId: string) => Promise<PhotoBytes | null>;
  fonts: FontFiles;
  /** Called after every page. */
  onProgress?: (done: number, pages: number) => void;
  signal?: AbortSignal;
}

/**
 * The sheet as a PDF. Photos are asked for one by one as their page is painted. Same sheet, paper, photos and fonts
 * give the same bytes.
 *
 * Throws  the signal's reason once it is aborted; Error if a font cannot be read.
 * Check   tests/sheet/write-pdf.test.ts
 */
export async function writePdf(input: PdfInput): Promise<ArrayBuffer> {
  const { sheet, paper, signal } = input;
  const { width, height } = PAPERS[paper];
  const doc = new jsPDF({ unit: 'pt', format: [width, height], compress: true, putOnlyUsedFonts: true });
  await setDocumentFacts(doc, sheet, paper);
  const desk: Desk = { typeface: embedTypeface(doc, input.fonts), frame: pageFrame(paper) };
  const pages = flow([...layOut(desk, sheet), ...lackingNote(desk, sheet)], desk.frame);
  const pictures = new Map<string, Uint8Array | 'missing' | 'unreadable'>();
  const page = pageOf(doc, desk.typeface, pictures);
  for (const [place, placed] of pages.entries()) {
    signal?.throwIfAborted();
    if (place > 0) doc.addPage([width, height]);
    if (place === 0) paintGround(desk, page, placed);
    await paintChunks(page, placed, { ...input, pictures });
    paintEdges(desk, page, { sheet, number: place + 1, count: pages.length });
    input.onProgress?.(place + 1, pages.length);
  }
  addBookmarks(doc, pages);
  return doc.output('arraybuffer');
}

type Supply = Pick<PdfInput, 'photos' | 'signal'> & { pictures: Map<string, Uint8Array | 'missing' | 'unreadable'> };

/** Only the photos of one chunk are held at a time beside the document's own copy. */
async function paintChunks(page: Page, placed: readonly Placed[], supply: Supply): Promise<void> {
  for (const { chunk, top } of placed) {
    for (const photoId of chunk.photoIds) {
      supply.signal?.throwIfAborted();
      supply.pictures.set(photoId, pictureOf(await supply.photos(photoId)));
    }
    chunk.paint(page, top);
    supply.pictures.clear();
  }
}

function pictureOf(photo: PhotoBytes | null): Uint8Array | 'missing' | 'unreadable' {
  if (photo === null) return 'missing';
  const bytes = new Uint8Array(photo.bytes);
  return jpegSize(bytes) === null ? 'unreadable' : bytes;
}

function lackingNote(desk: Desk, sheet: Sheet) {
  const count = lackingCount(sheet, desk.typeface);
  return count === 0
    ? []
    : paragraphChunks(desk, { kind: 'paragraph', text: sheetWords.lacking(count), tone: 'muted' });
}
