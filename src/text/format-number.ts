/**
 * Numbers as text, the same in every engine: decimal point, narrow no-break space between groups of three from five
 * digits on, true minus sign. No Intl: its output differs between engines and years.
 */

const GROUP = '\u202f';
const MINUS = '\u2212';
/** Joins the ends of a range. */
export const RANGE_DASH = '\u2013';
/** Computed scores carry float noise far below this; it must not push a shown end outwards by a whole step. */
const NOISE = 1e-9;

/** A number with exactly `digits` decimals, half away from zero. Throws RangeError if it is not finite. */
export function formatFixed(value: number, digits: number): string {
  requireFinite('formatFixed', value);
  return dress(roundedText(Math.abs(value), digits), value < 0);
}

/** A number to so many significant digits, in plain notation; trailing zeros are kept, they are information. */
export function formatSignificant(value: number, digits: number): string {
  requireFinite('formatSignificant', value);
  if (value === 0) return '0';
  const [mantissa, power] = Math.abs(value)
    .toExponential(digits - 1)
    .split('e');
  const exponent = Number(power);
  const rounded = Number(`${mantissa}e${exponent}`);
  return dress(rounded.toFixed(Math.max(0, Math.min(100, digits - 1 - exponent))), value < 0);
}

/** A number as a person typed it: all its digits (up to 12 significant), nothing added. */
export function formatTyped(value: number): string {
  requireFinite('formatTyped', value);
  const short = Math.abs(Number(value.toPrecision(12)));
  if (short !== 0 && (short < 1e-6 || short >= 1e15)) return dress(short.toExponential(), value < 0);
  return dress(String(short), value < 0);
}

/** Both ends of a range, rounded outwards: the shown range never hides a part of the true one. */
export function formatRange(range: { low: number; high: number }, digits = 1): string {
  const ends = outward(range, digits);
  return `${formatFixed(ends.low, digits)}${RANGE_DASH}${formatFixed(ends.high, digits)}`;
}

/** A range rounded outwards, but one figure where both shown ends agree: for all that is not the score itself. */
export function formatSpan(range: { low: number; high: number }, digits = 1): string {
  const ends = outward(range, digits);
  return ends.low === ends.high ? formatFixed(ends.low, digits) : formatRange(range, digits);
}

/** A score: one figure, to the nearest tenth, only when it is settled; otherwise the range. */
export function formatScore(range: { low: number; high: number }, settled: boolean): string {
  return settled ? formatFixed(range.low, 1) : formatRange(range);
}

/** Low end down, high end up to so many decimals, forgiving float noise. */
export function outward(range: { low: number; high: number }, digits: number): { low: number; high: number } {
  requireFinite('outward', range.low);
  requireFinite('outward', range.high);
  const scale = 10 ** digits;
  return {
    low: Math.floor((range.low + NOISE) * scale) / scale,
    high: Math.ceil((range.high - NOISE) * scale) / scale + 0,
  };
}

/** 0.415 → "41 %"; only 1 shows as 100 % and only 0 as 0 %. */
export function formatPercent(frac: number): string {
  requireFinite('formatPercent', frac);
  const shownPct = Math.round(frac * 100);
  if (shownPct === 100 && frac < 1) return '99\u00a0%';
  if (shownPct === 0 && frac > 0) return '1\u00a0%';
  return `${formatFixed(shownPct, 0)}\u00a0%`;
}

/** Rounds the shortest decimal text of a number, not its binary value: 1.005 → 1.01, as a person expects. */
function roundedText(value: number, digits: number): string {
  const text = String(value);
  // From 1e15 on there is nothing behind the point to round, and the scaled figure would be written with an exponent.
  if (text.includes('e') || value >= 1e15) return value.toFixed(digits);
  return Number(`${Math.round(Number(`${text}e${digits}`))}e${-digits}`).toFixed(digits);
}

function dress(digits: string, negative: boolean): string {
  const [whole = '', decimals] = digits.split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, GROUP) : whole;
  const sign = negative && /[1-9]/.test(digits) ? MINUS : '';
  return sign + (decimals === undefined ? grouped : `${grouped}.${decimals}`);
}

function requireFinite(name: string, value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`${name}: value must be finite, got ${value}`);
}
