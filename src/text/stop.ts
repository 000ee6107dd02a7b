/** A failed stop item takes over the screen with this. Basis: UN special provision 376; ERG 2024 Guide 147. */
export const stopWords = {
  title: 'Stop: treat as damaged',
  lead: (itemTitle: string) => `${itemTitle}: failed.`,
  steps: [
    'Do not charge, load or open it any further. Do not power it.',
    'If it is hot, hissing, smoking or smells of solvent: do not touch it, leave, call the fire service.',
    'If it is cold and quiet: cover the terminals, and set it apart outdoors or in a fire-safe place, away from anything that burns.',
    'Keep it under watch; damage can show up hours or days later.',
    'For transport it counts as damaged or defective: ask your carrier or waste handler, and follow local rules. It must not fly.',
  ],
  closed: 'Live tests, Make safe and Lid off stay closed while this finding stands. Sheet and Afterwards stay open.',
  correct: 'Correct the answer',
  toSheet: 'To the sheet',
  setApart: 'Set apart: note it',
};
