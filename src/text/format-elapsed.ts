const S_PER_MIN = 60;
const S_PER_H = 3600;

/** A time since a start, down to whole seconds as a clock shows it: "0:07", "12:34", "1:02:03", "−0:05". */
export function formatElapsed(elapsedMs: number): string {
  const { sign, hours, minutes, seconds } = partsOf(elapsedMs);
  return hours > 0 ? `${sign}${hours}:${two(minutes)}:${two(seconds)}` : `${sign}${minutes}:${two(seconds)}`;
}

/** The same with two digits of minutes, so that a running clock keeps its width for the first hour: "00:07". */
export function formatRunning(elapsedMs: number): string {
  const { sign, hours, minutes, seconds } = partsOf(elapsedMs);
  return `${sign}${hours > 0 ? `${hours}:` : ''}${two(minutes)}:${two(seconds)}`;
}

/** Seconds with their sign, to the millisecond: "+12.5 s", "−3 s", "0 s". */
export function formatShiftS(shiftMs: number): string {
  const sign = shiftMs > 0 ? '+' : shiftMs < 0 ? '\u2212' : '';
  return `${sign}${Math.abs(shiftMs) / 1000}\u00a0s`;
}

function partsOf(elapsedMs: number) {
  if (!Number.isFinite(elapsedMs)) throw new RangeError(`formatElapsed: elapsedMs must be finite, got ${elapsedMs}`);
  const wholeS = Math.floor(Math.abs(elapsedMs) / 1000);
  return {
    sign: elapsedMs < 0 && wholeS > 0 ? '\u2212' : '',
    hours: Math.floor(wholeS / S_PER_H),
    minutes: Math.floor((wholeS % S_PER_H) / S_PER_MIN),
    seconds: wholeS % S_PER_MIN,
  };
}

function two(count: number): string {
  return String(count).padStart(2, '0');
}
