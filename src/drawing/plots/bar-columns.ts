import type { Mark, TextMark } from '../display-list.ts';
import { shortened } from '../text-shortened.ts';
import { type TextFace, textWidth } from '../text-width.ts';

export interface BarRow {
  label: string;
  /** Its figure, or why there is none. */
  text: string;
  strong: boolean;
}

export interface BarColumns {
  /** Where the bars may stand. */
  left: number;
  right: number;
}

const GAP = 8;
/** Most of the width that names and figures may take each; longer ones are shortened. Our choice. */
const LABEL_FRAC = 0.3;
const TEXT_FRAC = 0.34;
/** The widest word just fits its own column; sums must not take a hair from it. */
const NOISE = 1e-6;
const FACE: TextFace = { size: 12.5, weight: 400 };
const STRONG: TextFace = { size: 12.5, weight: 600 };

/** Names in a column on the left, figures in one on the right, bars between. */
export function barColumns(rows: readonly BarRow[], width: number): BarColumns {
  const widest = (text: (row: BarRow) => string): number =>
    Math.max(0, ...rows.map((row) => textWidth(text(row), faceOf(row))));
  return {
    left:
      Math.min(
        widest((row) => row.label),
        width * LABEL_FRAC,
      ) + GAP,
    right:
      width -
      Math.min(
        widest((row) => row.text),
        width * TEXT_FRAC,
      ) -
      GAP,
  };
}

/** A row's name and figure about the middle of its height. */
export function barRowWords(
  row: BarRow,
  { columns, width, middle }: { columns: BarColumns; width: number; middle: number },
): Mark[] {
  const face = faceOf(row);
  const y = middle + face.size * 0.34;
  const word = (text: string, room: number, place: Pick<TextMark, 'x' | 'anchor'>): Mark => ({
    kind: 'text',
    y,
    text: shortened(text, face, room + NOISE),
    ...face,
    ...place,
    ink: row.strong ? 'ink' : 'muted',
  });
  return [
    word(row.label, columns.left - GAP, { x: 0, anchor: 'start' }),
    word(row.text, width - columns.right - GAP, { x: width, anchor: 'end' }),
  ];
}

function faceOf(row: BarRow): TextFace {
  return row.strong ? STRONG : FACE;
}
