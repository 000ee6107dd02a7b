/** Carrying a record over to a newer checklist. */
export const carryOverWords = {
  onBoard: (here: string, newer: string) => `Graded by checklist ${here}. Version ${newer} is on board.`,
  isDraft: 'That one is a draft and may still change.',
  look: 'See both scores',
  title: (newer: string) => `Carry over to ${newer}?`,
  lead: 'Every answer stays. The newer version grades by readings what it can, and asks more items; those are open until answered. Both scores stand on the sheet. It can be undone.',
  by: (version: string) => `By ${version}`,
  asked: (settled: number, asked: number) => `${settled} of ${asked} settled`,
  withheld: 'score withheld',
  unsettled: (low: string, high: string) => `Unsettled: “${low}” at worst, “${high}” at best`,
  carry: 'Carry over',
  stay: (here: string) => `Stay on ${here}`,
  undo: (newer: string) => `Carried over to ${newer}`,
  carried: (earlier: string) => `Carried over from ${earlier}; both scores are on the sheet.`,
  sheetFigure: (version: string) => `Score by ${version}`,
  sheetRow: 'Carried over from',
  sheetValue: (version: string, score: string) => `${version}: ${score}`,
};
