import type { PackRecord } from '../../record/pack-record.ts';
import type { Answer } from '../../schema/answer.ts';
import type { Item } from '../../schema/checklist.ts';
import type { MeasureName } from '../../schema/figures.ts';
import { type Derived, exactly } from './figure.ts';

type Values = readonly number[];

/** LFP cell, nominal. Source: LFP cell data sheets, 3.2 V. */
const CELL_NOMINAL_V = 3.2;

/** From typed values to the figure of each measure; null where the Nameplate lacks what it takes. */
const FIGURES: Readonly<Record<MeasureName, (values: Values, nameplate: PackRecord['nameplate']) => number | null>> = {
  value: ([value]) => value ?? null,
  difference: ([first, second]) => (first === undefined || second === undefined ? null : Math.abs(first - second)),
  bleedPerAh: ([bleedMa], { ratedCapacityAh }) =>
    bleedMa === undefined || ratedCapacityAh === undefined ? null : bleedMa / ratedCapacityAh,
  energyOverCells: ([cellAh, cellCount], nameplate) => {
    const printedWh = printedEnergyWh(nameplate);
    if (cellAh === undefined || cellCount === undefined || printedWh === null) return null;
    // Rounded before 1 is taken off: 12 digits are beyond any label, and binary noise must not be a claim over 0 %.
    const ratio = Number((printedWh / (cellAh * cellCount * CELL_NOMINAL_V)).toPrecision(12));
    return (ratio - 1) * 100;
  },
};

/**
 * What typed readings come to; null while a value is missing, or the Nameplate lacks what it is held against.
 *
 * Throws  RangeError if a value lies outside what its input allows: kept with its message as an error outcome.
 * Check   tests/grading/derive/measure.test.ts
 */
export function measured(
  item: Item,
  answer: Extract<Answer, { kind: 'readings' }>,
  nameplate: PackRecord['nameplate'],
): Derived | null {
  const { measure } = item;
  if (measure === undefined) throw new TypeError(`measured: ${item.id} must be of kind measure, got ${item.kind}`);
  const values: number[] = [];
  for (const { id, title, least, most } of measure.inputs) {
    const value = Object.hasOwn(answer.values, id) ? answer.values[id] : undefined;
    if (value === undefined) return null;
    if (!(value >= least && value <= most)) {
      throw new RangeError(`measured: ${title} must be from ${least} to ${most}, got ${value}`);
    }
    values.push(value);
  }
  const figure = FIGURES[measure.figure](values, nameplate);
  return figure === null ? null : { alternatives: [[{ case: 'any', figure: exactly(figure) }]] };
}

function printedEnergyWh({ ratedEnergyWh, ratedCapacityAh, nominalVoltageV }: PackRecord['nameplate']): number | null {
  if (ratedEnergyWh !== undefined) return ratedEnergyWh;
  if (ratedCapacityAh === undefined || nominalVoltageV === undefined) return null;
  return ratedCapacityAh * nominalVoltageV;
}
