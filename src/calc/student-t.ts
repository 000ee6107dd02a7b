import { requirePositive } from './rated-energy.ts';
import { requireFinite } from './require-finite.ts';

/**
 * The t that Student's distribution exceeds with the given probability.
 *
 * Shape   probability in (0, ½], degrees of freedom > 0 in; t ≥ 0 out.
 * Error   bisection to the last bit; the tail itself is good to about 1e-13 of its value.
 * Throws  RangeError outside those ranges.
 * Source  inverse of studentTUpperTail
 * Check   tests/calc/grubbs.test.ts
 */
export function studentTCritical(upperTail: number, freedom: number): number {
  if (!(upperTail > 0 && upperTail <= 0.5)) {
    throw new RangeError(`studentTCritical: upperTail must be over 0 and up to 0.5, got ${upperTail}`);
  }
  let low = 0;
  let high = 1;
  while (studentTUpperTail(high, freedom) > upperTail) {
    low = high;
    high *= 2;
  }
  for (let step = 0; step < 100; step++) {
    const middle = (low + high) / 2;
    if (studentTUpperTail(middle, freedom) > upperTail) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Probability that Student's t exceeds a value of 0 or more: ½ · I(ν / (ν + t²); ν/2, ½).
 *
 * Throws  RangeError if t is negative or not finite, or the degrees of freedom are not positive.
 * Source  NIST DLMF 8.17 (regularised incomplete beta function); Abramowitz and Stegun 26.7.1
 * Check   tests/calc/grubbs.test.ts
 */
export function studentTUpperTail(t: number, freedom: number): number {
  requireFinite('studentTUpperTail: t', t);
  requirePositive('studentTUpperTail: freedom', freedom);
  if (t < 0) throw new RangeError(`studentTUpperTail: t must be 0 or more, got ${t}`);
  return incompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5) / 2;
}

/** Regularised incomplete beta function; the complement is used where the fraction converges slowly. */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const logFront = a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b);
  return (Math.exp(logFront) / a) * betaFraction(x, a, b);
}

/** Continued fraction DLMF 8.17.22, by Lentz's method. Ends when a factor is 1 to the last bits. */
function betaFraction(x: number, a: number, b: number): number {
  const TINY = 1e-300;
  let numerator = 1;
  let denominator = 1 / awayFromZero(1 - ((a + b) * x) / (a + 1), TINY);
  let fraction = denominator;
  for (let m = 1; m < 500; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    let factor = 1;
    for (const term of [even, odd]) {
      denominator = 1 / awayFromZero(1 + term * denominator, TINY);
      numerator = awayFromZero(1 + term / numerator, TINY);
      factor = numerator * denominator;
      fraction *= factor;
    }
    if (Math.abs(factor - 1) < 2 * Number.EPSILON) break;
  }
  return fraction;
}

function awayFromZero(value: number, tiny: number): number {
  return Math.abs(value) < tiny ? tiny : value;
}

/** Lanczos' approximation, g = 7, nine terms (P. Godfrey's coefficients), good to 1e-15 for the arguments here. */
function logGamma(x: number): number {
  const shifted = x - 1;
  let sum = 0.9999999999998099;
  LANCZOS.forEach((coefficient, index) => {
    sum += coefficient / (shifted + index + 1);
  });
  const base = shifted + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(base) - base + Math.log(sum);
}

const LANCZOS = [
  676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406, 12.507343278686905,
  -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
];
