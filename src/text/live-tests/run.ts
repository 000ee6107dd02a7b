/** Capacity runs: how many Ah and Wh come out, typed or read from a log. */
export const runWords = {
  title: 'Capacity runs',
  one: 'Run',
  gentle: (current: string) => `0.2C of this pack is ${current}.`,
  lead: 'The pack run down from full at a steady current. Best one gentle run at 0.2C and one hard one, each from full to empty.',
  cautions: [
    'Within the nameplate: current no higher than its continuous claim, voltage no lower than its limit.',
    'Leads, lugs and load rated for the current; a fuse with a DC rating in your own lead.',
    'On a surface that cannot burn, aired, never unattended. End it at heat, smell or swelling.',
  ],
  labels: {
    label: 'Its name in plots',
    chargeAh: 'Charge',
    energyWh: 'Energy',
    durationS: 'Took',
    currentA: 'Mean current',
    meanVoltageV: 'Mean voltage',
    startVoltageV: 'Voltage at the start',
    endVoltageV: 'Voltage at the end',
    end: 'What it looked like',
    openedBy: 'Who opened the circuit',
    chargedToV: 'Charged to',
    taperA: 'Charge ended at',
    restMin: 'Then rested',
    ambientDegC: 'Room',
    cellStartDegC: 'Cells at the start',
    cellEndDegC: 'Cells at the end',
    sensePoint: 'Voltage read at',
    log: 'Log',
    curve: 'Curve',
    evidence: 'Evidence of its end',
  },
  came: 'What came out',
  typedOver: (rows: string) =>
    `Read from the log, ${rows}. What you type here stands until that log is read again; how it began stays in any case.`,
  faster: (typed: string, claim: string) => `${typed} is above the continuous ${claim} on the nameplate.`,
  /** Charge, time and current say the same thing twice. */
  otherCurrent: (given: string, typed: string) =>
    `Charge and time make ${given}, not the ${typed} typed. One of the three is off.`,
  otherVoltage: (mean: string) => `Energy and charge make a mean of ${mean}. One of the two is off.`,
  ended: 'How it ended',
  began: 'How it began',
  beganLead: 'Without all three, a run counts as “at least”: nobody can tell that the pack was full.',
  conditions: 'Where and how warm',
  nameHint: 'Short, such as “0.2C first”. Without one it is Run 1, Run 2 and so on.',
  summary: (parts: readonly string[]) => parts.join(' · '),
  at: (figure: string, current: string) => `${figure} at ${current}`,
  fromLog: 'from a log',

  glance: 'At a glance',
  list: 'Runs',
  bringIn: 'Bring in a log',

  logTitle: 'Its log',
  logLine: (name: string, rows: string) => `${name}, ${rows}`,
  lines: (first: number, last: number) => `lines ${first} to ${last}`,
  rowsRead: (rows: string) => `${rows} rows`,
  noGaps: 'no gap',
  gaps: (count: number, longest: string) =>
    `${count === 1 ? '1 gap' : `${count} gaps`} in time${longest === '' ? '' : `, the longest ${longest}`}`,
  counter: (charge: string) => `The instrument’s own counter says ${charge} over the same rows.`,
  openLog: 'Open its log again',
};

/** A sentence for each, saying what a person sees. */
export const runEndSentences = {
  lowVoltage: 'Empty: the voltage bent down and fell away, the knee, before anything opened.',
  packDisconnect: 'Cut off: the terminals dropped while the voltage was still level. No knee before.',
  stopped: 'Stopped by hand, a timer or the load, while the pack still delivered.',
  taper: 'Tapered: the voltage was held and the current faded away.',
  unclear: 'Looked at, and it cannot be told.',
} as const;

/** The same in a word or two, within a line. */
export const runEndWords = {
  lowVoltage: 'ended empty',
  packDisconnect: 'cut off, no knee',
  stopped: 'stopped early',
  taper: 'tapered',
  unclear: 'end unclear',
} as const;

export const openedByWords = { bms: 'The pack', load: 'The load', hand: 'I did' } as const;

export const sensePointWords = {
  packPosts: 'The pack’s posts',
  loadEnd: 'The load, at the end of the leads',
  cells: 'The cells',
} as const;
