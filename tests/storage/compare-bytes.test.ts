import { expect, it } from 'vitest';
import { bytesOf } from './open-test-store.ts';

it('tells 300 bytes from 300 others and from 299 of the same, wherever a storage test compares them', () => {
  const kept = { type: 'text/plain', bytes: bytesOf(300, 1) };
  expect(kept).toEqual({ type: 'text/plain', bytes: bytesOf(300, 1) });
  expect(kept).not.toEqual({ type: 'text/plain', bytes: bytesOf(300, 2) });
  expect(kept).not.toEqual({ type: 'text/plain', bytes: bytesOf(299, 1) });
  expect([kept]).not.toMatchObject([{ bytes: bytesOf(300, 2) }]);
});
