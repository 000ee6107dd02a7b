/**
 * Makes a counter that restarts (each cycle, each step, after a pause) run on, in place: a fall adds what the counter
 * shows after it. Absent readings keep the value before.
 *
 * A counter of net charge may also count down; for it only a fall to under half of a sizeable count is a restart
 * (our choice), any other is counted as it comes.
 */
export function runOnCounter(counterAh: Float64Array, count: number, net: boolean): void {
  let total = 0;
  let before = Number.NaN;
  for (let at = 0; at < count; at++) {
    const now = counterAh[at] as number;
    if (Number.isFinite(now)) {
      if (!Number.isNaN(before)) total += increase(before, now, net);
      before = now;
    }
    counterAh[at] = total;
  }
}

function increase(before: number, now: number, net: boolean): number {
  const change = now - before;
  const away = Math.abs(now) >= Math.abs(before);
  if (away || (net && Math.abs(now) > Math.abs(before) / 2)) return change;
  return now;
}
