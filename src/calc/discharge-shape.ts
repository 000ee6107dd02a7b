/** A flatter middle is taken as this, so that a coarse voltage does not make every slope a knee. Share of V per run. */
const FLATTEST_MIDDLE = 0.005;

/**
 * Shape of a discharge curve towards its end, as shares of the voltage half-way, so that it is the same for a cell and
 * for a pack of any number of cells in series. `null` where the voltage half-way is not positive.
 *
 * Shape   samples in order of time, the first `count` of them; their last voltage and span of time given.
 * Error   voltages between samples lie on the straight line.
 * Source  our choice
 * Check   tests/calc/run-end.test.ts
 */
export function dischargeShape(
  timeS: ArrayLike<number>,
  voltageV: ArrayLike<number>,
  { count, lastVoltageV, spanS }: { count: number; lastVoltageV: number; spanS: number },
) {
  const v = (frac: number) => voltageAt(timeS, voltageV, { frac, count });
  const middleVoltageV = v(0.5);
  if (!(middleVoltageV > 0)) return null;
  const middleSlope = Math.max((v(0.4) - v(0.8)) / 0.4 / middleVoltageV, FLATTEST_MIDDLE);
  const lastSlope = Math.max((v(0.97) - lastVoltageV) / 0.03, (v(0.99) - lastVoltageV) / 0.01) / middleVoltageV;
  const straightV = v(0.85) - ((v(0.6) - v(0.85)) / 0.25) * 0.15;
  return {
    middleVoltageV,
    dropFrac: (middleVoltageV - lastVoltageV) / middleVoltageV,
    bendFrac: (straightV - lastVoltageV) / middleVoltageV,
    slopeRatio: lastSlope / middleSlope,
    lastSlopeMvPerS: ((lastVoltageV - v(0.97)) * 1000) / (0.03 * spanS),
  };
}

/** Voltage at a share of the time of the first `count` samples, on the straight line between its neighbours. */
export function voltageAt(
  timeS: ArrayLike<number>,
  voltageV: ArrayLike<number>,
  { frac, count }: { frac: number; count: number },
): number {
  const firstS = timeS[0] ?? 0;
  const wantedS = firstS + frac * ((timeS[count - 1] ?? 0) - firstS);
  let low = 0;
  let high = count - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((timeS[middle] ?? 0) <= wantedS) low = middle;
    else high = middle;
  }
  const [lowS, highS] = [timeS[low] ?? 0, timeS[high] ?? 0];
  const [lowV, highV] = [voltageV[low] ?? 0, voltageV[high] ?? 0];
  return highS > lowS ? lowV + ((wantedS - lowS) / (highS - lowS)) * (highV - lowV) : highV;
}
