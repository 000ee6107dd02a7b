/** The Sheet's screen: what can be done with it. */
export const sheetScreenWords = {
  title: 'Sheet',
  pdf: (paper: string) => `Write the PDF, ${paper}`,
  papers: { a4: 'A4', letter: 'Letter' },
  making: (page: number, pages: number) => (pages > 0 ? `Writing the PDF: ${page} of ${pages} …` : 'Writing the PDF …'),
  stop: 'Stop',
  ready: (fileName: string, size: string) => `${fileName}, ${size}, is ready.`,
  shared: (fileName: string) => `${fileName} is shared.`,
  saved: (fileName: string) => `${fileName} is among your downloads.`,
  share: 'Share',
  save: 'Save',
  failed: 'The PDF could not be written. Nothing in the record was changed. Close other apps and try again.',
  missing: (count: number) =>
    `${count} ${count === 1 ? 'photo is' : 'photos are'} not on this phone and left out of the PDF.`,
  afterwards: 'Afterwards',
};
