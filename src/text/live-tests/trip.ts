/** Over-current trials: which current the pack carries, for how long, and what opens it. */
export const tripWords = {
  title: 'Over-current trips',
  one: 'Trip',
  lead: 'A current far above the rating, held until the pack opens or you end it. One entry for each trial.',
  cautions: [
    'Local codes and a licensed practitioner come first. If either says no, leave this out.',
    'Never short the posts. Draw the current with a load you can switch off.',
    'Nothing beyond the nameplate unless you are qualified and equipped for it. No figure here asks for it.',
    'Leads, lugs and load rated for the current; a fuse with a DC rating in your own lead.',
    'Eye protection on, metal off, a second person who can switch off.',
    'On a surface that cannot burn. End it by hand at heat, smell or after 60 s.',
  ],
  labels: {
    currentA: 'Current',
    heldForS: 'Held for',
    opened: 'What happened',
    heatSeen: 'Heat, smoke or smell',
    short: 'A short across the posts',
    coolingNeeded: 'Had to cool before it came back',
    recovery: 'How it came back',
    recoveredAfterS: 'Came back after',
  },
  shortHint: 'Never made on this bench. Say yes only to write down what an equipped laboratory found.',
  opened: 'The pack opened',
  notOpened: 'I ended it',
  afterwards: 'Afterwards',
  abovePeak: (typed: string, peak: string) =>
    `${typed} is above the peak of ${peak} on the nameplate. Beyond the nameplate a pack can fail violently.`,
  aboveContinuous: (typed: string, continuous: string) =>
    `${typed} is above the continuous ${continuous} on the nameplate. Keep it short and stay by the switch.`,
  longerThanPeak: (held: string, peakFor: string) =>
    `${held} is longer than the ${peakFor} the nameplate gives the peak.`,
  longHold: 'Over 60 s: what opens now is heat. Feel for it, without touching.',
  summary: (current: string, what: string) => `${current}: ${what}`,
  openedAfter: (time: string) => `opened after ${time}`,
  openedSometime: 'opened',
  carriedFor: (time: string) => `carried for ${time}, did not open`,
  carried: 'did not open',
  heat: 'heat seen',
};

export const recoveryWords = {
  byItself: 'By itself',
  loadOff: 'Load taken off',
  loadOn: 'Load put on',
  chargerOff: 'Charger taken off',
  chargerOn: 'Charger put on',
  button: 'Button',
  cooling: 'Once cool',
  didNot: 'It did not',
} as const;
