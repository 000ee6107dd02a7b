import type { RiskLevel } from '../schema/checklist.ts';
import type { Evidence } from '../schema/grade.ts';
import type { Route } from '../schema/pack-states.ts';
import { formatFixed } from './format-number.ts';
import { RISK_WORDS } from './risk.ts';

/** Words of the Sheet: its headings, and the sentences that stand between the figures. */
export const sheetWords = {
  overline: (day: string | null) => (day === null ? 'Build-quality sheet' : `Build-quality sheet · ${day}`),
  subject: 'Build-quality sheet of one battery pack',
  draftChecklist: 'draft checklist',
  shortRoute: (asked: number, all: number) => `Short route: ${asked} of ${all} asked`,
  shortRouteNote:
    'A short route asks the safety items and the weightiest others. It is never ranked against a whole one.',
  oneSample: (day: string | null) =>
    day === null ? 'One sample, as found. No certification.' : `One sample, as found on ${day}. No certification.`,
  madeBy: (appVersion: string, checklist: string) => `Underlid ${appVersion} · ${checklist}`,
  page: (page: number, pages: number) => `${page} of ${pages}`,
  runningHead: (title: string, marks: readonly (string | null)[]) =>
    [title, ...marks.filter((mark) => mark !== null)].join(' · '),
  lacking: (count: number) =>
    count === 1
      ? 'One character could not be printed with the typeface of this sheet and stands as □.'
      : `${count} characters could not be printed with the typeface of this sheet and stand as □.`,
  photoMissing: 'The picture is not on this phone.',
  photoUnreadable: 'The stored picture is not a JPEG that can be printed.',

  sections: {
    result: 'Result',
    findings: 'Findings',
    promised: 'Promised and delivered',
    tests: 'Live tests',
    remedies: 'What would put it right',
    ledger: 'Where the points went',
    since: 'Since the earlier sample',
    open: 'What was not seen, and what was taken on trust',
    secondReading: 'Graded a second time',
    method: 'How it was done',
    afterwards: 'What became of the sample',
    words: 'Opinion and reply',
    attached: 'Attached after closing',
    closing: 'Closed and revised',
    answers: 'Every answer',
    photos: 'Further photos',
    sources: 'Sources',
    cautions: 'Cautions',
  },

  figures: {
    build: 'Build',
    factor: 'Factor',
    score: 'Score',
    afterOutside: 'After outside work',
    afterWorkshop: 'After all work',
  },
  nothingToScore: 'Nothing to score: no item of this checklist can apply to this pack.',
  withheld: 'Build, factor, score and what remedies would give are withheld.',
  stopPossible: 'A stop sign is not ruled out: until its item is settled, the low end is judged as if it were there.',
  settledShare: (share: string, settled: number, asked: number) =>
    `${share} of the weight is settled (${settled} of ${asked} items asked). The range holds whatever the open items turn out to be.`,
  ruleAlt: (figures: string, settled: boolean) =>
    settled ? `Score ${figures} on a scale from 0 to 100.` : `Score between ${figures} on a scale from 0 to 100.`,
  zoneDetail: (settled: number, asked: number, weight: string) => `${settled} of ${asked} settled · ${weight} of Build`,
  zoneOutside: 'nothing to look at in this pack',
  nothingGraded: 'nothing graded yet',

  findings: {
    none: 'No item that was looked at was graded weak or failed.',
    mayBe: (grade: string) => `maybe ${grade}`,
    open: 'may still not apply: a fact about the pack is open',
    cost: (points: string) => `costs ${points} ${points === '1.0' ? 'point' : 'points'} of Build`,
    noRisk: 'no hazard: costs credit only',
    likelihoodReason: (because: string) => `Likelihood differs from the rule: ${because}`,
    note: 'The tester notes',
    photos: (numbers: number[]) =>
      numbers.length === 1 ? `photo ${numbers[0]}` : `photos ${listOf(numbers.map((number) => String(number)))}`,
    noPhoto: 'no photo',
    basis: (parts: string[]) => `Basis: ${parts.join('; ')}.`,
  },

  basis: {
    commonPractice: 'common practice, no source',
    ourChoice: (because: string) => `our choice: ${because.replace(/\.$/, '')}`,
    secondary: (source: string) => `${source} (as quoted elsewhere)`,
    bears: (source: string, bears: string) => `${source} (${bears})`,
    memoryOnly: 'none that was opened, so none is printed',
  },

  remedies: {
    none: 'No remedy in the checklist bears on what was found.',
    intro:
      'In this order: first what an owner can do from outside, then workshop work inside the pack; within each, what gains most comes first. Each gain is on top of those before it.',
    outside: 'from outside',
    workshop: 'workshop',
    clears: (hazards: string) => `clears: ${hazards}`,
    gain: (points: string) => `+${points}`,
    after: (points: string) => `then ${points}`,
    fuseOpen: 'counts at the high end only: whether a fuse fits is not settled',
  },

  ledger: {
    start: 'A pack with nothing to find',
    build: 'Build',
    score: 'Score',
    open: 'still open',
    low: 'The low end of the range: open items count at their worst.',
    factor: (hazard: string, k: number) => `${hazard}, × ${formatFixed(k, 2)}`,
    risk: (risk: RiskLevel) => `${RISK_WORDS[risk]} risk`,
    nothingLost: 'No point was lost.',
    shown: 'Points are shown to one decimal; the shown lines are apportioned so that they add up.',
  },

  open: {
    notSeen: 'Not seen',
    unanswered: 'Not answered',
    inPart: 'Measured in part: more than one grade is still possible',
    overruled: 'Graded against what was measured, with the reason',
    factOpen: 'Open until a fact about the pack is known',
    errors: 'Could not be worked out',
    facts: 'Facts not settled',
    unlooked: (count: number) =>
      `${count === 1 ? 'One item was' : `${count} items were`} not looked at singly: answered at one stroke, “the rest of this zone is sound”`,
    told: 'Told, not looked at here',
    notApplicable: 'Said not to apply',
    setAside: (count: number) =>
      `${count === 1 ? 'One stored value' : `${count} stored values`} could not be read and ${count === 1 ? 'is' : 'are'} left out of this sheet.`,
    nothing: 'Every item asked was looked at and settled.',
  },

  words: {
    opinion: 'Opinion of the tester, apart from the findings',
    opinionOf: (name: string) => `Opinion of ${name}, apart from the findings`,
    noOpinion: 'The tester gives no opinion beyond the findings.',
    reply: 'Reply of the maker',
    noReply:
      'The maker has the right to reply. A reply is printed here whole, and a mistake shown to us is put right in the record and named. None has been received.',
  },

  answers: {
    safety: 'safety',
    stop: 'stop item',
    unlooked: 'not looked at singly',
    spoken: (count: number) => (count === 1 ? 'voice note kept' : `${count} voice notes kept`),
    notAsked: (count: number) => `${count === 1 ? 'One item is' : `${count} items are`} not asked on this route.`,
  },

  photo: {
    title: (number: number, zone: string, when: string | null) =>
      [`Photo ${number}`, zone, ...(when === null ? [] : [when])].join(' · '),
    shows: (items: string) => `shows: ${items}`,
    unnamedLeader: 'not described',
  },

  sources: {
    opened: 'Read in the original',
    quoted: 'As quoted elsewhere',
    memory: 'From memory, not opened; printed as the basis of no finding',
    calculations: 'Of the calculations from the live tests',
    commonPractice: (count: number) =>
      `${count} ${count === 1 ? 'item rests' : 'items rest'} on common practice, with no source.`,
    ourChoice: (count: number) => `${count} ${count === 1 ? 'item rests' : 'items rest'} on a choice of ours.`,
  },

  cautions: {
    sample: (day: string | null) =>
      `This sheet speaks of one sample${day === null ? '' : `, as found on ${day}`}. Other samples and later revisions may differ. It is no certification and no approval.`,
    score:
      'Build is what the work is worth item by item. Each way to come to harm multiplies it once, by its worst risk. Delivered capacity and cost stand beside the score, not in it.',
    factors: (k: Record<RiskLevel, number>) =>
      `The factors are a choice of the checklist: high ${formatFixed(k.high, 2)}, serious ${formatFixed(k.serious, 2)}, medium ${formatFixed(k.medium, 2)}, low ${formatFixed(k.low, 2)}.`,
    closedAgain:
      'This sample was opened and closed again. It is no longer the tested type: do not ship, sell or lend it.',
    opened:
      'This sample was opened. Closed again, it would no longer be the tested type: it must not be shipped, sold or lent.',
    work: 'Cells stay live. Work inside a pack belongs in a workshop equipped for it; local codes and a licensed practitioner come first.',
  },
} as const;

export const ROUTE_WORDS: Readonly<Record<Route, string>> = { short: 'short route', whole: 'whole route' };

export const HOW_KNOWN: Readonly<Record<Evidence, string>> = {
  seen: 'seen',
  measured: 'measured',
  told: 'told, not looked at here',
};

/** "a", "a and b", "a, b and c". */
export function listOf(parts: readonly string[]): string {
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

/** First letter raised, for a word that begins a line. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
