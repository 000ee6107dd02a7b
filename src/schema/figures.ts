/**
 * The closed lists of what can be measured of an item and derived from the live tests, each with the unit of its figure
 * and the cases its bands must tell apart. The engine knows these; which item uses which is the definition's to say.
 */

/** Worked out from values typed into an item. `inputs`: how many it takes. */
export const MEASURES = {
  /** The one value itself. */
  value: { inputs: 1, cases: ['any'] },
  /** |first − second|. */
  difference: { inputs: 2, cases: ['any'] },
  /** Current of a bleed stage in mA ÷ rated Ah of the pack. Input: mA. */
  bleedPerAh: { inputs: 1, cases: ['any'] },
  /** Percent by which the printed energy is above cell Ah × 3.2 V × number of cells. Inputs: Ah, cells. */
  energyOverCells: { inputs: 2, cases: ['any'] },
} as const satisfies Record<string, { inputs: number; cases: readonly string[] }>;
export type MeasureName = keyof typeof MEASURES;

/** Derived from the live tests of the record. */
export const DERIVATIONS = {
  /** Seconds until the pack opened a current far above its rating; only heat did; nothing did; a fuse may. */
  overCurrent: { unit: 's', cases: ['opened', 'heatOnly', 'fuseOnly', 'noneSeen'] },
  /** Volts of the highest cell when a charge was cut. */
  highVoltage: { unit: 'V', cases: ['any'] },
  /** Volts of the lowest cell when a run was cut. */
  lowVoltage: { unit: 'V', cases: ['any'] },
  /** Times the claimed charge current at which charging was cut. */
  chargeCurrent: { unit: '×', cases: ['any'] },
  /** °C of the sensor when charging was blocked; blocked only under ice; came back while still below 0 °C. */
  coldCharge: { unit: '°C', cases: ['blocked', 'icePackOnly', 'cameBackCold'] },
  /** °C of the sensor when the BMS cut the later of charge and load; with a thermal switch fitted as well, or without. */
  hot: { unit: '°C', cases: ['withSwitch', 'withoutSwitch'] },
  /** Volts of each cell, by charge state. */
  cellVoltages: { unit: 'V', cases: ['rested', 'justEmptied', 'nearFull'] },
  /** Volts of the lowest cell in any state but under load. */
  lowestCell: { unit: 'V', cases: ['any'] },
  /** mV between highest and lowest cell, by charge state. */
  cellSpread: { unit: 'mV', cases: ['rested', 'nearFull'] },
  /** Percent of their mean between highest and lowest cell resistance. */
  cellResistances: { unit: '%', cases: ['any'] },
  /** mV between BMS and meter at the worst cell. */
  bmsVoltages: { unit: 'mV', cases: ['any'] },
  /** Allowable current of the main leads in percent of the continuous claim. */
  mainLeads: { unit: '%', cases: ['any'] },
  /** A per mm² in the cell links at the continuous claim, by metal. */
  links: { unit: 'A/mm²', cases: ['copper', 'aluminium', 'other'] },
  /** Kelvin by which the worst terminal is warmer than around it at the continuous claim. */
  terminalRise: { unit: 'K', cases: ['any'] },
  /** Days until standby alone has emptied the pack. */
  standby: { unit: 'days', cases: ['any'] },
  /** What a pack that cut itself off for want of charge needs to wake. */
  wakeUp: { unit: '', cases: ['byItself', 'anyCharger', 'special', 'didNot'] },
  /** Metres at which the read-out still answers; an account is needed; it does not answer at all. */
  readOut: { unit: 'm', cases: ['free', 'account', 'noAnswer'] },
} as const satisfies Record<string, { unit: string; cases: readonly string[] }>;
export type DerivationName = keyof typeof DERIVATIONS;
