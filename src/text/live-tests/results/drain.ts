/** What the pack draws by itself. */
export const drainWords = {
  matter: 'Standby drain',
  one: 'Drain',
  modes: { awake: 'awake', asleep: 'asleep', afterCutOff: 'after a cut-off' },
  labels: { perDay: 'Taken in a day', days: 'A full pack is flat after', capacity: 'Capacity promised' },
  days: (days: string) => `${days} days`,
  notDrawn: 'nothing drawn: no end in sight',
  noCapacity: 'no capacity on the nameplate',
  note: 'the cells’ own self-discharge is left out',
  formula: 'Q = I · 24 h; days = capacity ÷ Q',
  inputs: { current: 'Current', capacity: 'Capacity promised' },
};
