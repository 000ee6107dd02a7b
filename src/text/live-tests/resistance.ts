/** DC resistance, from two loads or from one pulse. */
export const resistanceWords = {
  title: 'DC resistance',
  one: 'Resistance',
  lead: 'Two currents and the volts at each, half charged. Near full or near empty it says nothing.',
  cautions: [
    'Both currents within the nameplate, for seconds only.',
    'Read volts at the posts with leads of their own, not through the load’s.',
    'Cells one by one: under the lid, only after Make safe, with insulated probes.',
  ],
  labels: {
    method: 'How',
    of: 'Of what',
    cellNumber: 'Cell, counted from minus',
    firstA: 'First current',
    firstV: 'Volts at the first',
    secondA: 'Second current',
    secondV: 'Volts at the second',
    afterS: 'Read after the step',
    cellDegC: 'Cells',
  },
  methods: { twoStep: 'Two loads', pulse: 'One pulse' },
  of: { pack: 'Pack', cell: 'One cell' },
  beforeA: 'Current before it',
  beforeV: 'Volts before it',
  pulseA: 'Current in it',
  pulseV: 'Volts in it',
  surroundings: 'When and how warm',
  aboveContinuous: (typed: string, claim: string) =>
    `${typed} is above the continuous ${claim} on the nameplate. A smaller step tells as much.`,
  cell: (number: string) => `Cell ${number}`,
  step: (first: string, second: string) => `${first} to ${second}`,
};
