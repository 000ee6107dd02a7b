/**
 * Figures that a nameplate of an LFP pack is held against: facts of the trade with how sure each is.
 *
 * Source  beside each figure with how it was read
 * Check   tests/calc/nameplate-checks.test.ts
 */
export const LFP_PLAUSIBILITY = {
  /** A 202 Ah prismatic cell data sheet (Rev 0, 2020), 202 Ah · 3.2 V / 3.95 kg: a bare cell, computed, primary. */
  cellWhPerKg: 163.6,
  /** The same cell in 54 × 173 × 207 mm, computed, primary if the type code is the size. */
  cellWhPerL: 334,
  /** Older cells, as an encyclopaedia prints them (secondary, dated): above it, a whole pack is remarkably dense. */
  olderCellWhPerL: 220,
  /** Drop-in and rack packs are typically within these: from memory, no source opened. */
  packWhPerKg: { low: 90, high: 120 },
  /** Nominal voltage of a cell, the same data sheet, primary. */
  cellNominalV: 3.2,
  /** Charge limit and end of discharge of a cell above 0 °C, the same data sheet, primary. */
  cellChargeV: 3.65,
  cellEmptyV: 2.5,
  /** Lowest charge temperature of that cell and of a 60 Ah one, primary. */
  lowestChargeDegC: 0,
  /** Continuous rate of the 202 Ah cell, primary. */
  continuousRateC: 1,
} as const;
