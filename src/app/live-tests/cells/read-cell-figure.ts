import * as v from 'valibot';
import { cellReadingSchema } from '../../../schema/live-tests/cell-set.ts';
import { readNumber } from '../../../ui/fields/read-number.ts';

export const CELL_COLUMNS = ['voltageV', 'resistanceMohm', 'bmsVoltageV'] as const;
export type CellColumn = (typeof CELL_COLUMNS)[number];

export type CellFigure =
  | { kind: 'empty' }
  | { kind: 'value'; value: number }
  /** Typed without its point: what it was most likely meant as, for a person to take or leave. */
  | { kind: 'offer'; value: number }
  | { kind: 'wrong'; because: 'notANumber' | 'noCellVoltage' | 'notPositive' | 'tooMuch' };

/** No cell with an aqueous or organic electrolyte stands higher. Our choice, well over what destroys LFP. */
const MOST_CELL_V = 5;

/** What was typed into one box of the cells. A voltage that no cell can have is never taken, nor mended in silence. */
export function readCellFigure(column: CellColumn, text: string): CellFigure {
  const found = readNumber(text);
  if (found === 'empty') return { kind: 'empty' };
  if (found === null) return { kind: 'wrong', because: 'notANumber' };
  if (column === 'resistanceMohm') {
    if (v.is(cellReadingSchema.entries.resistanceMohm, found)) return { kind: 'value', value: found };
    return { kind: 'wrong', because: found > 1 ? 'tooMuch' : 'notPositive' };
  }
  if (Math.abs(found) <= MOST_CELL_V) return { kind: 'value', value: found };
  const offered = withPoint(text);
  return offered === null ? { kind: 'wrong', because: 'noCellVoltage' } : { kind: 'offer', value: offered };
}

/** Digits alone, read with the point after the first: 3296 as 3.296. Null where that is no cell voltage either. */
function withPoint(text: string): number | null {
  const [, sign = '', first = '', rest = ''] = /^([-+\u2212]?)(\d)(\d+)$/.exec(text.replace(/\s/g, '')) ?? [];
  if (rest === '') return null;
  const value = Number(`${first}.${rest}`) * (sign === '-' || sign === '\u2212' ? -1 : 1);
  return Math.abs(value) <= MOST_CELL_V ? value : null;
}
