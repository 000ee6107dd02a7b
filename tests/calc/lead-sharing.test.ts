import { expect, it } from 'vitest';
import { leadSharing } from '../../src/calc/lead-sharing.ts';

it('lets 3 equal conductors share, and one alone carry all of 3 that are not, or not known to be', () => {
  expect(leadSharing({ count: 3, equal: true })).toEqual({ counted: 'sum', sharing: 3 });
  expect(leadSharing({ count: 3, equal: false })).toEqual({ counted: 'largestAlone', sharing: 1 });
  expect(leadSharing({ count: 3 })).toEqual({ counted: 'largestAlone', sharing: 1 });
});

it('counts 1 where there is 1, or no count, whatever is said of equal', () => {
  expect(leadSharing({ count: 1, equal: true })).toEqual({ counted: 'one', sharing: 1 });
  expect(leadSharing({ equal: true })).toEqual({ counted: 'one', sharing: 1 });
  expect(leadSharing({})).toEqual({ counted: 'one', sharing: 1 });
});

it.each([0, -2, 1.5, Number.NaN])('refuses a count of %d', (count) => {
  expect(() => leadSharing({ count, equal: true })).toThrow(
    new RangeError(`leadSharing: count must be a whole number from 1, got ${count}`),
  );
});
