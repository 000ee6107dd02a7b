/** What a sheet says of being closed, revised, and spoken to afterwards. */
export const sheetClosingWords = {
  /** Marks in the head; the first also stands at the top of every page. */
  marks: {
    open: 'not closed',
    revising: (next: number) => `not closed: revision ${next} in the making`,
    closed: (revision: number) => `Closed, revision ${revision}`,
    replaced: (revision: number) => `Revision ${revision}, replaced`,
    sinceClosing: 'more has come in since',
    correction: 'correction attached',
    correctionTo: (revision: number) => `correction to revision ${revision} attached`,
    makerReply: 'maker’s reply attached',
  },

  /** The same in a sentence. */
  standing: {
    open: 'Not closed: it may still change.',
    revising: ({ revision, next, since, reason }: Reopened) =>
      `Being revised since ${since}: ${ended(reason)} It may still change until revision ${next} is closed; until then revision ${revision} counts.`,
    closed: (revision: number, moment: string) =>
      `Closed as revision ${revision} on ${moment}. Its SHA-256 stands under “Closed and revised”.`,
    reopened: ({ revision, next, since, reason }: Reopened) =>
      `Revision ${revision} as it was closed. Opened again on ${since}: ${ended(reason)} Revision ${next} is in the making.`,
    replaced: (revision: number, by: { revision: number; on: string; reason: string | undefined }) =>
      `Revision ${revision}, replaced by revision ${by.revision} on ${by.on}${by.reason === undefined ? '.' : `: ${ended(by.reason)}`}`,
    /** Closed on two phones, neither knowing of the other. */
    besides: (revision: number, on: string, counts: { revision: number; on: string }) =>
      `Revision ${revision} of ${on}. It was closed on another phone too: revision ${counts.revision} of ${counts.on} counts.`,
    sinceClosing: (count: number) =>
      count === 1
        ? 'One entry has come in since it was closed and is in no revision.'
        : `${count} entries have come in since it was closed and are in no revision.`,
    otherLines: (count: number) =>
      `This version of Underlid works ${count === 1 ? 'one line' : `${count} lines`} out otherwise than when it was closed. What was sealed counts: Keep, Recheck a sheet, says which.`,
  },

  revision: (revision: number, isThis: boolean) => `Revision ${revision}${isThis ? ', this sheet' : ''}`,
  closed: 'Closed',
  closedAt: (moment: string, offset: string) => `${moment} (${offset})`,
  closedWith: (appVersion: string) => `with Underlid\u00a0${appVersion}`,
  takesPlaceOf: 'Takes the place of',
  revisionOf: (revision: number, moment: string) => `revision ${revision} of ${moment}`,
  unknownRevision: 'a revision that is not on this phone',
  reason: 'Why it was made',
  replacedBy: 'Replaced by',
  verdict: 'Verdict it came to',
  score: 'Score it came to',
  withheld: 'withheld',
  noScore: 'nothing to score',
  sha256: (revision: number) => `SHA-256 of the JSON of revision ${revision}`,
  check:
    'The SHA-256 is that of the sheet’s JSON file: answers, checklist and every figure. With that file anyone can check it: sha256sum prints the same digits, and “Recheck a sheet” in Keep works every figure out again.',

  attached: {
    correction: 'Corrections, by the tester',
    correctionLead: 'Found to be wrong after closing.',
    makerReply: 'Replies of the maker',
    makerReplyLead: 'The maker’s own words, printed whole. Not checked by the tester.',
    label: ({ kind, revision, from, on }: AttachmentFacts) =>
      [
        `${kind === 'correction' ? 'Correction' : 'Reply'} to ${revision === undefined ? 'a revision that is not on this phone' : `revision ${revision}`}`,
        ...(from ? [from] : []),
        ...(on === undefined ? [] : [on]),
      ].join(' · '),
  },
  noReplyWhenClosed:
    'The maker has the right to reply. A reply is printed here whole, and a mistake shown to us is put right in the record and named. None had been received when this sheet was closed.',
} as const;

interface Reopened {
  revision: number;
  next: number;
  since: string;
  reason: string;
}

interface AttachmentFacts {
  kind: 'correction' | 'makerReply';
  revision: number | undefined;
  from: string | undefined;
  on: string | undefined;
}

/** A person's reason as the end of a sentence: with a stop where they set none. */
function ended(reason: string): string {
  const text = reason.trim();
  return /[.!?…]$/.test(text) ? text : `${text}.`;
}
