/**
 * Open-circuit voltage of an LFP cell at rest, 25 °C, by state of charge.
 *
 * Error   a 202 Ah cell data sheet (Rev 0, 2020) prints 3.275 to 3.304 V for 30 to 50 %, which is 40 to 50 mV higher:
 *         the plateau rises by only 1 to 2 mV per percent, so between 20 and 90 % no charge can be read.
 * Source  read in a table inside a public firmware (secondary, address not kept)
 * Check   tests/calc/rest-voltage-band.test.ts
 */
export const OCV_LFP = [
  { chargePct: 100, cellV: 3.4 },
  { chargePct: 90, cellV: 3.35 },
  { chargePct: 80, cellV: 3.32 },
  { chargePct: 70, cellV: 3.29 },
  { chargePct: 60, cellV: 3.27 },
  { chargePct: 50, cellV: 3.26 },
  { chargePct: 40, cellV: 3.25 },
  { chargePct: 30, cellV: 3.23 },
  { chargePct: 20, cellV: 3.2 },
  { chargePct: 10, cellV: 3.12 },
  { chargePct: 0, cellV: 3.0 },
] as const;

/** Below this a rested cell holds less than 20 %. The table's figure at 20 %. */
export const BELOW_20_PCT_V = 3.2;
/** Above this a rested cell holds more than 90 %. The table's figure at 90 %. */
export const OVER_90_PCT_V = 3.35;
/** Above this a cell at rest is full or still carries the charger's surface charge. The table's figure at 100 %. */
export const NEAR_FULL_V = 3.4;
/** Below this a cell is past the knee. The table's figure at 10 %: from there on it falls five times as steeply. */
export const BELOW_KNEE_V = 3.12;
