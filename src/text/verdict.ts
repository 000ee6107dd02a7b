import { VERDICTS, type VerdictName } from '../schema/verdict.ts';

export interface VerdictWords {
  title: string;
  line: string;
}

/** The verdicts, each with one line that says what it means. */
export const VERDICT_WORDS: Readonly<Record<VerdictName, VerdictWords>> = {
  stop: {
    title: 'Stop: treat as damaged',
    line: 'A sign of damage was found that ends the work. The score is withheld.',
  },
  keepOut: {
    title: 'Keep out of use',
    line: 'A high or serious risk was found that no listed remedy clears.',
  },
  workshopFirst: {
    title: 'Workshop first',
    line: 'A high or serious risk was found. It is cleared only by work inside the pack, by someone equipped for it.',
  },
  notAsItComes: {
    title: 'Not as it comes',
    line: 'A high or serious risk was found. An owner can clear it from outside, with the remedies listed.',
  },
  mindTheList: {
    title: 'No serious finding, mind the list',
    line: 'Nothing found stands above medium risk. The findings listed are still worth putting right.',
  },
  noFinding: {
    title: 'No finding on this sample',
    line: 'No item that was looked at was graded weak or failed.',
  },
};

export const UNSETTLED_TITLE = 'Unsettled';

/**
 * Words for a verdict at both ends. Where the ends differ it is unsettled, and both are named, worse first.
 */
export function verdictWords(verdict: { low: VerdictName; high: VerdictName }): VerdictWords & { settled: boolean } {
  const low = VERDICT_WORDS[verdict.low];
  if (verdict.low === verdict.high) return { ...low, settled: true };
  const high = VERDICT_WORDS[verdict.high];
  return {
    title: UNSETTLED_TITLE,
    line: `“${low.title}” at worst, “${high.title}” at best: open items decide which.`,
    settled: false,
  };
}

/** How many steps lie between two verdicts. */
export function verdictSteps(low: VerdictName, high: VerdictName): number {
  return VERDICTS.indexOf(high) - VERDICTS.indexOf(low);
}
