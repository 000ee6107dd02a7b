import { describe, expect, it } from 'vitest';
import { readCellFigure } from '../../../src/app/live-tests/cells/read-cell-figure.ts';

describe('what is typed into a box of the cells', () => {
  it.each([
    ['3.296', 3.296],
    ['3,296', 3.296],
    [' 3.3 ', 3.3],
    ['-0.4', -0.4],
    ['5', 5],
    ['0', 0],
  ])('takes %s as a voltage of one cell', (text, value) => {
    expect(readCellFigure('voltageV', text)).toEqual({ kind: 'value', value });
  });

  it.each([
    ['3296', 3.296],
    ['332', 3.32],
    ['33', 3.3],
    ['-3296', -3.296],
    ['\u22123296', -3.296],
    ['50', 5],
  ])('offers %s with its point after the first digit, and takes nothing by itself', (text, value) => {
    expect(readCellFigure('bmsVoltageV', text)).toEqual({ kind: 'offer', value });
  });

  it.each(['12.8', '5.001', '51', '6500', '329.6'])('says of %s V that no cell has it', (text) => {
    expect(readCellFigure('voltageV', text)).toEqual({ kind: 'wrong', because: 'noCellVoltage' });
  });

  it('offers no point for a resistance: 3296 mΩ may be one', () => {
    expect(readCellFigure('resistanceMohm', '3296')).toEqual({ kind: 'value', value: 3296 });
    expect(readCellFigure('resistanceMohm', '0')).toEqual({ kind: 'wrong', because: 'notPositive' });
  });

  it('an emptied box is not zero, and words are not a number', () => {
    expect(readCellFigure('voltageV', ' ')).toEqual({ kind: 'empty' });
    expect(readCellFigure('voltageV', '3.2 or so')).toEqual({ kind: 'wrong', because: 'notANumber' });
  });
});
