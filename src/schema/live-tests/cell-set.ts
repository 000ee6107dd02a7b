import * as v from 'valibot';
import { above0, from0 } from '../figure-limits.ts';
import { temperatureDegC, testFields, volts } from './test-fields.ts';

/** The charge state in which cells were read. Under load nothing is graded. */
export const CELL_STATES = ['rested', 'nearFull', 'justEmptied', 'underLoad'] as const;
export type CellState = (typeof CELL_STATES)[number];

/** One round of readings at all cells. Each cell's readings are an entry of their own. */
export const cellSetSchema = v.looseObject({
  ...testFields,
  state: v.picklist(CELL_STATES),
  restedMin: v.optional(from0('min')),
  loadA: v.optional(above0('A')),
  cellDegC: v.optional(temperatureDegC),
  /** How resistances were measured: 1 kHz AC, or from a step of current. */
  resistanceBy: v.optional(v.picklist(['ac', 'dc'])),
});
export type CellSet = v.InferOutput<typeof cellSetSchema>;

/** Readings at one cell. The part is `<cell set id>/<cell number>`, cells counted from 1 at the pack's minus. */
export const cellReadingSchema = v.looseObject({
  voltageV: v.optional(volts),
  resistanceMohm: v.optional(above0('mohm')),
  /** What the BMS shows for the same cell at the same time. */
  bmsVoltageV: v.optional(volts),
});
export type CellReading = v.InferOutput<typeof cellReadingSchema>;
