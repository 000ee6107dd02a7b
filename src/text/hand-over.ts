/** A file that is made and handed to the person: shared to another app or saved. */
export const handOverWords = {
  making: 'Making the file …',
  ready: (fileName: string, size: string) => `${fileName}, ${size}, is ready.`,
  share: 'Share',
  save: 'Save',
  saved: (fileName: string) => `✓ ${fileName} is among your downloads.`,
  shared: (fileName: string) => `✓ ${fileName} is shared.`,
  notShared: 'The other app did not take it. Save it instead.',
  failed: 'The file could not be made. Nothing in the record was changed. Close other apps and try again.',
};
