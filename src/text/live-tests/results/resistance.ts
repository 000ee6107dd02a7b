/** DC resistance from two loads or one pulse. */
export const resistanceWords = {
  matter: 'DC resistance',
  one: 'Resistance',
  of: { pack: 'of the pack', cell: 'of a cell' },
  ofCell: (number: number) => `of cell\u00a0${number}`,
  refused: 'no figure',
  because: {
    nearFull: 'near full: what relaxes there is surface charge',
    belowKnee: 'below the knee: the test’s own charge moves the voltage',
    sameCurrent: 'both readings are at the same current',
    wrongWay: 'the voltage moved the wrong way, or the second load was the lighter',
    incomplete: 'a reading, the time or the number of cells in series is missing',
  },
  labels: {
    method: 'Method',
    after: 'Read after',
    temperature: 'Cells at',
    why: 'Why',
    first: 'First reading',
    second: 'Second reading',
    difference: 'Mind',
  },
  methods: { twoStep: 'two loads', pulse: 'one pulse' },
  reading: (voltage: string, current: string) => `${voltage} at ${current}`,
  timeMatters: 'only figures read after the same time compare; a 1 kHz meter shows less',
  formula: 'R = (V₁ − V₂) ÷ (I₂ − I₁)',
};
