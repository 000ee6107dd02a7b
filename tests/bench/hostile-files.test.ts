import { expect, it } from 'vitest';
import { countHostile, hostileRows, type TestResult } from './hostile-files.ts';

const refusal = (name: string, status = 'passed'): TestResult => ({
  title: `that is ${name} is refused with its reason, and the phone is as it was, byte for byte`,
  status,
});
const taking = (name: string): TestResult => ({
  title: `that is ${name} is taken in as plain text, with what was changed`,
  status: 'passed',
});
const thrown = (title: string, status = 'passed'): TestResult => ({ title, status });

it('counts 2 refused, 1 taken in and 1 otherwise by hand, and 600 of 1500 fuzzed otherwise', () => {
  const found = countHostile([
    refusal('a bomb'),
    refusal('a name\nof two lines'),
    refusal('a text', 'failed'),
    taking('a script'),
    thrown('900 bundles: each is refused or taken in'),
    thrown('600 logs: each is refused or read', 'failed'),
    thrown('takes the sound bundle'),
  ]);
  expect(found).toEqual({
    byHand: { refused: 2, taken: 1, otherwise: 1 },
    fuzzed: { tried: 1500, otherwise: 600 },
  });
  expect(hostileRows(found).map(({ what, measured }) => [what, measured])).toEqual([
    ['hostile files tried by hand, 4', '2 refused, 1 taken in as plain text, 1 otherwise'],
    ['hostile files fuzzed, 1500', '600 otherwise'],
  ]);
});

it('throws when there is no test of a sort, rather than count none', () => {
  expect(() => countHostile([refusal('a bomb'), taking('a script')])).toThrow('tests of every sort must be there');
});
