/** The runs found in a log, and the picture of the whole of it. */
export const foundWords = {
  kinds: {
    discharge: 'Discharge',
    charge: 'Charge',
    hold: 'Hold',
    voltageOnly: 'Voltages only',
  },
  numbered: (number: number, kind: string) => `${number} ${kind}`,
  figures: (parts: readonly string[]) => parts.join(' · '),
  ends: {
    lowVoltage: 'Ended empty: the knee was seen.',
    packDisconnect: 'Cut off: the terminals dropped with no knee before.',
    stopped: 'Stopped while the pack still delivered.',
    taper: 'Ended when the current had faded.',
    unclear: 'How it ended cannot be told from the log.',
  },
  chargeEnds: {
    lowVoltage: '',
    packDisconnect: '',
    stopped: 'The charge ended here.',
    taper: 'The charge ended when the current had faded.',
    unclear: 'The log ends within the charge, or goes on otherwise.',
  },
  holdNote:
    'A hold is a run of its own: the voltage was kept and the current faded, so the Ah at a steady current stay apart.',
  chargeNote: 'Charges are shown, so that you see how a run began, and not kept: a kept run counts as delivered.',
  voltageOnlyNote: 'No current in this log: no Ah and no Wh, only how the voltage went and ended.',
  rest: (rest: string) => `After ${rest} without load.`,
  restAtLeast: (rest: string) =>
    `After ${rest} without load, and what was before is not in the log: type how it began.`,
  noRest: 'Under load as the log begins: type how it began.',
  rightAfter: 'Right after',
  restAfter: (rest: string) => `${rest} after`,
  afterCharge: (after: string, volts: string | null) =>
    `${after} a charge${volts === null ? '' : ` that ended at ${volts}`}.`,
  gaps: (count: number, longest: string) =>
    `${count === 1 ? '1 gap' : `${count} gaps`} in time, the longest ${longest}; bridged straight.`,
  counter: (charge: string, off: string) =>
    `The log’s own counter says ${charge}, ${off} against the sum over the rows.`,
  counterOff: 'That is far off: check the unit and the sign.',
  temperatures: (from: string, to: string) => `${from} at the start, ${to} at the end.`,
  lines: (first: number, last: number) => `Lines ${first} to ${last}.`,

  showAll: (count: number) => `Show all ${count} runs`,

  plot: 'The whole log',
  longestMarked: (marked: number, all: number) => `The ${marked} longest of ${all} runs are marked.`,
  partsLeft: (count: number) =>
    count === 1 ? '1 further part is not drawn.' : `${count} further parts are not drawn.`,
  part: (number: number) => `Part ${number}`,
  alt: (bands: readonly string[]) =>
    `Voltage and current of the whole log over time. ${bands.length === 0 ? 'No run found.' : `Runs: ${bands.join('; ')}.`}`,
  altBand: (label: string, from: string, to: string) => `${label}, ${from} to ${to}`,
  nothing: 'Nothing to draw.',
  voltage: 'Voltage, V',
  current: 'Current, A (out of the pack is up)',
  seconds: 'Time, s',
  minutes: 'Time, min',
  hours: 'Time, h',
};
