import type { Draws } from './firmness.ts';
import type { Firmness, FirmnessInput } from './side-by-side.ts';

/** What the page and the firmness worker say to each other. One worker does one job; to cancel it, it is ended. */
export interface FirmnessJob {
  input: FirmnessInput;
  options: Draws;
}

export type FirmnessAnswer = { ok: true; firmness: Firmness } | { ok: false; because: string };
