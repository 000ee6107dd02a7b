import { expect, it } from 'vitest';
import { RUN_ENDS } from '../../src/calc/run-end-name.ts';
import { RUN_END_CHOICES } from '../../src/schema/live-tests/run.ts';

it('names the same 5 ways of ending as the stored shape of a run', () => {
  expect([...RUN_END_CHOICES]).toEqual([...RUN_ENDS]);
  expect(RUN_ENDS).toHaveLength(5);
});
