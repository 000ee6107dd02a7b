import { describe, expect, it } from 'vitest';
import { type Placed, standsAbove } from '../../../src/grading/side-by-side/stands-above.ts';
import type { VerdictName } from '../../../src/schema/verdict.ts';

const settled = (verdict: VerdictName, low: number, high = low): Placed => ({
  verdict: { low: verdict, high: verdict, settled: true },
  score: { low, high },
});
const between = (low: VerdictName, high: VerdictName, score: number): Placed => ({
  verdict: { low, high, settled: false },
  score: { low: score, high: score },
});

/** DESIGN §5, "Side by side". */
describe('x stands above y', () => {
  it.each<[string, Placed, Placed, boolean, boolean]>([
    [
      'by a better verdict, though its score is 10 to 90',
      settled('notAsItComes', 10),
      settled('keepOut', 90),
      true,
      false,
    ],
    [
      'by a worst verdict better than the best one',
      between('mindTheList', 'noFinding', 5),
      between('stop', 'notAsItComes', 9),
      true,
      false,
    ],
    [
      'not where the verdicts touch',
      between('mindTheList', 'noFinding', 90),
      between('stop', 'mindTheList', 10),
      false,
      false,
    ],
    ['by score, 60.1 to 60', settled('keepOut', 60.1), settled('keepOut', 60), true, false],
    ['not at 60 to 60', settled('keepOut', 60), settled('keepOut', 60), false, false],
    ['by ranges apart, 61–70 to 50–60', settled('keepOut', 61, 70), settled('keepOut', 50, 60), true, false],
    ['not where ranges touch, 60–70 to 50–60', settled('keepOut', 60, 70), settled('keepOut', 50, 60), false, false],
    [
      'not by score while one verdict is open',
      between('keepOut', 'workshopFirst', 90),
      settled('keepOut', 10),
      false,
      false,
    ],
  ])('%s', (_name, x, y, above, below) => {
    expect(standsAbove(x, y)).toBe(above);
    expect(standsAbove(y, x)).toBe(below);
  });
});
