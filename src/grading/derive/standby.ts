import { standbyDrain } from '../../calc/standby-drain.ts';
import type { Derivation } from './derivation.ts';
import { atLeast, exactly, type Reading } from './figure.ts';

/**
 * Days until standby alone has emptied the pack. How it stands on the shelf is asleep: what it draws awake is the most it
 * may draw, and counts only while nothing else was measured. What it draws after it has cut itself off is another matter.
 */
export const standby: Derivation = ({ tests, nameplate }) => {
  const capacityAh = nameplate.ratedCapacityAh;
  if (capacityAh === undefined) return null;
  const drains = tests.drains.filter(({ mode }) => mode !== 'afterCutOff');
  const onShelf = drains.filter(({ mode }) => mode !== 'awake');
  const counted = onShelf.length > 0 ? onShelf : drains;
  const readings = counted.map(({ currentMa, mode }): Reading => {
    // Nothing drawn: it never is flat.
    const days = standbyDrain({ currentMa, capacityAh }).daysToFlat ?? Infinity;
    return { case: 'any', figure: mode === 'awake' ? atLeast(days) : exactly(days) };
  });
  return readings.length === 0 ? null : { alternatives: [readings] };
};
