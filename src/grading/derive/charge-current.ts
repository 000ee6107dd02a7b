import { CHARGE_CURRENT_HELD_S } from '../../calc/charge-current-cut-off.ts';
import type { CutOff } from '../../schema/live-tests/cut-off.ts';
import type { Derivation } from './derivation.ts';
import { exactly } from './figure.ts';
import { actedByBms, type Trial, thresholdFigures } from './threshold.ts';

/** Times the claimed charge current at which the BMS ended a charge. Without the claim nothing can be told. */
export const chargeCurrent: Derivation = ({ tests, nameplate }) => {
  const claimA = nameplate.chargeCurrentA;
  if (claimA === undefined) return null;
  const trials = tests.cutOffs.filter(({ kind }) => kind === 'chargeCurrent');
  const figures = thresholdFigures(
    trials.flatMap((trial) => trialOf(trial, claimA)),
    'higher',
  );
  return figures.length === 0 ? null : { alternatives: [figures.map((figure) => ({ case: 'any', figure }))] };
};

/**
 * A current let in for a minute was let in, whatever ended it after. One ended sooner, not by the BMS, or after a time
 * that nobody noted, tells nothing.
 */
function trialOf(cutOff: CutOff, claimA: number): Trial[] {
  const { currentA, afterS } = cutOff;
  if (currentA === undefined) return [];
  const acted = actedByBms(cutOff) && (afterS === undefined || afterS <= CHARGE_CURRENT_HELD_S);
  if (!acted && (afterS === undefined || afterS < CHARGE_CURRENT_HELD_S)) return [];
  return [{ acted, at: exactly(currentA / claimA) }];
}
