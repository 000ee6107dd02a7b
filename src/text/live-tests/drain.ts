/** What the pack draws from its own cells with nothing connected. */
export const drainWords = {
  title: 'Standby drain',
  one: 'Drain',
  lead: 'The current the pack draws by itself, read between BMS and cells, or from charge lost over weeks.',
  cautions: [
    'A meter on its current range is a short circuit across the posts: never put it there.',
    'Between cells and BMS: under the lid, only after Make safe, through a fused lead.',
  ],
  labels: { currentMa: 'Current drawn', mode: 'While it was' },
  modes: { awake: 'Awake', asleep: 'Asleep', afterCutOff: 'Cut off' },
  while: (current: string, mode: string) => `${current}, ${mode}`,
};
