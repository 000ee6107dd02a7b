/** Afterwards: what became of the sample and its parts. */
export const afterwardsWords = {
  title: 'Afterwards',
  lead: 'What became of the sample, so that nobody meets it unprepared.',
  fate: 'The pack',
  fates: {
    kept: 'Kept open',
    'closed-again': 'Closed again',
    'in-parts': 'In parts',
    recycled: 'Recycled',
    returned: 'Returned',
    'damaged-set-apart': 'Set apart as damaged',
    other: 'Something else',
  },
  closedAgain:
    'A pack that was opened and closed again is no longer the tested type: its transport test and its IP rating are void. Do not ship, sell or lend it. Mark it.',
  on: 'On',
  cells: 'Its cells',
  cellFates: {
    'with-pack': 'Still in the pack',
    reused: 'Used again',
    stored: 'Stored',
    recycled: 'Recycled',
    unknown: 'Not known',
  },
  where: 'Where it is now',
  note: 'Note',
  toSheet: 'To the sheet',
  ownWords: 'For the sheet, in your words',
  opinion: 'Opinion (printed apart from the facts)',
  method: 'How you tested',
  makerReply: 'The maker’s reply',
  signedAs: 'Signed as',
};
