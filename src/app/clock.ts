import { signal } from '@preact/signals';

/** The time, to the half minute: what on the screen depends on it follows. */
export const nowMs = signal(Date.now());
setInterval(() => {
  nowMs.value = Date.now();
}, 30_000);

/** Minutes that the phone's clock is ahead of UTC at a moment. */
export function utcOffsetMinutes(atMs: number): number {
  return -new Date(atMs).getTimezoneOffset();
}
