import type { CutOff } from '../../schema/live-tests/cut-off.ts';
import type { Derivation } from './derivation.ts';
import { exactly, type Reading } from './figure.ts';
import { type Trial, thresholdFigures } from './threshold.ts';

/**
 * At what sensor temperature charging is blocked, and whether it stays so until the sensor is warmer: where nobody noted
 * when it came back, it may have come back cold. A block that came only with an ice pack on the sensor is a case of its
 * own, its temperature being that of the ice.
 */
export const coldCharge: Derivation = ({ tests }) => {
  const trials = tests.cutOffs.filter(({ kind, by }) => kind === 'coldCharge' && by !== 'thermalSwitch');
  const underIce = trials.filter(({ acted, method }) => acted && method === 'icePack');
  const acted = trials.filter((trial) => trial.acted && !underIce.includes(trial));
  const limits = trials.flatMap((trial): Trial[] =>
    trial.sensorDegC === undefined || underIce.includes(trial)
      ? []
      : [{ acted: trial.acted, at: exactly(trial.sensorDegC) }],
  );
  const cameBackCold: Reading = { case: 'cameBackCold' };
  const blocked = thresholdFigures(limits, 'lower').map((figure): Reading => ({ case: 'blocked', figure }));
  const readings: Reading[] = [
    ...blocked,
    ...(underIce.length > 0 && acted.length === 0 ? [{ case: 'icePackOnly' }] : []),
    ...([...acted, ...underIce].some(isBackCold) ? [cameBackCold] : []),
  ];
  if (readings.length === 0) return null;
  const isBackKnown = acted.length === 0 || acted.some(saysWhenBack);
  const alternatives = isBackKnown ? [readings] : [readings, [...readings, cameBackCold]];
  // That it came back in the cold is known without the temperature of the block, but not that nothing else is worse.
  const limitKnown = readings.some((reading) => reading.case !== 'cameBackCold');
  return limitKnown ? { alternatives } : { alternatives, orWorse: true };
};

function isBackCold({ recoveredAtDegC }: CutOff): boolean {
  return recoveredAtDegC !== undefined && recoveredAtDegC < 0;
}

function saysWhenBack({ recoveredAtDegC, recovery }: CutOff): boolean {
  return recoveredAtDegC !== undefined || recovery === 'didNot';
}
