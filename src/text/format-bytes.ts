import { formatFixed } from './format-number.ts';
import { withUnit } from './format-unit.ts';

/** A count of bytes in decimal units (kB = 1000 bytes), to one decimal from 1 MB on. */
export function formatBytes(byteCount: number): string {
  if (byteCount < 1000) return withUnit(formatFixed(byteCount, 0), 'B');
  if (byteCount < 1e6) return withUnit(formatFixed(byteCount / 1e3, 0), 'kB');
  if (byteCount < 1e9) return withUnit(formatFixed(byteCount / 1e6, 1), 'MB');
  return withUnit(formatFixed(byteCount / 1e9, 1), 'GB');
}
