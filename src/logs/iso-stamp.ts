import type { TimeCell } from './time-cell.ts';

/**
 * The usual ISO 8601 stamp, `2026-03-26T10:00:00.123Z`, straight from the bytes: a million of them are read without a
 * million strings. Anything else gives false and is read as text. `into` is overwritten.
 */
export function isoStamp(bytes: Uint8Array, span: { from: number; to: number }, into: TimeCell): boolean {
  const { from, to } = span;
  const length = to - from;
  if (length < 19 || length > 30) return false;
  const year = 100 * two(bytes, from) + two(bytes, from + 2);
  const month = two(bytes, from + 5);
  const day = two(bytes, from + 8);
  const hours = two(bytes, from + 11);
  const minutes = two(bytes, from + 14);
  const wholeS = two(bytes, from + 17);
  const joint = bytes[from + 10];
  const marks = bytes[from + 4] === 45 && bytes[from + 7] === 45 && bytes[from + 13] === 58 && bytes[from + 16] === 58;
  if (!marks || (joint !== 84 && joint !== 32)) return false;
  if (!(year >= 1 && month >= 1 && month <= 12 && day >= 1 && day <= 28 && hours < 24 && minutes < 60 && wholeS < 61)) {
    return false;
  }
  let at = from + 19;
  let fraction = 0;
  let parts = 1;
  if (bytes[at] === 46 || bytes[at] === 44) {
    at++;
    const start = at;
    while (at < to && (bytes[at] ?? 0) >= 48 && (bytes[at] ?? 0) <= 57) {
      fraction = fraction * 10 + ((bytes[at] ?? 0) - 48);
      parts *= 10;
      at++;
    }
    if (at === start || at - start > 9) return false;
  }
  if (at < to && bytes[at] === 90) at++;
  if (at !== to) return false;
  into.days = daysFrom1970(year, month, day);
  into.seconds = hours * 3600 + minutes * 60 + wholeS + fraction / parts;
  return true;
}

/** Two figures, or NaN. */
function two(bytes: Uint8Array, at: number): number {
  const tens = (bytes[at] ?? 0) - 48;
  const ones = (bytes[at + 1] ?? 0) - 48;
  return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? tens * 10 + ones : Number.NaN;
}

/** Days of the Gregorian calendar since 1970-01-01, years counted from March so that the leap day comes last. */
function daysFrom1970(year: number, month: number, day: number): number {
  const march = month > 2 ? year : year - 1;
  const monthFromMarch = (month + 9) % 12;
  const leapDays = Math.floor(march / 4) - Math.floor(march / 100) + Math.floor(march / 400);
  return march * 365 + leapDays + Math.floor((153 * monthFromMarch + 2) / 5) + day - 719_469;
}
