import { describe, expect, it } from 'vitest';
import { logAxisTicks } from '../../../src/drawing/plots/log-axis-ticks.ts';
import { logScale } from '../../../src/drawing/plots/log-scale.ts';
import { logFrame, logTicks } from '../../../src/drawing/plots/log-ticks.ts';

describe('logTicks', () => {
  it('has 10 ticks from 1 to 1000, 4 of them decades', () => {
    const ticks = logTicks({ low: 1, high: 1000 });
    expect(ticks.map((tick) => tick.value)).toEqual([1, 2, 5, 10, 20, 50, 100, 200, 500, 1000]);
    expect(ticks.filter((tick) => tick.isDecade).map((tick) => tick.value)).toEqual([1, 10, 100, 1000]);
  });

  it('has 0.05, 0.1, 0.2 and 0.5 between 0.03 and 0.6, without noise', () => {
    expect(logTicks({ low: 0.03, high: 0.6 }).map((tick) => tick.value)).toEqual([0.05, 0.1, 0.2, 0.5]);
  });

  it.each([
    [0, 1],
    [-1, 1],
    [2, 2],
    [5, 2],
    [1, Infinity],
    [Number.NaN, 2],
  ])('refuses the range %d … %d', (low, high) => {
    expect(() => logTicks({ low, high })).toThrow(RangeError);
  });
});

describe('logFrame', () => {
  it.each([
    [89, 1790, 50, 2000],
    [0.02, 96, 0.02, 100],
    // One value: widened until the ends are at least fourfold.
    [150, 150, 50, 500],
    [100, 100, 50, 200],
  ])('moves %d … %d out to %d … %d', (low, high, from, to) => {
    expect(logFrame({ low, high })).toEqual({ low: from, high: to });
  });
});

describe('logScale', () => {
  it('puts 10 a third of the way from 1 to 1000, and 31.62 midway', () => {
    const place = logScale({ low: 1, high: 1000 }, 100, 400);
    expect(place(1)).toBeCloseTo(100, 9);
    expect(place(10)).toBeCloseTo(200, 9);
    expect(place(Math.sqrt(1000))).toBeCloseTo(250, 9);
    expect(place(1000)).toBeCloseTo(400, 9);
  });

  it.each([0, -1, Number.NaN])('has no place for %d', (value) => {
    expect(() => logScale({ low: 1, high: 10 }, 0, 100)(value)).toThrow(RangeError);
  });

  it('refuses a range that begins at 0', () => {
    expect(() => logScale({ low: 0, high: 10 }, 0, 100)).toThrow(RangeError);
  });
});

describe('logAxisTicks', () => {
  const shown = (length: number) =>
    logAxisTicks({
      range: { low: 1, high: 100 },
      scale: logScale({ low: 1, high: 100 }, 0, length),
      say: String,
      lengthOf: () => 20,
    }).flatMap((tick) => tick.text ?? []);

  it('writes 1, 2, 5 … 100 on a long axis, and 1, 10 and 100 alone where 20 units each do not fit', () => {
    // The narrowest pair, 1 and 2, stands log10(2)/2 = 0.151 of the length apart: 20 units from 133 units on.
    expect(shown(140)).toEqual(['1', '2', '5', '10', '20', '50', '100']);
    expect(shown(130)).toEqual(['1', '10', '100']);
  });
});
