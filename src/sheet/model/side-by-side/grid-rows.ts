import { sideBySideWords as say } from '../../../text/side-by-side.ts';
import type { GridRow } from '../sheet.ts';

export type GridCell = GridRow['cells'][number];

export function cell(text: string, note: string | null = null): GridCell {
  return { text, note, glyph: null };
}

/** Nothing to show, and why. */
export function noCell(because: string): GridCell {
  return cell(say.none, because);
}

/** Parts of a note; null where none is left. */
export function noteOf(parts: readonly (string | null)[]): string | null {
  const said = parts.filter((part) => part !== null && part !== '');
  return said.length === 0 ? null : said.join('; ');
}

export function gridRow({ cells, ...row }: Omit<GridRow, 'differs'>): GridRow {
  const [first] = cells;
  const isAlike = ({ text, note, glyph }: GridCell) =>
    text === first?.text && note === first.note && glyph === first.glyph;
  return { ...row, cells, differs: !cells.every(isAlike) };
}
