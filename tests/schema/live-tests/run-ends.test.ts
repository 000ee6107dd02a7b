import { expect, it } from 'vitest';
import { RUN_ENDS } from '../../../src/calc/run-end-name.ts';
import { RUN_END_CHOICES } from '../../../src/schema/live-tests/run.ts';

it('stores the 5 ends of a run under the names that the calculations give them, in their order', () => {
  expect(RUN_ENDS).toHaveLength(5);
  expect(RUN_END_CHOICES).toEqual(RUN_ENDS);
});
