/** The pack's own read-out. */
export const readOutWords = {
  matter: 'Read-out',
  one: 'Read-out',
  ways: { wireless: 'wireless', cable: 'by cable', display: 'on its display' },
  connected: 'answers',
  notConnected: 'does not answer',
  notSaid: 'not said whether it answers',
  labels: {
    range: 'Answers up to',
    account: 'Asks for an account',
    offline: 'Works without the internet',
    cells: 'Shows each cell',
    temperatures: 'Shows temperatures',
  },
};
