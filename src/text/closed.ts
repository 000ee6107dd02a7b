/** Said over every screen once the records can no longer be reached. */
export const closedWords = {
  title: { old: 'A newer Underlid has the records', closed: 'The records were cut off' },
  old: 'A newer Underlid is open on this phone, perhaps in another tab, and has taken over the records. This page has stopped writing. What it called saved is there: load the page again to go on.',
  closed:
    'The browser closed the records under this page, or someone cleared them. Nothing more is written. What was called saved before is safe unless it was cleared: try again, and if that fails load the page again.',
  stillClosed: 'The records still cannot be reached. Try again in a moment, or load the page again.',
  cleared: (packCount: number) =>
    `The records were cleared: ${packCount} ${packCount === 1 ? 'pack is' : 'packs are'} gone from this phone. Restore your last backup in Keep.`,
  held: 'What this page still holds of the open pack, its answers and figures but not its photos, can be written again.',
  goOn: 'Go on with empty records',
  writeBack: 'Write this pack again',
  notSaved: 'Not saved yet. Copy it before you go on:',
  nothing: 'Nothing was waiting to be saved.',
  copy: 'Copy',
  copied: 'Copied.',
  copyByHand: 'Select the text and copy it.',
  savePhoto: (number: number) => `Save photo ${number} that is not saved yet`,
  keptFor: 'It is shown once more after the page has been loaded again.',
  again: 'Load again',
};

/** After such a reload. */
export const leftBehindWords = {
  title: 'Not saved before the page was loaded again',
  lead: 'Enter it again where it belongs; it is not in the records.',
  done: 'Done with it',
};
