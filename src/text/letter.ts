import { listOf } from './sheet.ts';

interface Judged {
  /** Of the newest entry; null of an empty record. */
  day: string | null;
  checklist: string;
  route: string;
  /** Items asked, those of the checklist, and those of the asked that are settled. */
  asked: number;
  all: number;
  settled: number;
}

/** The letter to the maker: facts, readings, opinion apart, what is asked. */
export const letterWords = {
  title: 'Letter to the maker',
  overline: (day: string | null) => (day === null ? 'Letter to the maker' : `Letter to the maker · ${day}`),
  to: (maker: string) => `To: ${maker}`,
  toNobody: 'To: the maker, not named on the nameplate',
  model: (model: string) => `model ${model}`,
  serial: (serial: string) => `serial number ${serial}`,
  revision: (revision: string) => `revision ${revision}`,
  madeOn: (when: string) => `made ${when}`,

  judged: ({ day, checklist, route, asked, all, settled }: Judged) =>
    `One sample of this pack was judged${day === null ? '' : `, up to ${day},`} by the checklist ${checklist} on the ${route}: ${asked === all ? `all ${all}` : `${asked} of its ${all}`} items were asked, ${settledWords(settled, asked)}.`,
  ranTests: (tests: readonly string[]) =>
    tests.length === 0 ? 'It was not tested under load.' : `It was also tested: ${listOf(tests)}.`,
  runs: (count: number) => (count === 1 ? 'one capacity run' : `${count} capacity runs`),
  trips: (count: number) => (count === 1 ? 'one over-current trial' : `${count} over-current trials`),
  cutOffs: (count: number) => (count === 1 ? 'one trial of a cut-off' : `${count} trials of cut-offs`),
  verdict: (verdict: string, score: string | null) =>
    score === null
      ? `By the rules of that checklist the verdict is “${verdict}”.`
      : `By the rules of that checklist the verdict is “${verdict}”, the score ${score} of 100.`,

  facts: 'Facts: what was found, worst first',
  noFinding: 'No item that was looked at was graded weak or failed.',
  finding: (title: string, marks: readonly string[], sentence: string) => `${title} (${marks.join(', ')}): ${sentence}`,
  risk: (risk: string) => `${risk} risk`,
  reading: (found: string) => `Reading: ${found}.`,
  noted: (note: string) => `Noted: ${note}`,
  further: (titles: readonly string[]) => `Also on the sheet: ${titles.join('; ')}.`,

  readings: 'Readings',
  delivered: (delivered: string, promised: string | null) =>
    promised === null
      ? `Delivered: ${delivered}; nothing promised.`
      : `Delivered: ${delivered}; promised: ${promised}.`,
  notDelivered: 'Delivered capacity: not tested.',
  noFigure: 'Delivered capacity: tested; no run gave a figure.',
  overcurrent: (verdict: string, detail: string | null) =>
    `Too much current: ${verdict}${detail === null ? '' : `; ${detail}`}.`,
  noOvercurrent: 'Too much current: not tried.',
  cutOffsTried: (trials: readonly string[]) => `Cut-offs: ${trials.join('; ')}.`,
  trial: (kind: string, outcome: string) => `${kind}: ${outcome}`,
  noCutOffs: 'Cut-offs: none tried.',
  matters: { delivered: 'Delivered capacity', overcurrent: 'Too much current', cutOffs: 'Cut-offs' },
  notWorkedOut: (matter: string) => `${matter}: tried; the figures could not be worked out.`,

  opinion: 'Opinion of the tester, apart from the facts',
  opinionOf: (name: string | undefined) => (name === undefined ? 'The tester writes' : `${name} writes`),
  noOpinion: 'None is given beyond the facts above.',

  ask: 'What is asked of you',
  asks: 'Please hold these facts and readings against your own records and say where one is wrong: a mistake is put right and named. Please say whether other units are alike, from which revision or serial number on that has changed, and what an owner should do until then.',
  reply:
    'You have the right of reply. What you answer is attached to the sheet whole, unshortened, and stands on it from then on.',
  withheld: 'A sign of damage was found, so the score is withheld.',
  sheetOpen: 'The sheet is not closed: it may still change.',
  sheetClosed: (revision: number, sha256: string) => `Sheet revision ${revision}, SHA-256 ${sha256}.`,
  signed: (name: string) => `Signed: ${name}`,
  signedNobody: 'Signed: the tester, who is not named',

  screen: {
    title: 'Letter to the maker',
    intro: 'One page, made of the record as it stands. Read it through before it goes out; nothing is sent from here.',
    text: 'The same as plain text',
    textHint: 'For an e-mail or a form on the maker’s site.',
    textFile: 'Letter as a text file',
    opinionHint: 'Opinion and name are written under Afterwards.',
    toAfterwards: 'Go to Afterwards',
    noMaker: 'The nameplate names no maker.',
    toNameplate: 'Go to the Nameplate',
  },
};

function settledWords(settled: number, asked: number): string {
  if (settled === 0) return 'none is settled';
  if (settled === asked) return 'all are settled';
  return settled === 1 ? '1 is settled' : `${settled} are settled`;
}
