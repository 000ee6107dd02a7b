import type { DeriveFrom } from './derivation.ts';

type CellSet = DeriveFrom['tests']['cellSets'][number];
export interface ReadSet extends CellSet {
  values: number[];
  /** Every cell of the pack was read. */
  isWhole: boolean;
  /** No cell was left out; or another round left none out, so that this one only adds what it found. */
  isSettled: boolean;
}

/**
 * The rounds of cell readings that can be graded by one figure of each cell. While the number of cells is not known, or
 * not all were read, a round is not whole. What a part round found counts beside a whole one; what it left out does not.
 */
export function gradedCellSets(
  { tests, nameplate }: Pick<DeriveFrom, 'tests' | 'nameplate'>,
  read: (cell: CellSet['cells'][number]) => number | undefined,
): ReadSet[] {
  const rounds = tests.cellSets
    .filter(({ state }) => state !== 'underLoad')
    .map((set) => {
      const cells = set.cells.flatMap((cell) => {
        const value = read(cell);
        return value === undefined ? [] : [{ number: cell.number, value }];
      });
      const inPack = cells.filter(({ number }) => number <= (nameplate.cellsInSeries ?? 0));
      return {
        ...set,
        values: cells.map(({ value }) => value),
        isWhole: inPack.length === nameplate.cellsInSeries,
      };
    })
    .filter(({ values }) => values.length > 0);
  const isSettled = rounds.some(({ isWhole }) => isWhole);
  return rounds.map((round) => ({ ...round, isSettled }));
}
