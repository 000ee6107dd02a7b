import type { Derivation } from './derivation.ts';
import { atLeast, type Derived, exactly, type Reading } from './figure.ts';
import { gradedCellSets, type ReadSet } from './graded-cell-sets.ts';

/** Above this, every cell is off the plateau and near full. Source: DESIGN's bands of spread, our choice. */
const NEAR_FULL_V = 3.4;

/** Volts of every cell in every graded state; the worst counts. */
export const cellVoltages: Derivation = (from) => {
  const sets = gradedCellSets(from, ({ voltageV }) => voltageV);
  const readings = sets.flatMap(({ state, values }) =>
    values.map((value): Reading => ({ case: state, figure: exactly(value) })),
  );
  return worstOfAll(readings, sets);
};

/** Volts of the lowest cell, in whatever state, as long as nothing was drawn. */
export const lowestCell: Derivation = (from) => {
  const sets = gradedCellSets(from, ({ voltageV }) => voltageV);
  const readings = sets.map(({ values }): Reading => ({ case: 'any', figure: exactly(Math.min(...values)) }));
  return worstOfAll(readings, sets);
};

/**
 * mV between highest and lowest cell. Just emptied it says nothing. Near full means every cell above 3.40 V; a round
 * that is called near full but is not wholly there may be either.
 */
export const cellSpread: Derivation = (from) => {
  const sets = gradedCellSets(from, ({ voltageV }) => voltageV).filter(
    ({ state, values }) => state !== 'justEmptied' && values.length > 1,
  );
  if (sets.length === 0) return null;
  const perSet = sets.map(({ state, values, isSettled }) => {
    const spreadMv = (Math.max(...values) - Math.min(...values)) * 1000;
    const figure = isSettled ? exactly(spreadMv) : atLeast(spreadMv);
    const allNearFull = values.every((value) => value > NEAR_FULL_V);
    const cases = allNearFull ? ['nearFull'] : state === 'nearFull' ? ['rested', 'nearFull'] : ['rested'];
    return cases.map((name): Reading => ({ case: name, figure }));
  });
  return { alternatives: combinations(perSet) };
};

/**
 * Percent of their mean between highest and lowest resistance of one round. In a part round the mean is not known, but
 * never above the highest of all: the spread is at least highest less lowest, in percent of the highest.
 */
export const cellResistances: Derivation = (from) => {
  const sets = gradedCellSets(from, ({ resistanceMohm }) => resistanceMohm).filter(({ values }) => values.length > 1);
  if (sets.length === 0) return null;
  const readings = sets.map(({ values, isWhole, isSettled }): Reading => {
    const [lowest, highest] = [Math.min(...values), Math.max(...values)];
    if (isWhole) {
      const meanMohm = values.reduce((sum, value) => sum + value, 0) / values.length;
      return { case: 'any', figure: exactly(((highest - lowest) / meanMohm) * 100) };
    }
    const leastPct = ((highest - lowest) / highest) * 100;
    return { case: 'any', figure: isSettled ? exactly(leastPct) : atLeast(leastPct) };
  });
  return { alternatives: [readings] };
};

/** mV between BMS and meter at the worst cell. */
export const bmsVoltages: Derivation = (from) => {
  const sets = gradedCellSets(from, ({ voltageV, bmsVoltageV }) =>
    voltageV === undefined || bmsVoltageV === undefined ? undefined : Math.abs(bmsVoltageV - voltageV) * 1000,
  );
  const readings = sets.map(({ values }): Reading => ({ case: 'any', figure: exactly(Math.max(...values)) }));
  return worstOfAll(readings, sets);
};

/** What was not read may be worse than all that was. */
function worstOfAll(readings: Reading[], sets: readonly ReadSet[]): Derived | null {
  if (readings.length === 0) return null;
  return { alternatives: [readings], ...(sets.every(({ isSettled }) => isSettled) ? {} : { orWorse: true }) };
}

function combinations(perSet: readonly Reading[][]): Reading[][] {
  return perSet.reduce<Reading[][]>(
    (all, cases) => all.flatMap((one) => cases.map((reading) => [...one, reading])),
    [[]],
  );
}
