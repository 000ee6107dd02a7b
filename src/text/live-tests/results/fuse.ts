/** Which fuse at the terminal fits. */
export const fuseWords = {
  matter: 'Fuse at the terminal',
  title: 'Fuse advice',
  fits: (rating: string, voltage: string) => `${rating}, ${voltage} DC or more`,
  none: 'no standard size fits',
  missing: 'cannot be told yet',
  labels: {
    least: 'At least',
    most: 'At most',
    voltage: 'Rated for DC of',
    interrupt: 'Interrupts',
    why: 'Why',
    needed: 'Still needed',
    fault: 'Fault current',
    caution: 'Who does it',
  },
  /** Behind a remedy that fits a fuse. */
  inRemedy: (rating: string, voltage: string, interrupt: string) =>
    `By the fuse advice: ${rating}, ${voltage} DC or more, interrupting ${interrupt}.`,
  noneInRemedy: 'By the fuse advice no standard size fits these leads.',
  leastNote: '1.25 × the continuous current',
  mostNote: (stricter: boolean) =>
    stricter
      ? 'what the main leads are allowed, or the next standard size up to 150 % of it'
      : '150 % of what the main leads are allowed',
  orMore: (figure: string) => `${figure} or more`,
  interrupt20kA: '20\u00a0kA or more',
  interruptAbove: (current: string) => `more than ${current}, and 20\u00a0kA or more`,
  interruptUnknown: 'the fault current is not known, or only from below',
  why: (least: string, most: string) =>
    `a fuse for the continuous current is ${least} or more, but the leads bear no more than ${most}: larger leads, or less current`,
  needs: {
    continuousCurrentA: 'the continuous current on the nameplate',
    leadAllowableA: 'section and temperature mark of the insulation of every main lead',
    nominalVoltageV: 'the nominal voltage on the nameplate',
  },
  upper: 'an upper estimate, cells only',
  lower: 'a lower estimate, from DC resistance',
  caution: 'local codes and a licensed practitioner come first',
  inputs: {
    continuous: 'Continuous current',
    lead: 'Main leads allowed',
    nominal: 'Nominal voltage',
    full: 'Voltage when full',
  },
  fullFrom: { nameplate: 'charge voltage of the nameplate', cells: '3.65 V a cell' },
  formulaUnder50: 'least = 1.25 × continuous; most = 1.5 × allowable (under 50 V); next standard size',
  formulaFrom50:
    'least = 1.25 × continuous; most = allowable, or the next standard size up to 1.5 × it (from 50 V); next standard size',
  formulaFault: 'fault current = 3.65 V × cells ÷ their resistance',
};
