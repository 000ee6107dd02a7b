import type { Desk } from './desk.ts';
import type { Chunk } from './flow.ts';
import type { Page } from './page.ts';
import type { TextStyle } from './text-style.ts';
import { wrapText } from './wrap-text.ts';

export interface TextPlace {
  style: TextStyle;
  x: number;
  width: number;
  space: number;
  /** Stays with what follows. */
  keepWithNext?: boolean;
  /** Painted beside every line, e.g. the bar of a quotation. */
  beside?: (page: Page, top: number, height: number) => void;
}

/**
 * A text as one chunk per line. The first two and the last two lines of a longer text stay together, a text of three
 * lines or fewer stays whole: no line is left alone on a page.
 */
export function textChunks(desk: Desk, text: string, place: TextPlace): Chunk[] {
  const { style, x, width, beside } = place;
  const lines = wrapText(desk.typeface, text, { style, width });
  const last = lines.length - 1;
  return lines.map((line, at) => ({
    height: style.leading,
    space: at === 0 ? place.space : 0,
    keepWithNext: at === last ? (place.keepWithNext ?? false) : last <= 2 || at === 0 || at === last - 1,
    photoIds: [],
    paint(page, top) {
      page.line(line, { x, top, style });
      beside?.(page, top, style.leading);
    },
  }));
}

export interface Cell {
  text: string;
  x: number;
  width: number;
  style: TextStyle;
  anchor?: 'start' | 'end';
  /** Moves the cell down, e.g. under another cell of the same column. */
  drop?: number;
}

export interface RowPlace {
  space: number;
  keepWithNext?: boolean;
  /** Least height, e.g. of a glyph. */
  least?: number;
  beside?: (page: Page, top: number, height: number) => void;
}

/** Cells side by side as one chunk, as high as the highest. Cells of one column may be stacked: see stacked. */
export function rowChunk(desk: Desk, cells: readonly Cell[], place: RowPlace): Chunk {
  const wrapped = cells.map((cell) => ({ cell, lines: wrapText(desk.typeface, cell.text, cell) }));
  const heights = wrapped.map(({ cell, lines }) => (cell.drop ?? 0) + lines.length * cell.style.leading);
  const height = Math.max(place.least ?? 0, ...heights);
  return {
    height,
    space: place.space,
    keepWithNext: place.keepWithNext ?? false,
    photoIds: [],
    paint(page, top) {
      for (const { cell, lines } of wrapped) {
        lines.forEach((line, at) => {
          const lineTop = top + (cell.drop ?? 0) + at * cell.style.leading;
          const x = cell.anchor === 'end' ? cell.x + cell.width : cell.x;
          page.line(line, { x, top: lineTop, style: cell.style, anchor: cell.anchor ?? 'start' });
        });
      }
      place.beside?.(page, top, height);
    },
  };
}

/** Cells of one column, one under the other. */
export function stacked(desk: Desk, cells: readonly Cell[]): Cell[] {
  let drop = 0;
  return cells.map((cell) => {
    const placed = { ...cell, drop };
    drop += wrapText(desk.typeface, cell.text, cell).length * cell.style.leading;
    return placed;
  });
}

/** A chunk that is only drawn. */
export function drawnChunk(height: number, space: number, paint: Chunk['paint']): Chunk {
  return { height, space, keepWithNext: false, photoIds: [], paint };
}
