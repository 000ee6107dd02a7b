import type { jsPDF } from 'jspdf';

export type Weight = 400 | 500 | 600;
/** The bytes of public/fonts/underlid-sans-{400,500,600}.ttf. */
export type FontFiles = Readonly<Record<Weight, ArrayBuffer>>;

/** Our typeface inside one document: how wide a text is, and which characters it has. */
export interface Typeface {
  widthOf(text: string, face: { size: number; weight: Weight }): number;
  /** The text as it can be printed; what the typeface lacks becomes □. */
  printable(text: string): string;
}

export const FONT_NAME: Readonly<Record<Weight, string>> = {
  400: 'UnderlidSans400',
  500: 'UnderlidSans500',
  600: 'UnderlidSans600',
};

/** Stands for a character the typeface lacks. The typeface lacks it too: see giveBox. */
export const LACKING = '\u25a1';
const FIGURE_SPACE = 0x2007;

/** What jsPDF keeps of a parsed TrueType file, as far as we read it. */
interface FontMetadata {
  cmap: { unicode: { codeMap: Record<number, number | undefined> } };
  widthOfGlyph(glyph: number): number;
}

/**
 * Embeds the three weights. Identity-H: without it jsPDF writes one byte a character and loses Ω ≤ ł.
 *
 * Throws  Error if a file is no TrueType font.
 */
export function embedTypeface(doc: jsPDF, fonts: FontFiles): Typeface {
  const metadata = { 400: embed(doc, fonts, 400), 500: embed(doc, fonts, 500), 600: embed(doc, fonts, 600) };
  const advances = { 400: new Map(), 500: new Map(), 600: new Map() } as Record<Weight, Map<string, number>>;

  const advanceOf = (character: string, weight: Weight): number => {
    const known = advances[weight].get(character);
    if (known !== undefined) return known;
    const font = metadata[weight];
    const glyph = font.cmap.unicode.codeMap[character.charCodeAt(0)] ?? 0;
    // jsPDF writes whole thousandths into the file; the same here, so that lines end where they are drawn.
    const advance = Math.trunc(font.widthOfGlyph(glyph));
    advances[weight].set(character, advance);
    return advance;
  };

  return {
    widthOf(text, { size, weight }) {
      let thousandths = 0;
      for (const character of text) thousandths += advanceOf(character, weight);
      return (thousandths / 1000) * size;
    },
    printable(text) {
      let printed = '';
      for (const character of text.normalize('NFC').replace(UNPRINTED, '').replace(SPACES, ' ')) {
        const has = character.length === 1 && metadata[400].cmap.unicode.codeMap[character.charCodeAt(0)];
        printed += has ? character : LACKING;
      }
      return printed;
    },
  };
}

/** Zero-width marks, soft hyphens and variation selectors: they have no shape of their own. */
const UNPRINTED = /\p{Default_Ignorable_Code_Point}/gu;
/** Control characters and rare spaces. jsPDF drops the rest of a line after a control character. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const SPACES = /[\u0000-\u001f\u007f-\u009f\u2000-\u2008\u200a\u205f\u3000\u2028\u2029]/g;

function embed(doc: jsPDF, fonts: FontFiles, weight: Weight): FontMetadata {
  const name = FONT_NAME[weight];
  // TrueType begins with version 1.0 (ISO/IEC 14496-22, table directory). jsPDF only logs what it cannot read.
  if (fonts[weight].byteLength < 12 || new DataView(fonts[weight]).getUint32(0) !== 0x00010000) {
    throw new Error(`embedTypeface: the font of weight ${weight} must be a TrueType file`);
  }
  doc.addFileToVFS(`${name}.ttf`, binaryString(fonts[weight]));
  doc.addFont(`${name}.ttf`, name, 'normal', undefined, 'Identity-H');
  doc.setFont(name, 'normal');
  const { metadata } = doc.getFont() as unknown as { metadata: FontMetadata };
  giveBox(metadata);
  return metadata;
}

/**
 * Gives □ the glyph of the figure space, which is never printed otherwise: the sign can be selected and searched, and
 * the surface draws its outline. Glyph 0 would do neither: jsPDF drops the rest of a line after it.
 */
function giveBox({ cmap }: FontMetadata): void {
  cmap.unicode.codeMap[LACKING.charCodeAt(0)] = cmap.unicode.codeMap[FIGURE_SPACE];
}

function binaryString(bytes: ArrayBuffer): string {
  const all = new Uint8Array(bytes);
  const parts: string[] = [];
  for (let from = 0; from < all.length; from += 0x8000) {
    parts.push(String.fromCharCode(...all.subarray(from, from + 0x8000)));
  }
  return parts.join('');
}
