export interface CurrentSamples {
  timeS: ArrayLike<number>;
  currentA: ArrayLike<number>;
}

/**
 * Charge that flowed over a logged run, by the trapezoidal rule on the current.
 *
 * Shape   two arrays of one length n ≥ 1 in, one number out; a single sample is no charge.
 * Units   s, A in; Ah out. Signed as the current is.
 * Error   each step of width h is off by h³/12·i″ somewhere inside it; none where i is straight. Equal stamps add nothing.
 * Throws  RangeError if lengths differ, n < 1, a value is not finite or time falls.
 * Source  NIST DLMF eq. 3.5.1
 * Check   tests/calc/charge-from-samples.test.ts
 */
export function chargeFromSamplesAh({ timeS, currentA }: CurrentSamples): number {
  requireSamples('chargeFromSamplesAh', timeS, [currentA]);
  let beforeS = timeS[0] ?? 0;
  let beforeA = currentA[0] ?? 0;
  let doubleAs = 0;
  for (let at = 1; at < timeS.length; at++) {
    const nowS = timeS[at] ?? 0;
    const nowA = currentA[at] ?? 0;
    doubleAs += (nowS - beforeS) * (nowA + beforeA);
    beforeS = nowS;
    beforeA = nowA;
  }
  return doubleAs / 2 / 3600;
}

/** The contract the integrals share: arrays of one length, finite, in order of time. */
export function requireSamples(name: string, timeS: ArrayLike<number>, series: readonly ArrayLike<number>[]): void {
  if (timeS.length < 1) throw new RangeError(`${name}: needs at least one sample, got none`);
  for (const values of series) {
    if (values.length !== timeS.length) {
      throw new RangeError(`${name}: arrays must have one length, got ${timeS.length} and ${values.length}`);
    }
    requireFinite(name, values);
  }
  requireFinite(name, timeS);
  for (let at = 1; at < timeS.length; at++) {
    if ((timeS[at] ?? 0) < (timeS[at - 1] ?? 0)) {
      throw new RangeError(`${name}: time must not fall, got ${timeS[at]} after ${timeS[at - 1]}`);
    }
  }
}

function requireFinite(name: string, values: ArrayLike<number>): void {
  for (let at = 0; at < values.length; at++) {
    if (!Number.isFinite(values[at])) throw new RangeError(`${name}: values must be finite, got ${values[at]}`);
  }
}
