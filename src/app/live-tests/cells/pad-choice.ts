import { signal } from '@preact/signals';

/** Whether figures are typed on our own pad, which has large keys, Next and a sign on every phone. */
export const padChosen = signal(true);

export function showPad(shown: boolean): void {
  padChosen.value = shown;
}

/** Fingers have no keys of their own; a mouse comes with a keyboard. */
export function padFits(): boolean {
  return matchMedia('(pointer: coarse)').matches;
}
