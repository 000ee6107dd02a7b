import { expect, it } from 'vitest';
import { momentAfterMs } from '../../src/record/moment-after.ts';

const newestAt = `000000000005000.000007.${'d'.repeat(32)}`;

it.each([
  ['the clock is on', 6000, 6000],
  ['the clock was set back', 1000, 5000],
])('after a record of 5000 ms, when %s: %i ms come to %i ms', (_, nowMs, expected) => {
  expect(momentAfterMs({ newestAt }, nowMs)).toBe(expected);
});

it('is the clock where the record holds nothing', () => {
  expect(momentAfterMs({ newestAt: null }, 1000)).toBe(1000);
});
