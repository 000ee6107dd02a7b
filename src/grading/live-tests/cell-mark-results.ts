import { cellCode } from '../../calc/cell-code.ts';
import type { Tested } from '../judged.ts';
import type { CellMarkResult } from './results.ts';

/** What each code on a cell says, or what is wrong with it. */
export function cellMarkResults({ tests }: Pick<Tested, 'tests'>): CellMarkResult[] {
  return tests.cellMarks.map((mark) => ({ mark, code: cellCode(mark.text) }));
}
