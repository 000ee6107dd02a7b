import type { DeriveFrom } from './derivation.ts';

type CellSet = DeriveFrom['tests']['cellSets'][number];
type ReadSet = CellSet & { values: number[]; isWhole: boolean };

/**
 * The rounds of cell readings that can be graded by one figure of each cell. While the number of cells is not known, or
 * not all were read, a round is not whole; those count only while none is.
 */
export function gradedCellSets(
  { tests, nameplate }: Pick<DeriveFrom, 'tests' | 'nameplate'>,
  read: (cell: CellSet['cells'][number]) => number | undefined,
): ReadSet[] {
  const rounds = tests.cellSets
    .filter(({ state }) => state !== 'underLoad')
    .map((set) => {
      const values = set.cells.map(read).filter((value) => value !== undefined);
      return { ...set, values, isWhole: values.length === nameplate.cellsInSeries };
    })
    .filter(({ values }) => values.length > 0);
  const whole = rounds.filter(({ isWhole }) => isWhole);
  return whole.length > 0 ? whole : rounds;
}
