import { signal } from '@preact/signals';

const KEY = 'underlid.notSaved';

/** What could not be saved before the page was loaded again, as text; null when there is none. */
export const leftBehind = signal<string | null>(null);

/** Holds the text over a reload of this tab. False where the browser refuses. */
export function leaveBehind(text: string): boolean {
  try {
    sessionStorage.setItem(KEY, text);
    return true;
  } catch (error) {
    console.warn('left behind: not held over the reload', error);
    return false;
  }
}

export function findLeftBehind(): void {
  try {
    leftBehind.value = sessionStorage.getItem(KEY);
  } catch (error) {
    console.warn('left behind: not readable', error);
  }
}

export function doneWithLeftBehind(): void {
  leftBehind.value = null;
  try {
    sessionStorage.removeItem(KEY);
  } catch (error) {
    console.warn('left behind: not removed', error);
  }
}
