/** The screen on which a pack is published: what can be taken away, and what to know before. */
export const publishWords = {
  title: 'Publish',
  intro: 'Everything here is made on this phone and handed to you. Nothing is sent by Underlid.',
  disclosure: 'Stands on all of it',
  notStated: 'How the sample came to you is not stated. Readers ask that first.',
  commissionNotStated: 'Whether your links pay a commission is not stated.',
  toNameplate: 'State it on the Nameplate',
  notClosed:
    'The sheet is not closed. What goes out now may no longer agree with the record tomorrow, and carries no SHA-256 to check it by.',
  toSheet: 'Go to the sheet to close it',

  toShow: 'To show and to send',
  card: { title: 'Picture card', hint: 'for a post or over a video' },
  sheet: { title: 'Sheet as PDF', hint: 'the whole result, page by page' },
  owner: { title: 'Owner’s page', hint: 'before this pack is used' },
  letter: { title: 'Letter to the maker', hint: 'facts, readings, opinion apart' },
  chapters: { title: 'Chapters', hint: 'times of findings in a video' },

  toWorkOn: 'To work on in other programs',
  csv: {
    label: 'Findings as CSV',
    hint: 'A row for each finding: for a spreadsheet or a list of many packs.',
  },
  json: {
    label: 'Findings as JSON',
    hint: 'Verdict, zones, findings and headline figures, never rounded: for programs.',
    schema: 'Its shape is described in',
  },
  photos: {
    label: 'Photos with callouts as zip',
    hint: 'Each photo with its cover-ups burnt in, and all callouts as W3C Web Annotations.',
    none: 'No photo was taken.',
    failed:
      'The photos could not be put together. Nothing in the record was changed. Close other apps and try again, or take the PDF.',
    missing: (count: number) =>
      count === 1
        ? 'One photo is not on this phone, or its cover-up could not be burnt in: it was left out.'
        : `${count} photos are not on this phone, or their cover-ups could not be burnt in: they were left out.`,
  },

  reporting: {
    title: 'Where a dangerous product can be reported',
    law: 'Local law comes first; some of these have duties and deadlines of their own.',
    places: [
      {
        who: 'The authority for market surveillance or consumer safety of your country',
        what: 'takes reports of products that can harm, and can have them looked into or taken off the market.',
      },
      { who: 'The marketplace or shop that sells it', what: 'can stop the sale and warn those who bought it.' },
      {
        who: 'The maker or importer',
        what: 'knows which other units are alike, and answers for them: the letter above is for this.',
      },
      {
        who: 'The carrier, and the authority for the transport of dangerous goods',
        what: 'where a pack came damaged, swollen or badly packed, or was shipped as something else.',
      },
      {
        who: 'The fire service',
        what: 'at once where a pack smokes, hisses, heats by itself or has burnt.',
      },
    ],
    how: 'Give facts only: what was seen, on which sample, when, and how it was obtained. Send the closed sheet, say what you did not test, and keep the sample as it is in case it is asked for.',
  },
  files: {
    findings: 'findings',
    photos: 'photos',
  },
};
