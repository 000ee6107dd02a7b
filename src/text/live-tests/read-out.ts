/** What the pack says of itself, and what it asks for in return. */
export const readOutWords = {
  title: 'Read-out',
  one: 'Read-out',
  lead: 'The pack’s own read-out: does it answer, from how far, and without an account.',
  cautions: [] as readonly string[],
  labels: {
    way: 'By',
    connected: 'It answers',
    rangeM: 'Answers up to',
    accountNeeded: 'An account is needed',
    worksOffline: 'Works without a signal',
    showsCells: 'Shows each cell',
    showsTemperatures: 'Shows temperatures',
  },
  ways: { wireless: 'Wireless', cable: 'Cable', display: 'Display on it' },
  rangeHint: 'In the open, in a straight line.',
  noAnswer: 'no answer',
  answers: 'answers',
  upTo: (range: string) => `answers up to ${range}`,
  account: 'account needed',
};
