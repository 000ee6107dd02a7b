/** Sizes in points, 1/72 in. Source: ISO 216 (A4, 210 × 297 mm); ANSI/ASME Y14.1 (letter, 8.5 × 11 in). */
export const PAPERS = {
  a4: { width: (210 / 25.4) * 72, height: (297 / 25.4) * 72 },
  letter: { width: 612, height: 792 },
} as const;
export type Paper = keyof typeof PAPERS;

/** Where things stand on a page, in points from its top left corner. */
export interface PageFrame {
  width: number;
  height: number;
  left: number;
  right: number;
  top: number;
  bottom: number;
  /** The narrow column at the left carries numbers, glyphs and labels; the text stands beside it. */
  textLeft: number;
  textWidth: number;
  /** Full width between the margins. */
  fullWidth: number;
}

const MM = 72 / 25.4;
/** Our choice: room for a thumb and two punched holes. */
const SIDE = 20 * MM;
const TOP = 22 * MM;
const BOTTOM = 21 * MM;
const LABEL_COLUMN = 114;

export function pageFrame(paper: Paper): PageFrame {
  const { width, height } = PAPERS[paper];
  const fullWidth = width - 2 * SIDE;
  return {
    width,
    height,
    left: SIDE,
    right: width - SIDE,
    top: TOP,
    bottom: height - BOTTOM,
    textLeft: SIDE + LABEL_COLUMN,
    textWidth: fullWidth - LABEL_COLUMN,
    fullWidth,
  };
}
