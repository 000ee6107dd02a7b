import type { LiveTestSubject } from '../../schema/live-tests/live-tests.ts';

/** Subjects of live tests that are marked in a take: each stands for one test. */
export const MARKED_TESTS = [
  'run',
  'trip',
  'cutOff',
  'cellSet',
  'resistance',
  'lead',
  'joint',
  'drain',
  'parallelRun',
  'readOut',
  'cellMark',
  'ruler',
] as const satisfies readonly LiveTestSubject[];
export type MarkedTest = (typeof MARKED_TESTS)[number];
