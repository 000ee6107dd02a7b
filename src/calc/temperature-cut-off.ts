import { type LimitBehaviour, limitBehaviour } from './limit-behaviour.ts';

/**
 * What a temperature limit did when its sensor (never a cell) was cooled or warmed.
 *
 * Shape   side `low`: charging or load must end at `limitDegC` or above, at the latest by `lateDegC` below it; `high`
 *         the other way round. The temperature at which it acted, or else the furthest that was reached.
 * Units   °C at the sensor.
 * Error   the sensor lags its surroundings: a figure read beside it in moving air says less than one in a cup.
 * Throws  RangeError if a figure is not finite or `lateDegC` lies before `limitDegC`.
 * Source  the limits are the caller's; of cells: src/calc/tables/lfp-plausibility.ts
 * Check   tests/calc/cut-offs.test.ts
 */
export function temperatureCutOff({ side, ...figures }: TemperatureTrial): LimitBehaviour {
  return limitBehaviour({
    side,
    limit: figures.limitDegC,
    late: figures.lateDegC,
    actedAt: figures.actedAtDegC,
    reached: figures.reachedDegC,
  });
}

export interface TemperatureTrial {
  side: 'low' | 'high';
  limitDegC: number;
  lateDegC: number;
  actedAtDegC: number | null;
  reachedDegC: number | null;
}
