import { describe, expect, it } from 'vitest';
import { timeGaps } from '../../src/calc/time-gaps.ts';

const everySecond = Array.from({ length: 50 }, (_, second) => second);

describe('timeGaps', () => {
  it('finds the one gap of 300 s in a log of a row a second', () => {
    const timeS = [...everySecond, ...everySecond.map((second) => second + 349)];
    expect(timeGaps(timeS)).toEqual([{ index: 49, fromS: 49, toS: 349, lengthS: 300 }]);
  });

  it('reports the gap of 300 s and not the step of 50 s beside it', () => {
    expect(timeGaps([...everySecond, 99, 399]).map(({ lengthS }) => lengthS)).toEqual([300]);
  });

  it('calls 60 s no gap and 61 s one', () => {
    expect(timeGaps([...everySecond, 109])).toEqual([]);
    expect(timeGaps([...everySecond, 110])).toHaveLength(1);
  });

  it('calls ten times the usual step no gap, a little more one, where the usual step is 30 s', () => {
    const timeS = everySecond.map((row) => 30 * row);
    expect(timeGaps([...timeS, 49 * 30 + 300])).toEqual([]);
    expect(timeGaps([...timeS, 49 * 30 + 301])).toHaveLength(1);
  });

  it('finds none in fewer than two rows', () => {
    expect(timeGaps([])).toEqual([]);
    expect(timeGaps([7])).toEqual([]);
  });

  it('refuses time that falls or is not finite', () => {
    expect(() => timeGaps([1, 0])).toThrow(RangeError);
    expect(() => timeGaps([0, Number.NaN])).toThrow(RangeError);
  });
});
