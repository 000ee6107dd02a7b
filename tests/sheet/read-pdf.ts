import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface ReadPdf {
  pages: { text: string; width: number; height: number; imageCount: number; fonts: string[] }[];
  /** All pages' text, NFKC: µ comes back as μ, no-break spaces as spaces. */
  text: string;
  title: string;
  created: string;
  language: string;
  bookmarks: string[];
}

/** Reads a PDF back with another program than the one that wrote it. */
export async function readPdf(bytes: ArrayBuffer): Promise<ReadPdf> {
  const document = await getDocument({ data: new Uint8Array(bytes.slice(0)), useSystemFonts: false, verbosity: 0 })
    .promise;
  const pages: ReadPdf['pages'] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    const content = await page.getTextContent();
    const text = content.items.map((item) => ('str' in item ? item.str : '')).join(' ');
    const { fnArray } = await page.getOperatorList();
    pages.push({
      text: plain(text),
      width,
      height,
      imageCount: fnArray.filter((op) => op === OPS.paintImageXObject).length,
      fonts: Object.keys(content.styles),
    });
  }
  const { info } = (await document.getMetadata()) as {
    info: { Title?: string; CreationDate?: string; Language?: string };
  };
  const outline: { title: string; items: { title: string }[] }[] = (await document.getOutline()) ?? [];
  return {
    pages,
    text: pages.map((page) => page.text).join(' '),
    title: info.Title ?? '',
    created: info.CreationDate ?? '',
    language: info.Language ?? '',
    bookmarks: outline.flatMap(({ title, items }) => [title, ...items.map((item) => `> ${item.title}`)]),
  };
}

const plain = (text: string) => text.normalize('NFKC').replace(/\s+/g, ' ');
