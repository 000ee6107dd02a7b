import type { Drawing } from './display-list.ts';
import { emptyFrame } from './plots/empty-frame.ts';

export interface SharingBar {
  label: string;
  /** Of the charge of all, 0–1; null if it was not read. */
  shareFrac: number | null;
  /** Its figure, or why there is none. */
  text: string;
}

export interface SharingBarsInput {
  width: number;
  strings: readonly SharingBar[];
  words: {
    alt: string;
    nothing: string;
    /** At the line where each would stand if all gave the same. */
    equal: string;
    tick: (shareFrac: number) => string;
  };
}

/** How much of the charge each of several strings, or packs, in parallel gave, against the equal share. */
export function sharingBars({ width, words }: SharingBarsInput): Drawing {
  return emptyFrame({ width, height: 80, alt: words.alt, nothing: words.nothing });
}
