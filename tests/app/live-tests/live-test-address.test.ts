import { expect, it } from 'vitest';
import { readLiveTestAddress } from '../../../src/app/live-tests/live-test-address.ts';

const ID = '0123456789abcdef0123456789abcdef';

it('names a list with 1 step and a test with 2', () => {
  expect(readLiveTestAddress('trip')).toEqual({ partId: 'trip', testId: '' });
  expect(readLiveTestAddress(`trip/${ID}`)).toEqual({ partId: 'trip', testId: ID });
});

it.each(['', 'trip/short', `trip/${ID}/more`, `/${ID}`, `trip/${ID.toUpperCase()}`])('names nothing: “%s”', (text) => {
  expect(readLiveTestAddress(text)).toBeNull();
});
