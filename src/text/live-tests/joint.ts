/** Joints under load: how warm they get, what drops across them. */
export const jointWords = {
  title: 'Joint rise',
  one: 'Joint',
  lead: 'A terminal or an inner joint under a steady current: its temperature and that around it, or the millivolts across it.',
  cautions: [
    'Within the nameplate. Nothing is touched while the current flows: read it from a distance, or with a probe fixed before.',
    'Inside the pack: only after Make safe, with insulated probes. The cells stay live.',
  ],
  labels: {
    place: 'Where',
    label: 'Which one',
    currentA: 'Current',
    afterMin: 'After',
    jointDegC: 'Joint',
    aroundDegC: 'Around it',
    dropMv: 'Drop across it',
  },
  places: { terminal: 'Terminal', inside: 'Inside' },
  aboveContinuous: (typed: string, claim: string) =>
    `${typed} is above the continuous ${claim} on the nameplate. Stay at or below it; the rise is worked out for it.`,
  colder: 'The joint is colder than around it: are the two the right way round?',
  at: (what: string, current: string) => `${what} at ${current}`,
};
