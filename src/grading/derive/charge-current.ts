import type { Derivation } from './derivation.ts';
import { exactly } from './figure.ts';
import { thresholdFigures } from './threshold.ts';

/** Times the claimed charge current at which the BMS ended a charge. Without the claim nothing can be told. */
export const chargeCurrent: Derivation = ({ tests, nameplate }) => {
  const claimA = nameplate.chargeCurrentA;
  if (claimA === undefined) return null;
  const trials = tests.cutOffs.flatMap(({ kind, acted, currentA }) =>
    kind === 'chargeCurrent' && currentA !== undefined ? [{ acted, at: exactly(currentA / claimA) }] : [],
  );
  const figures = thresholdFigures(trials, 'higher');
  return figures.length === 0 ? null : { alternatives: [figures.map((figure) => ({ case: 'any', figure }))] };
};
