import type { WakeUp } from '../../schema/live-tests/cut-off.ts';
import type { Derivation } from './derivation.ts';

const CASES: Readonly<Record<WakeUp, string>> = {
  byItself: 'byItself',
  anyCharger: 'anyCharger',
  specialCharger: 'special',
  button: 'special',
  didNot: 'didNot',
};

/** What a pack needs to wake after it has cut itself off for want of charge. */
export const wakeUp: Derivation = ({ tests }) => {
  const readings = tests.cutOffs.flatMap(({ kind, wakeUp: how }) =>
    kind === 'lowVoltage' && how !== undefined ? [{ case: CASES[how] }] : [],
  );
  return readings.length === 0 ? null : { alternatives: [readings] };
};
