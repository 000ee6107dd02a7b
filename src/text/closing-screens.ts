import { words } from './words.ts';

/** The screens on which a sheet is closed, revised and spoken to; what the sheet itself says is in sheet-closing.ts. */
export const closingWords = {
  close: 'Close the sheet',
  closeNext: (revision: number) => `Close revision ${revision}`,
  closedOn: (revision: number, moment: string) => `Closed, revision ${revision}, on ${moment}.`,
  hash: 'SHA-256 of its JSON, to be compared digit by digit',
  saveJson: 'Save the sheet’s JSON',
  shareJson: 'Share it',
  jsonSaved: (name: string) => `${name} is among your downloads.`,
  jsonShared: (name: string) => `${name} is shared.`,
  jsonNotHere: 'The JSON of this revision is not on this phone: restore the backup that has it in Keep.',
  jsonDamaged: 'The JSON of this revision cannot be read. Restore a backup that has it in Keep.',
  reading: 'Reading what was sealed …',
  meanwhile: 'Below is the record as it stands, not what was sealed.',

  dialog: {
    title: (revision: number) => `Close the sheet as revision ${revision}`,
    lead: 'Closing seals answers, checklist and score: their JSON is kept, and its SHA-256 is printed on the sheet. Photos are sealed by their own hashes. A later change makes a new revision, with the reason.',
    reason: (reason: string) => `Why there is a revision: ${reason}`,
    stillOpen: 'Still open; the sheet says so:',
    unsettled: (titles: readonly string[], asked: number) =>
      `${titles.length} of ${asked} items not settled: ${some(titles)}`,
    facts: (asks: readonly string[]) =>
      `${asks.length} ${asks.length === 1 ? 'fact' : 'facts'} about the pack not settled: ${some(asks)}`,
    noPhoto: (titles: readonly string[]) =>
      `${titles.length} ${titles.length === 1 ? 'item' : 'items'} without the photo asked for: ${some(titles)}`,
    noFate: 'what became of the sample is not said',
    nothingOpen: 'Every item asked is settled and has its photo.',
    now: 'Close it',
    working: 'Sealing …',
    notClosed: 'Nothing was closed.',
    unreadable: 'The sheet could not be sealed. Nothing was closed. Load the page again and try once more.',
  },

  /** The question before a change of a closed sheet. */
  why: {
    title: 'This sheet is closed',
    ask: (revision: number) => `A change makes revision ${revision}: why?`,
    what: (lines: readonly string[]) => lines.join('; '),
    undo: (label: string) => `Take back: ${label}`,
    reason: 'Reason, printed on the sheet',
    make: (revision: number) => `Make revision ${revision}`,
    drop: words.cancel,
    dropTitle: 'Drop the photo?',
    dropPhoto: 'The photo you have just taken is saved nowhere yet. Dropped, it is gone.',
    dropNow: 'Drop it',
    dropNot: 'Back to the reason',
  },

  line: (revision: number) => `Closed, revision ${revision}`,
  lineHint: 'A change asks why.',
  station: {
    closed: (revision: number) => `closed, revision ${revision}`,
    revising: (next: number) => `revision ${next} in the making`,
  },

  comeIn: (count: number | null) =>
    count === null
      ? 'Entries have come in since it was closed, from another tab or a backup, and are in no revision.'
      : `${count} ${count === 1 ? 'entry has' : 'entries have'} come in since it was closed, from another tab or a backup, and ${count === 1 ? 'is' : 'are'} in no revision.`,
  comeInReason: 'Entries came in from another tab or a backup after it was closed.',

  revisions: 'Revisions',
  revision: (revision: number) => `Revision ${revision}`,
  look: 'look at it',
  now: 'this one',
  toNewest: (revision: number) => `To revision ${revision}`,

  attach: {
    part: 'Attached after closing',
    lead: 'A maker’s reply or a correction is added to the closed sheet without opening it.',
    makerReply: 'Attach a maker’s reply',
    correction: 'Attach a correction',
    text: { makerReply: 'The reply, whole', correction: 'What was wrong, and what is right' },
    from: { makerReply: 'From', correction: 'Found by' },
    on: { makerReply: 'Day it came in', correction: 'Day it was found' },
    now: 'Attach it',
    takeAway: 'Take it away',
    takeAwayAsk: 'Take it off the sheet? It cannot be edited, but a new one can be attached.',
  },
};

/** The first few by name; the sheet itself lists them all. */
function some(names: readonly string[]): string {
  const left = names.length - 4;
  return left > 1 ? `${names.slice(0, 4).join(', ')} and ${left} more` : names.join(', ');
}

/** A SHA-256 in groups of four digits, to be read aloud and compared. */
export function hashGroups(sha256: string): string[] {
  return sha256.match(/.{4}/g) ?? [];
}
