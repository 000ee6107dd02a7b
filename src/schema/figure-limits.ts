import * as v from 'valibot';
import { finiteSchema } from './text-limits.ts';

/**
 * The largest figure that a pack, a cell or anything on a bench can have, by the unit it is stored in: what is typed is
 * held to it while it is still in its box (app/parts/limit-problem.ts). Far past it stands
 * a slip of the hand, a misread column or a forged file; sums and shares of what is inside stay finite.
 *
 * Our choice, each some hundred times what is built as one pack or sold for a bench: 2000 V is over the 1500 V where low
 * voltage ends for direct current, 100 000 A over what a container of cells gives into a short, 100 t the container itself.
 */
export const MOST = {
  V: 2000,
  mV: 2_000_000,
  A: 100_000,
  mA: 1_000_000,
  Ah: 1_000_000,
  Wh: 1e9,
  kg: 100_000,
  mm: 100_000,
  mm2: 100_000,
  m: 100_000,
  /** Thirty years. */
  s: 1e9,
  min: 1e7,
  mohm: 1e9,
  degC: 1500,
  /** A meter that is off by all it shows is none. */
  pct: 100,
  /** In the currency's own unit: of the smallest in use, a container full of packs takes some 10 000 million. */
  money: 1e12,
  /** A log is read up to so many volts (logs/row-reader.ts), so that one read in mV as if in V can still be kept and mended. */
  loggedV: 100_000,
} as const;
export type FigureUnit = keyof typeof MOST;

/**
 * How far past it a figure that is stored already may lie. Earlier versions set no bound, and one slip of unit, a
 * thousandfold (12 800 mV as V, 35 000 g as kg), must not cost the figure its place in the record, nor a bundle its way
 * back: it is shown, and can be mended.
 */
const STORED_OVER_TYPED = 1000;

/** Our choice: under a millionth of any unit above, nothing on a bench reads, and a share of it says nothing. */
const LEAST_ABOVE_0 = 1e-6;

/** What may be typed goes with the shape of what may be stored. */
const typedLimit = (unit: FigureUnit) => v.metadata<number, { readonly mostTyped: number }>({ mostTyped: MOST[unit] });
const mostStored = (unit: FigureUnit) => MOST[unit] * STORED_OVER_TYPED;

export const above0 = (unit: FigureUnit) =>
  v.pipe(finiteSchema, v.gtValue(0), v.minValue(LEAST_ABOVE_0), v.maxValue(mostStored(unit)), typedLimit(unit));
export const from0 = (unit: FigureUnit) =>
  v.pipe(finiteSchema, v.minValue(0), v.maxValue(mostStored(unit)), typedLimit(unit));

/** Milliseconds since 1970. Our choice: to the start of 9999, the last year that is written in four figures everywhere. */
export const momentMs = v.pipe(finiteSchema, v.minValue(0), v.maxValue(Date.UTC(9999, 0, 1)));
/** Bytes, rows and lines of one file. Our choice: past what any file taken in can have (bundle-limits.ts). */
export const countFrom = (least: 0 | 1) => v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(1e10));
