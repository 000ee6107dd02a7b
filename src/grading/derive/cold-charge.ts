import type { Derivation } from './derivation.ts';
import { exactly, type Reading } from './figure.ts';
import { type Trial, thresholdFigures } from './threshold.ts';

/**
 * At what sensor temperature charging is blocked. A block that came only with an ice pack on the sensor is a case of its
 * own, its temperature being that of the ice; so is one that came back while the sensor was still below 0 °C.
 */
export const coldCharge: Derivation = ({ tests }) => {
  const trials = tests.cutOffs.filter(({ kind, by }) => kind === 'coldCharge' && by !== 'thermalSwitch');
  const limits = trials.flatMap(({ acted, method, sensorDegC }): Trial[] =>
    sensorDegC === undefined || (acted && method === 'icePack') ? [] : [{ acted, at: exactly(sensorDegC) }],
  );
  const blocked = thresholdFigures(limits, 'lower').map((figure): Reading => ({ case: 'blocked', figure }));
  const acted = trials.filter((trial) => trial.acted);
  const readings: Reading[] = [
    ...blocked,
    ...(acted.some(({ method }) => method === 'icePack') ? [{ case: 'icePackOnly' }] : []),
    ...acted.flatMap(({ recoveredAtDegC }): Reading[] =>
      recoveredAtDegC !== undefined && recoveredAtDegC < 0 ? [{ case: 'cameBackCold' }] : [],
    ),
  ];
  // That it came back in the cold is known without the temperature of the block, but not that nothing else is worse.
  if (readings.length === 0) return null;
  const limitKnown = blocked.length > 0 || readings.some((reading) => reading.case === 'icePackOnly');
  return limitKnown ? { alternatives: [readings] } : { alternatives: [readings], orWorse: true };
};
