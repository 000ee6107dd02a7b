/** Where the Nameplate does not say how many cells there are: a 12 V pack has four. Our choice. */
const CELLS_UNTIL_SAID = 4;
/** As many as a cell's entry can be numbered to. */
export const MOST_CELLS = 999;

interface CellRowsInput {
  cellsInSeries: number | undefined;
  /** Numbers of cells that were read. */
  read: readonly number[];
  /** Asked for beyond these. */
  added: number;
}

/** How many cells have a row: all of the Nameplate, all that were read, and those asked for. */
export function cellRowCount({ cellsInSeries, read, added }: CellRowsInput): number {
  const known = Math.max(cellsInSeries ?? CELLS_UNTIL_SAID, ...read);
  return Math.min(MOST_CELLS, Math.trunc(known) + added);
}
