import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import readerUrl from 'zxing-wasm/reader/zxing_reader.wasm?url';
import type { DecodedCode } from './read-codes.ts';

// Left alone it would ask a server of somebody else's for its machine code.
prepareZXingModule({ overrides: { locateFile: () => readerUrl } });

/** Kinds of code that are printed or engraved on cells. */
const SYMBOLOGIES = ['QRCode', 'DataMatrix', 'Code128'] as const;

/** The codes in a piece of picture. Only codes whose own check holds are given. */
export async function decodeCodes(pixels: ImageData): Promise<DecodedCode[]> {
  const results = await readBarcodes(pixels, { formats: [...SYMBOLOGIES], tryHarder: true, textMode: 'Plain' });
  return results
    .filter(({ isValid, text }) => isValid && text.trim() !== '')
    .map(({ text, symbology, position: { topLeft, topRight, bottomLeft, bottomRight } }) => {
      const corners = [topLeft, topRight, bottomLeft, bottomRight];
      return {
        text: text.trim(),
        symbology,
        atPx: [
          corners.reduce((sum, { x }) => sum + x, 0) / corners.length,
          corners.reduce((sum, { y }) => sum + y, 0) / corners.length,
        ],
      };
    });
}
