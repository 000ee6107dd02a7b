/** Bringing in the log of a run: picking, reading, keeping. */
export const logWords = {
  title: 'Logs of runs',
  one: 'Log',
  lead: 'The file your load or tester wrote: any text with one row per reading, such as .csv, .txt or .tsv. It stays on this phone.',
  pick: 'Pick a file',
  none: 'No log is kept with this pack yet.',
  facts: (parts: readonly string[]) => parts.join(' · '),
  rows: (count: string) => `${count} rows`,
  runsFrom: (count: number) => (count === 0 ? 'no run kept from it' : count === 1 ? '1 run' : `${count} runs`),
  known: 'This very file is already kept with this pack. It is opened as it was read then.',
  inHand: 'Not kept yet: nothing is written before you tap Keep.',
  notInHand: 'This file is no longer at hand. Nothing of it was kept and nothing is lost: pick it again.',
  gone: 'The bytes of this log are not on this phone, so it cannot be read again. Pick the same file and it is recognised.',
  changed: 'The file has changed or gone since it was read. Nothing was kept. Put it aside and pick it again.',
  unreadable: (name: string) => `${name} cannot be opened. Copy it onto the phone, then pick it again.`,
  openFailed: 'The reader stopped and did not finish. Nothing was kept. Close other apps, then try again.',
  again: 'Try again',

  opening: 'Opening the file',
  reading: (share: string) => `Reading: ${share}`,
  cancel: 'Cancel',
  cancelled: (name: string) => `${name}: reading was cancelled, and nothing was kept.`,

  runs: 'Runs found',
  noRuns: 'No run was found: no row shows a load that lasts.',
  tickLead: 'Tick what is to be kept as a capacity run.',
  keep: (count: number) => (count === 1 ? 'Keep 1 run' : `Keep ${count} runs`),
  keepNone: 'Keep',
  update: (count: number) => (count === 1 ? 'Update 1 run' : `Update ${count} runs`),
  updateAndKeep: (updated: number, added: number) => `Update ${updated}, keep ${added} more`,
  updateNote: (count: number) =>
    `${count === 1 ? '1 run was' : `${count} runs were`} made from this log. What was measured is read anew; the name, how it began and whatever else you typed stay.`,
  unmatched: (count: number) =>
    `${count === 1 ? '1 kept run has' : `${count} kept runs have`} no counterpart when read so, and stay as they are.`,
  isKept: 'kept',
  kept: (name: string, count: number) => `${name}: ${count === 1 ? '1 run' : `${count} runs`}`,
  putAside: 'Put it aside',
  close: 'Close it',
  remove: 'Remove the log',
  removed: (name: string) => `${name}: removed`,
  removeAsk: (runs: number) =>
    `${runs === 0 ? 'No run was made from it.' : 'The runs made from it stay, with their curves.'} It cannot be read again afterwards unless you still have the file.`,
  removeNo: 'Leave it',
};

/** Why a file is not read at all. */
export const fileRefusals = {
  empty: (name: string) => `${name} is empty.`,
  tooLarge: (name: string, size: string, most: string) =>
    `${name} has ${size}; at most ${most} can be kept with a pack. Export it with fewer readings a second, or in parts.`,
  spreadsheet: (name: string) =>
    `${name} is a workbook or an archive, not text. Open it where it was made, save the table as CSV, and pick that.`,
  binary: (name: string) => `${name} is not text. Export the log as CSV or text, and pick that.`,
} as const;
