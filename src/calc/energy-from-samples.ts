import { requireSamples } from './charge-from-samples.ts';

export interface PowerSamples {
  timeS: ArrayLike<number>;
  voltageV: ArrayLike<number>;
  currentA: ArrayLike<number>;
}

/**
 * Energy delivered over a logged run, by the trapezoidal rule on p = v·i.
 *
 * Shape   three arrays of one length n ≥ 1 in, one number out; a single sample is no energy.
 * Units   s, V, A in; Wh out. Negative means the load gave energy back.
 * Error   each step of width h is off by h³/12·p″ somewhere inside it; none where p is straight. Equal stamps add nothing.
 * Throws  RangeError if lengths differ, n < 1, a value is not finite or time falls.
 * Source  NIST DLMF eq. 3.5.1
 * Check   tests/calc/energy-from-samples.test.ts
 */
export function energyFromSamplesWh({ timeS, voltageV, currentA }: PowerSamples): number {
  requireSamples('energyFromSamplesWh', timeS, [voltageV, currentA]);
  let beforeS = timeS[0] ?? 0;
  let beforeW = (voltageV[0] ?? 0) * (currentA[0] ?? 0);
  let doubleWs = 0;
  for (let at = 1; at < timeS.length; at++) {
    const nowS = timeS[at] ?? 0;
    const nowW = (voltageV[at] ?? 0) * (currentA[at] ?? 0);
    doubleWs += (nowS - beforeS) * (nowW + beforeW);
    beforeS = nowS;
    beforeW = nowW;
  }
  return doubleWs / 2 / 3600;
}
