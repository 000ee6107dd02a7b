import type { Derivation, DeriveFrom } from './derivation.ts';
import type { Derived } from './figure.ts';
import { actedByBms, type Trial, thresholdFigures, worstCell } from './threshold.ts';

/** Volts of the highest cell when the BMS ended a charge. A charger or a hand that stopped first tried nothing. */
export const highVoltage: Derivation = (from) => voltageCut(from, 'highVoltage');

/** Volts of the lowest cell when the BMS ended a run. */
export const lowVoltage: Derivation = (from) => voltageCut(from, 'lowVoltage');

function voltageCut({ tests, nameplate }: DeriveFrom, kind: 'highVoltage' | 'lowVoltage'): Derived | null {
  const side = kind === 'highVoltage' ? 'highest' : 'lowest';
  const trials = tests.cutOffs
    .filter((cutOff) => cutOff.kind === kind)
    .flatMap((cutOff): Trial[] => {
      const at = worstCell(cutOff, nameplate.cellsInSeries, side);
      return at === null ? [] : [{ acted: actedByBms(cutOff), at }];
    });
  const figures = thresholdFigures(trials, kind === 'highVoltage' ? 'higher' : 'lower');
  if (figures.length === 0) return null;
  return { alternatives: [figures.map((figure) => ({ case: 'any', figure }))] };
}
