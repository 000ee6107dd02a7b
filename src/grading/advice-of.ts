import type { Judged } from './judged.ts';
import { fuseResult } from './live-tests/fuse-result.ts';
import type { Advice } from './relief.ts';

/** What the live tests tell of whether a remedy can be carried out. Without them it is not yet known. */
export function adviceOf({ nameplate = {}, tests }: Judged): Advice {
  return { fuseFits: tests === undefined ? null : fuseResult({ nameplate, tests }).advice.fits };
}
