import { expect, it } from 'vitest';
import { VERDICTS } from '../../src/schema/verdict.ts';
import { VERDICT_WORDS, verdictSteps, verdictWords } from '../../src/text/verdict.ts';

// DESIGN §5, worst first.
it('names the six verdicts in the fixed words, worst first', () => {
  expect(VERDICTS.map((name) => VERDICT_WORDS[name].title)).toEqual([
    'Stop: treat as damaged',
    'Keep out of use',
    'Workshop first',
    'Not as it comes',
    'No serious finding, mind the list',
    'No finding on this sample',
  ]);
});

it('says Unsettled and names both ends, worse first, whenever they differ', () => {
  const words = verdictWords({ low: 'workshopFirst', high: 'mindTheList' });
  expect(words.title).toBe('Unsettled');
  expect(words.settled).toBe(false);
  expect(words.line).toContain('“Workshop first” at worst, “No serious finding, mind the list” at best');
  expect(verdictWords({ low: 'keepOut', high: 'keepOut' })).toEqual({ ...VERDICT_WORDS.keepOut, settled: true });
});

it('counts 5 steps from stop to no finding and 0 between equals', () => {
  expect(verdictSteps('stop', 'noFinding')).toBe(5);
  expect(verdictSteps('keepOut', 'keepOut')).toBe(0);
});
