/** Rounds of readings at the cells: volts, resistance, what the BMS shows. */
export const cellsWords = {
  title: 'Cell readings',
  one: 'Round of readings',
  lead: 'Every cell read in one go, in one state: volts, resistance, and what the BMS shows for the same cell. A new state is a new round.',
  cautions: [
    'Inside the pack: only after Make safe. The cells stay live, whatever was switched off.',
    'Insulated probes with short tips, one set down at a time. Rings and watch off; no bare tool on the cells.',
    'Volts only with the leads in the volt sockets: left in the amp socket, a probe shorts the cell.',
  ],
  labels: {
    state: 'State of the cells',
    restedMin: 'Rested for',
    loadA: 'Load while reading',
    cellDegC: 'Cells at',
    resistanceBy: 'Resistances measured',
  },
  states: {
    rested: 'Rested on the plateau: no current, and neither full nor empty.',
    nearFull: 'Near full: every cell above 3.40 V, charging just ended.',
    justEmptied: 'Just emptied: the run ended a moment ago.',
    underLoad: 'Under load: current flows while they are read.',
  },
  by: { ac: 'At 1 kHz AC, by a tester', dc: 'By a step of current' },
  stateLead: 'Choose the state first: the boxes of the cells open below, and what a spread means hangs on it.',
  restShort: 'Under 30 min the cells still settle: the spread is shown, the charge cannot be told from it.',
  justEmptiedSettlesNothing: 'Just emptied, cells stand apart by nature: no spread is graded by it.',
  underLoadSettlesNothing: 'Under load nothing is graded by it.',
  summary: (state: string, read: string) => `${state} · ${read}`,
  shortStates: { rested: 'Rested', nearFull: 'Near full', justEmptied: 'Just emptied', underLoad: 'Under load' },
  read: (count: number) => (count === 0 ? 'no cell read' : count === 1 ? '1 cell read' : `${count} cells read`),
};

/** The boxes of the cells. */
export const cellGridWords = {
  title: 'Cells',
  lead: 'Cell 1 is at the pack’s minus. A box left empty stays not read.',
  leadUnknown: 'Cell 1 is at the pack’s minus. The Nameplate does not say how many there are: add what there is.',
  columns: 'What to fill in',
  column: { voltageV: 'Volts', resistanceMohm: 'mΩ', bmsVoltageV: 'BMS volts' },
  cell: 'Cell',
  box: (number: number, column: string) => `Cell ${number}, ${column}`,
  undo: (number: number, column: string) => `Cell ${number}: ${column}`,
  more: 'One more cell',
  offered: (number: number, typed: string) => `Cell ${number}: ${typed} has no point. Not saved yet. Meant as`,
  takeAll: (count: number) => `Take all ${count} with the point after the first digit`,
  wrong: {
    notANumber: (number: number, typed: string) =>
      `Cell ${number}: “${typed}” is not a number. Type digits with a point or a comma. It is not saved yet.`,
    noCellVoltage: (number: number, typed: string) =>
      `Cell ${number}: ${typed} V is no voltage of one cell. Read it again. It is not saved yet.`,
    notPositive: (number: number) => `Cell ${number}: a resistance is above zero. It is not saved yet.`,
    tooMuch: (number: number, typed: string) =>
      `Cell ${number}: ${typed} mΩ is more than can be kept. Read it again. It is not saved yet.`,
  },
  undoAll: 'Points put in',
};

/** The number pad under the boxes. */
export const padWords = {
  name: 'Number pad',
  point: 'Point',
  erase: 'Take the last digit back',
  sign: 'Plus or minus',
  next: 'Next',
  away: 'Put the pad away',
  keyboard: 'Phone’s keyboard',
};
