import type { jsPDF } from 'jspdf';
import { sheetWords } from '../../text/sheet.ts';
import type { Sheet } from '../model/sheet.ts';
import type { Placed } from './flow.ts';
import type { Paper } from './paper.ts';

/** jsPDF takes no later date; a phone whose clock runs ahead must still get its PDF, and the page itself prints the day. */
const LAST_DATE_MS = Date.UTC(2038, 0, 1) - 1000;

/**
 * Title, language, date and file id. All come from the sheet, so that the same sheet gives the same bytes: jsPDF would
 * else take the clock and a random id.
 */
export async function setDocumentFacts(doc: jsPDF, sheet: Sheet, paper: Paper): Promise<void> {
  doc.setProperties({
    title: spaced(sheet.title),
    subject: [sheetWords.subject, ...(sheet.demoMark === null ? [] : [sheet.demoMark])].join(', '),
    keywords: spaced(sheet.head.marks.join(', ')),
    creator: spaced(sheet.madeBy),
  });
  doc.setLanguage('en-GB');
  doc.setCreationDate(pdfDate(Math.min(sheet.newestMs ?? 0, LAST_DATE_MS)));
  doc.setFileId(await contentId(JSON.stringify([paper, sheet])));
}

/** Sections, and findings within theirs, as the reader's outline. */
export function addBookmarks(doc: jsPDF, pages: readonly (readonly Placed[])[]): void {
  let section: unknown = null;
  pages.forEach((placed, place) => {
    for (const { chunk } of placed) {
      if (chunk.bookmark === undefined) continue;
      const { title, depth } = chunk.bookmark;
      const made = doc.outline.add(depth === 0 ? null : section, spaced(title), { pageNumber: place + 1 });
      if (depth === 0) section = made;
    }
  });
}

/** Eight-bit texts outside the pages are read by PDFDocEncoding, where the no-break space is a euro sign. */
function spaced(text: string): string {
  return text.replace(/[\u00a0\u202f]/g, ' ');
}

/** PDF 32000-1:2008 7.9.4, in UTC. */
function pdfDate(atMs: number): string {
  return `D:${new Date(atMs).toISOString().slice(0, 19).replace(/[-:T]/g, '')}+00'00'`;
}

/** First 128 bits of the content's SHA-256, as the file id wants them. */
async function contentId(content: string): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(content)));
  return [...digest.subarray(0, 16)]
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('')
    .toUpperCase();
}
