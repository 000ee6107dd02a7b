import { describe, expect, it } from 'vitest';
import { sharingBars } from '../../../src/drawing/sharing-bars.ts';
import { nothing, sharingInput } from './plot-samples.ts';
import { boxesOf, linesOf, middleOf, textOf, textsOf } from './read-drawing.ts';

const bars = (drawing: ReturnType<typeof sharingBars>) => boxesOf(drawing).filter((box) => box.fill === 'ink');

describe('sharingBars', () => {
  it('draws 60 % twice as long as 30 %, from 0', () => {
    const [most, some] = bars(sharingBars(sharingInput([0.6, 0.3, 0.1])));
    expect(most!.shape.width / some!.shape.width).toBeCloseTo(2, 9);
    expect(most!.shape.x).toBe(some!.shape.x);
  });

  it('stands the equal share of 4 strings at 25 %: a quarter between 20 % and 40 %', () => {
    const drawing = sharingBars(sharingInput([0.4, 0.2, 0.2, 0.2]));
    const equal = linesOf(drawing).find((line) => line.stroke.dash !== undefined)!;
    const [x20, x40] = ['20 %', '40 %'].map((text) => middleOf(textOf(drawing, text)).x);
    expect(equal.points[0]![0]).toBeCloseTo(x20! + (x40! - x20!) / 4, 6);
    expect(textOf(drawing, 'equal share').ink).toBe('ink');
  });

  it('draws a string that was not read as a dashed place', () => {
    const drawing = sharingBars(sharingInput([0.5, null]));
    expect(bars(drawing)).toHaveLength(1);
    expect(boxesOf(drawing).filter((box) => box.stroke?.dash !== undefined)).toHaveLength(1);
    expect(textOf(drawing, 'not read').text).toBe('not read');
  });

  it('draws an empty frame without strings', () => {
    expect(textsOf(sharingBars(sharingInput([]))).map((text) => text.text)).toEqual([nothing]);
  });

  it.each([Number.NaN, Infinity, -0.1])('refuses a share of %d', (share) => {
    expect(() => sharingBars(sharingInput([0.5, share]))).toThrow(RangeError);
  });
});
