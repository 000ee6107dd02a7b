/** Joints under load. */
export const jointWords = {
  matter: 'Joints under load',
  one: 'Joint',
  places: { terminal: 'at a terminal', inside: 'inside' },
  nothing: 'nothing to work out',
  rise: (rise: string) => `${rise} warmer than the air`,
  colder: (rise: string) => `${rise} colder than the air`,
  labels: {
    atRated: 'At the promised current',
    resistance: 'Resistance',
    current: 'Current',
    after: 'After',
    joint: 'Joint',
    around: 'Around it',
    drop: 'Drop across it',
  },
  formulas: { rise: 'ΔT at rated = ΔT · (I rated ÷ I)²', resistance: 'R = U ÷ I' },
  inputs: { rise: 'Rise', current: 'Current', rated: 'Promised current', drop: 'Drop' },
  steady: 'steady state and the same cooling are taken',
};
