import type { PageFrame } from './paper.ts';
import type { Typeface } from './typeface.ts';

/** What every layout needs to turn a block into chunks. */
export interface Desk {
  typeface: Typeface;
  frame: PageFrame;
}
