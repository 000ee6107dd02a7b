import { standbyDrain } from '../../calc/standby-drain.ts';
import type { Derivation } from './derivation.ts';
import { exactly, type Reading } from './figure.ts';

/**
 * Days until standby alone has emptied the pack. Where the pack was measured asleep only that counts: it is how a pack
 * on the shelf stands. What it draws after it has cut itself off is another matter.
 */
export const standby: Derivation = ({ tests, nameplate }) => {
  const capacityAh = nameplate.ratedCapacityAh;
  if (capacityAh === undefined) return null;
  const asleep = tests.drains.filter(({ mode }) => mode === 'asleep');
  const counted = asleep.length > 0 ? asleep : tests.drains.filter(({ mode }) => mode !== 'afterCutOff');
  const readings = counted.map(({ currentMa }): Reading => {
    // Nothing drawn: it never is flat.
    const { daysToFlat } = standbyDrain({ currentMa, capacityAh });
    return { case: 'any', figure: exactly(daysToFlat ?? Infinity) };
  });
  return readings.length === 0 ? null : { alternatives: [readings] };
};
