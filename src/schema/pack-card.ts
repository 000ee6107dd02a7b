import type { Outcome } from './grade.ts';
import type { VerdictName } from './verdict.ts';

/** What the Bench list shows of a pack without reading its record. Written in the same transaction as the entries. */
export interface PackCard {
  packId: string;
  demo: boolean;
  name: string;
  sample: string;
  /** Screen the pack has come to; words for it are in text/. */
  stage:
    | 'nameplate'
    | 'arrival'
    | 'liveTests'
    | 'makeSafe'
    | 'untouched'
    | 'liveOpen'
    | 'apart'
    | 'sheet'
    | 'afterwards';
  route: 'short' | 'whole';
  settledCount: number;
  askedCount: number;
  /** Null while nothing applies or a stop item withholds the score. */
  score: { low: number; high: number; settled: boolean } | null;
  verdict: { low: VerdictName; high: VerdictName };
  worst: Outcome | null;
  /** Photo for the list, if there is one. */
  photoId: string | null;
  photoCount: number;
  changedAtMs: number;
  /** The revision its sheet is closed as; absent while it is not closed, and on cards of earlier versions. */
  closed?: number;
  /** The pack was put away; Keep can bring it back. */
  gone: boolean;
}
