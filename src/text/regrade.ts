import type { RiskLevel } from '../schema/checklist.ts';
import { formatFixed } from './format-number.ts';
import { RISK_WORDS } from './risk.ts';

/** Why an item counts otherwise under a newer checklist. Keys as in the engine's reasons. */
export const MOVE_REASONS = {
  addedOpen: 'added, still open',
  addedSettled: 'added, settled by what was noted already',
  removed: 'no longer asked',
  nowMeasured: 'now graded by readings',
  otherBands: 'graded by other limits',
  otherCondition: 'applies under another condition',
  otherOutcome: 'comes to another outcome',
  otherMeaning: 'its sentences are other ones; the answer was given to the earlier',
  otherWeight: 'another weight',
  otherZone: 'in another zone',
  otherZoneWeight: 'its zone has another weight',
  otherCredit: 'its grade earns another share',
} as const;

/** Keep: what a newer checklist would make of the packs on this phone. */
export const regradeWords = {
  keepLead: 'Which scores would move, and why.',
  link: 'Re-grade under a newer checklist',
  title: 'Re-grade',
  lead: 'Nothing here is changed until you say so. Every answer stays; the newer checklist grades by readings what it can and asks more items, open until answered.',
  looking: (done: number, all: number) => `Grading twice: ${done} of ${all} packs …`,
  stop: 'Stop',
  again: 'Look again',
  stoppedAt: (done: number, all: number) => `Stopped: ${done} of ${all} packs were looked at.`,
  noneNewer: 'Every pack on this phone is graded by the newest checklist it has.',
  newer: (count: number) => `${count === 1 ? 'One pack has' : `${count} packs have`} a newer checklist on board.`,
  still: (count: number) =>
    count === 1
      ? 'Of one of them neither score nor verdict would move.'
      : `Of ${count} of them neither score nor verdict would move.`,
  stillTick: (count: number) =>
    count === 1 ? 'Take the one that does not move as well' : `Take the ${count} that do not move as well`,
  unread: (labels: string) => `The checklist of these packs is not on this phone, so they were passed over: ${labels}.`,
  all: 'Tick all',
  none: 'Tick none',
  becomesRevision: 'sheet closed: becomes a revision',
  why: 'Why',
  openPack: 'Open this pack',
  reason: 'Reason for the revisions',
  reasonHint: (count: number) =>
    count === 1
      ? 'One of the packs ticked has a closed sheet: this is said on it.'
      : `${count} of the packs ticked have a closed sheet: this is said on each.`,
  reasonDefault: (versions: readonly string[]) => `graded by checklist ${versions.join(', ')}`,
  carry: (count: number) => (count === 1 ? 'Carry over one pack' : `Carry over ${count} packs`),
  tickFirst: 'Tick the packs to carry over',
  carrying: (done: number, all: number) => `Carrying over: ${done} of ${all} …`,
  carried: (count: number) =>
    count === 1
      ? 'One pack was carried over. It can be undone on its own screen.'
      : `${count} packs were carried over. Each can be undone on its own screen.`,
  carriedSome: (count: number, all: number) =>
    `Stopped: ${count} of ${all} packs were carried over. Each can be undone on its own screen.`,
  notSaved: (label: string) =>
    `This phone did not save the change to ${label}, so the rest was left alone. Free some space, then try again.`,
  changedMeanwhile: (labels: string) => `Carried over elsewhere in the meantime, and left alone: ${labels}.`,

  moves: {
    was: (version: string) => `Low end by ${version}`,
    now: (version: string) => `Low end by ${version}`,
    outcome: (was: string, now: string) => (was === now ? was : `${was}, then ${now}`),
    shares: (count: number) =>
      count === 1 ? 'One other item weighs otherwise beside them' : `${count} other items weigh otherwise beside them`,
    sharesDetail: 'same outcome, another share of the zone',
    sameFactors: (count: number) =>
      count === 1 ? 'The same factor on another Build' : `${count} factors, the same, on another Build`,
    factor: (hazard: string) => `${hazard}, factor`,
    risk: (was: RiskLevel | null, now: RiskLevel | null) =>
      `${was === null ? 'no risk' : `${RISK_WORDS[was]} risk`} before, ${now === null ? 'no risk' : RISK_WORDS[now]} after`,
    nowBy: (items: string) => `now also by ${items}`,
    noLongerBy: (items: string) => `no longer by ${items}`,
    times: (was: number, now: number) => `× ${formatFixed(was, 2)} before, × ${formatFixed(now, 2)} after`,
    noPoints: 'The score is withheld by one of the two checklists, so the moves have no points.',
    shown: 'Points of the low end of the score, line by line of the two ledgers; + raises it.',
  },
} as const;
