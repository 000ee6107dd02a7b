import { describe, expect, it } from 'vitest';
import { standbyDrain } from '../../src/calc/standby-drain.ts';

describe('standbyDrain', () => {
  // Closed form: 0.01 A · 24 h = 0.24 Ah; 100 Ah / 0.24 Ah = 416.7 days.
  it('takes 0.24 Ah a day at 10 mA, and 416.7 days for 100 Ah', () => {
    const { drainAhPerDay, daysToFlat } = standbyDrain({ currentMa: 10, capacityAh: 100 });
    expect(drainAhPerDay).toBeCloseTo(0.24, 12);
    expect(daysToFlat).toBeCloseTo(416.6667, 4);
  });

  it('names no day where no current was read', () => {
    expect(standbyDrain({ currentMa: 0, capacityAh: 100 })).toEqual({ drainAhPerDay: 0, daysToFlat: null });
  });

  it.each([
    { currentMa: -1, capacityAh: 100 },
    { currentMa: Number.NaN, capacityAh: 100 },
    { currentMa: 10, capacityAh: 0 },
  ])('refuses %o', (given) => {
    expect(() => standbyDrain(given)).toThrow(RangeError);
  });
});
