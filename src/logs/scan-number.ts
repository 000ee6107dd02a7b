/** Exact powers of ten in a double. */
const POWERS = Float64Array.from({ length: 23 }, (_, power) => Number(`1e${power}`));

/** Where the last scan stopped: on the separator or the line end behind the number, or -1 if this is no plain number. */
export let scanEnd = 0;

export interface CellMarks {
  separator: number;
  decimalMark: number;
  lineEnd: number;
}

/**
 * Reads a number straight from the bytes of a cell, correctly rounded: the digits fit a double exactly, and so does the
 * power of ten (Clinger 1990, "How to read floating point numbers accurately", fast path). Anything else, and anything
 * that is no plain number, gives -1 in `scanEnd` and is read the slow way. The bytes must end with a line end.
 *
 * Check   tests/logs/scan-number.test.ts
 */
export function scanNumber(bytes: Uint8Array, from: number, marks: CellMarks): number {
  const { separator, decimalMark, lineEnd } = marks;
  let at = from;
  let byte = bytes[at] as number;
  while (byte === 32 && separator !== 32) byte = bytes[++at] as number;
  const quoted = byte === 34;
  if (quoted) byte = bytes[++at] as number;
  const negative = byte === 45;
  if (negative || byte === 43) byte = bytes[++at] as number;
  let digits = 0;
  let started = at;
  while (byte >= 48 && byte <= 57) {
    digits = digits * 10 + (byte - 48);
    byte = bytes[++at] as number;
  }
  let places = at - started;
  let power = 0;
  if (byte === decimalMark) {
    byte = bytes[++at] as number;
    started = at;
    while (byte >= 48 && byte <= 57) {
      digits = digits * 10 + (byte - 48);
      byte = bytes[++at] as number;
    }
    power = started - at;
    places += at - started;
  }
  if ((byte === 69 || byte === 101) && places > 0) {
    byte = bytes[++at] as number;
    const down = byte === 45;
    if (down || byte === 43) byte = bytes[++at] as number;
    started = at;
    let exponent = 0;
    while (byte >= 48 && byte <= 57 && exponent < 10_000) {
      exponent = exponent * 10 + (byte - 48);
      byte = bytes[++at] as number;
    }
    if (at === started) places = 0;
    power += down ? -exponent : exponent;
  }
  if (quoted) {
    if (byte !== 34) places = 0;
    byte = bytes[++at] as number;
  }
  while ((byte === 32 || byte === 13 || byte === 9) && byte !== separator && byte !== lineEnd)
    byte = bytes[++at] as number;
  if (
    places === 0 ||
    digits > Number.MAX_SAFE_INTEGER ||
    power > 22 ||
    power < -22 ||
    (byte !== separator && byte !== lineEnd)
  ) {
    scanEnd = -1;
    return Number.NaN;
  }
  scanEnd = at;
  const size = power < 0 ? digits / (POWERS[-power] as number) : digits * (POWERS[power] as number);
  return negative ? -size : size;
}
