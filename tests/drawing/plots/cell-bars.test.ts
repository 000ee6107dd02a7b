import { describe, expect, it } from 'vitest';
import { cellBars } from '../../../src/drawing/cell-bars.ts';
import { cellAxis } from '../../../src/drawing/plots/cell-axis.ts';
import { cellInput, nothing } from './plot-samples.ts';
import { boxesOf, linesOf, middleOf, textOf, textsOf } from './read-drawing.ts';

const bars = (drawing: ReturnType<typeof cellBars>) => boxesOf(drawing).filter((box) => box.fill === 'ink');
const said = (drawing: ReturnType<typeof cellBars>) => textsOf(drawing).map((text) => text.text);

describe('cellBars', () => {
  it.each([4, 8, 16, 32])('draws %d bars for as many cells, none over the next', (count) => {
    const found = bars(cellBars(cellInput(Array.from({ length: count }, (_, at) => 3.29 + at / 1000))));
    expect(found).toHaveLength(count);
    for (const [place, { shape }] of found.entries()) {
      const before = found[place - 1]?.shape;
      if (before !== undefined) expect(shape.y).toBeGreaterThan(before.y + before.height);
    }
  });

  it('shows 41 mV on an axis from 3.24 to 3.32 V, not from 0, and says and draws that', () => {
    // 40 % of the spread of 0.041 V below 3.260 V is 3.2436; steps of 0.02 V frame 3.2436 … 3.301.
    const drawing = cellBars(cellInput([3.26, 3.301, 3.29, 3.296]));
    expect(said(drawing)).toEqual(expect.arrayContaining(['3.24', '3.26', '3.28', '3.30', '3.32', 'Not from 0']));
    expect(said(drawing)).not.toContain('0.00');
    // One cut through each of four bars, and the two strokes with their gap through the axis.
    expect(linesOf(drawing).filter((line) => line.stroke.ink === 'ground')).toHaveLength(5);
    const [lowest] = bars(drawing);
    expect(lowest!.shape.x + lowest!.shape.width).toBeCloseTo(middleOf(textOf(drawing, '3.26')).x, 6);
  });

  it('begins at 0 where one cell is at 1.4 V beside 3.3 V, with no word of a break', () => {
    const drawing = cellBars(cellInput([1.4, 3.3, 3.3, 3.3]));
    expect(said(drawing)).not.toContain('Not from 0');
    expect(linesOf(drawing).filter((line) => line.stroke.ink === 'ground')).toHaveLength(0);
    const [first, second] = bars(drawing);
    expect(first!.shape.width / second!.shape.width).toBeCloseTo(1.4 / 3.3, 9);
  });

  it('draws a reversed cell at −0.5 V left of 0', () => {
    const drawing = cellBars(cellInput([-0.5, 3.3, 3.3, 3.3]));
    const [reversed, other] = bars(drawing);
    expect(reversed!.shape.x + reversed!.shape.width).toBeCloseTo(other!.shape.x, 9);
    expect(reversed!.shape.width / other!.shape.width).toBeCloseTo(0.5 / 3.3, 9);
  });

  it('lets 1 mV look small: under a tenth of the axis', () => {
    const { low, high } = cellAxis([3.3, 3.301]);
    expect(0.001 / (high - low)).toBeLessThan(0.1);
  });

  it('draws a cell that was not read as a dashed place with its words, and no bar', () => {
    const drawing = cellBars(cellInput([3.3, null, 3.301, 3.302]));
    expect(bars(drawing)).toHaveLength(3);
    expect(boxesOf(drawing).filter((box) => box.stroke?.dash !== undefined)).toHaveLength(1);
    expect(said(drawing)).toContain('not read');
  });

  it('hatches a flagged cell, writes it strong and explains it once', () => {
    const input = cellInput([3.3, 3.301, 3.2, 3.302]);
    const cells = input.cells.map((cell, place) => ({ ...cell, flagged: place === 2 }));
    const drawing = cellBars({ ...input, cells });
    expect(bars(drawing)).toHaveLength(3);
    expect(textOf(drawing, '3.200').weight).toBe(600);
    expect(textOf(drawing, '3.300').weight).toBe(400);
    expect(said(drawing).filter((text) => text === 'apart')).toHaveLength(1);
    expect(said(cellBars(input))).not.toContain('apart');
  });

  it('spans its bracket from the end of the lowest bar to the end of the highest', () => {
    const drawing = cellBars(cellInput([3.29, 3.301, 3.26, 3.296]));
    const bracket = linesOf(drawing).find((line) => line.points.length === 4)!;
    const ends = bars(drawing).map(({ shape }) => shape.x + shape.width);
    expect(bracket.points[0]![0]).toBeCloseTo(Math.min(...ends), 9);
    expect(bracket.points[3]![0]).toBeCloseTo(Math.max(...ends), 9);
    expect(said(drawing)).toEqual(expect.arrayContaining(['spread', 'lowest', 'highest']));
  });

  it('draws four dashed places and no axis when no cell was read', () => {
    const drawing = cellBars(cellInput([null, null, null, null]));
    expect(boxesOf(drawing)).toHaveLength(4);
    expect(said(drawing)).not.toContain('Cell voltage, V');
  });

  it('draws an empty frame without cells', () => {
    expect(said(cellBars(cellInput([])))).toEqual([nothing]);
  });

  it('refuses a value that is not finite', () => {
    expect(() => cellBars(cellInput([3.3, Number.NaN]))).toThrow(RangeError);
    expect(() => cellBars(cellInput([3.3, Infinity]))).toThrow(RangeError);
  });
});
