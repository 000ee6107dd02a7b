import { describe, expect, it } from 'vitest';
import { timeUnitFor } from '../../../src/drawing/plots/time-unit.ts';

describe('timeUnitFor', () => {
  it.each([
    [119, 'seconds', 1],
    [120, 'minutes', 60],
    [7199, 'minutes', 60],
    [7200, 'hours', 3600],
  ] as const)('reads %d s in %s, of %d s each', (spanS, name, inS) => {
    expect(timeUnitFor(spanS)).toEqual({ name, inS });
  });
});
