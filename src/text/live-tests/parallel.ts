/** Packs, or strings in a pack, run side by side. */
export const parallelWords = {
  title: 'Parallel run',
  one: 'Parallel run',
  lead: 'Several packs, or several strings, run side by side: what each of them gave, by a meter in each branch.',
  cautions: [
    'Never join packs in parallel that stand at different charge: the first seconds can carry hundreds of amperes. Level them first, each behind its own fuse.',
    'One meter or clamp in each branch before the current flows; nothing is moved while it does.',
  ],
  labels: { of: 'What lay side by side', currentA: 'Current together' },
  of: { packs: 'Packs', strings: 'Strings in one pack' },
  each: 'What each gave',
  eachLead: 'Sharing is worked out once every one of them has its Ah.',
  pack: (number: number) => `Pack ${number}`,
  string: (number: number) => `String ${number}`,
  shareLabels: { label: 'Name it', chargeAh: 'Charge given', highestA: 'Highest current' },
  more: { packs: 'One more pack', strings: 'One more string' },
};
