/** Our choice: instruments hold a voltage within 0.2 %; coarse meters show it within one step either way. */
const HELD_FRAC = 0.002;
/** Our choice: a current that has left its level by 3 % is no longer held. */
const LEFT_LEVEL_FRAC = 0.03;
/** Our choice: over a hold the current falls by a tenth at least; a load of constant resistance does not let it. */
const LEAST_FALL_FRAC = 0.1;
const FEWEST_ROWS = 3;

/**
 * Where, in one loaded piece, a hold at constant voltage begins: from there on the voltage stays within 0.2 % of its
 * last value while the current falls away. `null` where there is none; 0 where the whole piece is one.
 */
export function holdStart(voltageV: Float64Array, currentA: Float64Array): number | null {
  const count = voltageV.length;
  if (count < FEWEST_ROWS) return null;
  const heldV = medianOf(voltageV.subarray(Math.max(0, count - 9)));
  const tolerance = Math.max(HELD_FRAC * Math.abs(heldV), 1.01 * stepNear(voltageV, heldV));
  let from = count;
  while (from > 0 && Math.abs((voltageV[from - 1] as number) - heldV) <= tolerance) from--;
  if (count - from < FEWEST_ROWS) return null;
  // Before it the current stood at a level; a row or two of settling are no level.
  if (from > 2) {
    const levelA = medianOf(currentA.subarray(Math.max(0, from - 99), from).map(Math.abs));
    while (from < count && Math.abs(currentA[from] as number) > (1 - LEFT_LEVEL_FRAC) * levelA) from++;
  } else from = 0;
  if (count - from < FEWEST_ROWS) return null;
  const [firstA, lastA] = [Math.abs(currentA[from] as number), Math.abs(currentA[count - 1] as number)];
  return lastA <= (1 - LEAST_FALL_FRAC) * firstA ? from : null;
}

/** The smallest change near the held voltage, so that a reading of two decimals may flicker between two of them. */
function stepNear(voltageV: Float64Array, heldV: number): number {
  let least = 0;
  for (let at = Math.max(1, voltageV.length - 50); at < voltageV.length; at++) {
    const step = Math.abs((voltageV[at] as number) - (voltageV[at - 1] as number));
    if (step > 1e-6 && step < 0.01 * Math.abs(heldV) && (least === 0 || step < least)) least = step;
  }
  return least;
}

function medianOf(values: Float64Array): number {
  const sorted = values.toSorted();
  return sorted[sorted.length >> 1] as number;
}
