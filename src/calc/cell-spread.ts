import { requireFinite } from './require-finite.ts';

/**
 * Lowest and highest of the cell voltages and the difference between them.
 *
 * Shape   voltages of at least two cells in, in any order.
 * Units   V in; V and mV out. The difference is freed of binary representation noise at a picovolt, without which
 *         3.310 V − 3.300 V would be 10.0000000000002 mV and pass a limit of 10 mV.
 * Throws  RangeError if there are fewer than two cells or a value is not finite.
 * Source  definition
 * Check   tests/calc/cell-spread.test.ts
 */
export function cellSpreadMv(voltagesV: readonly number[]): { lowV: number; highV: number; spreadMv: number } {
  if (voltagesV.length < 2) throw new RangeError(`cellSpreadMv: needs at least 2 cells, got ${voltagesV.length}`);
  for (const voltageV of voltagesV) requireFinite('cellSpreadMv: voltageV', voltageV);
  const lowV = Math.min(...voltagesV);
  const highV = Math.max(...voltagesV);
  return { lowV, highV, spreadMv: Math.round((highV - lowV) * 1e12) / 1e9 };
}
