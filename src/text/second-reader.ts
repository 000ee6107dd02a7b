import type { Grade } from '../schema/grade.ts';
import { formatFixed, outward } from './format-number.ts';
import { GRADE_WORDS } from './grades.ts';

const things = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;
const items = (count: number) => things(count, 'item', 'items');

/** What one line needs of an agreement. */
interface Agreed {
  kappa: { kappa: number } | null;
  sameCount: number;
  pairCount: number;
}

/** Words of the second reader: somebody else grades the pack blind, from its photos. */
export const secondReaderWords = {
  title: 'Second reader',
  lead: 'Somebody else grades the pack from its photos alone, without the grades, notes and callouts of the first. How far both agree then stands on the sheet.',
  shown: (count: number) =>
    count === 1 ? 'One item has photos to look at.' : `${count} items have photos to look at.`,
  noneShown:
    'No item can be told from the photos yet: none of them is of an item asked, or of a zone where looking settles one.',
  toPhotos: 'To the photos',
  nameOf: (number: number, label: string | undefined) =>
    label === undefined || label === '' ? `Second reader ${number}` : `Second reader ${number}: ${label}`,
  none: 'Nobody has read it a second time.',

  begin: 'Begin a second reading',
  beginAnother: 'Begin another',
  beginTitle: 'Second reading',
  handOver: 'Hand the phone to the second reader now. From here on nothing shows what the first one found.',
  label: 'Name or initials, if they are to stand on the sheet',
  blind: 'I have not seen the grades of this pack',
  notBlind: 'Without the tick it can be read all the same; the sheet then does not call it blind.',
  beginNow: 'Begin',

  goOn: 'Go on',
  progress: (done: number, all: number) => `${done} of ${all} answered`,
  finish: (open: number) => (open === 0 ? 'Finish the reading' : `Finish with ${items(open)} not answered`),
  finishTitle: 'Everything is answered',
  finishLead: 'Once it is finished, both readings are laid side by side and no answer can be changed any more.',
  finishAsk: (open: number) =>
    `${items(open)} ${open === 1 ? 'is' : 'are'} not answered. Once it is finished, no answer can be changed any more.`,
  finishNow: 'Finish now',
  toSheet: 'To the sheet',
  see: 'How they agree',
  takeOut: 'Take it out',
  leave: 'Second reader',

  photoOf: (number: number, count: number) => (count === 1 ? 'The one photo' : `Photo ${number} of ${count}`),
  photoAlt: 'Photo, without callouts',
  earlier: 'Previous photo',
  later: 'Next photo',
  closer: 'Look closer',
  closerAt: (photo: string) => `${photo}: look closer`,
  stageKeys: 'Plus and minus magnify, the arrows move the photo.',
  cannotTell: 'Cannot tell from the photos',
  doesNotApply: 'Does not apply',
  clear: 'Take the answer back',
  next: 'Next ›',
  lost: 'There is no such second reading, or its item is on no photo any more.',

  /** All begin alike, so that the screens can tell them from changes of the first reader's. */
  undo: {
    begins: 'Second reader',
    begun: (name: string) => `${name}: begun`,
    answer: (number: number, item: string) => `Second reader ${number}: ${item}`,
    takenOut: (name: string) => `${name}: taken out`,
  },
} as const;

/** How both readings agree, on the screen and on the sheet. */
export const agreementWords = {
  intro: ({ answered, shown, isBlind }: { answered: number; shown: number; isBlind: boolean }) =>
    isBlind
      ? `Graded once more by somebody who had not seen the grades, from the photos alone and without the callouts: ${items(answered)} answered of ${shown} that have photos.`
      : `Graded once more by somebody else, from the photos alone and without the callouts: ${items(answered)} answered of ${shown} that have photos. It was not said that the grades were unknown to them.`,
  changedSince: (count: number) =>
    `${count === 1 ? 'One grade' : `${count} grades`} of the first reader ${count === 1 ? 'was' : 'were'} changed since: the agreement is with those that stood when this reading was finished.`,
  kappa: 'Kappa',
  notTold: 'cannot be told',
  same: 'Same grade',
  sameOf: (same: number, pairs: number) => `${same} of ${pairs}`,
  farApart: 'Two grades apart or more',
  figure: (kappa: number) => formatFixed(kappa, 2),
  /** Rounded outwards; both ends may be below 0, so a dash would not do. */
  interval: (ends: { low: number; high: number; isCut: boolean }) => {
    const { low, high } = outward(ends, 2);
    return `95\u00a0%: ${formatFixed(low, 2)} to ${formatFixed(Math.min(1, high), 2)}${ends.isCut ? ', cut off at 1' : ''}`;
  },
  noInterval: 'no interval can be told',
  inOneLine: ({ kappa, sameCount, pairCount }: Agreed) =>
    `${kappa === null ? 'Kappa cannot be told' : `Kappa ${formatFixed(kappa.kappa, 2)}`}, the same grade on ${sameCount} of ${pairCount}.`,
  meaning:
    'Kappa counts agreement beyond chance, a grade next to the other counting for two thirds, two grades off for a third. 1: the same grade every time. 0: no more alike than two who each give their grades as often, but by chance. Below 0: less than that.',
  reach:
    'An interval made this way holds the kappa of many more such items 19 times in 20; with few items it is too narrow. What was photographed was chosen by the first reader.',
  fewer: 'Kappa needs at least two items that both graded.',
  allAlike: 'Both gave one and the same grade throughout: chance alone would agree as well, so kappa cannot be told.',
  source: 'Linear weights; standard error of Fleiss, Cohen and Everitt, Psychological Bulletin 72(5), 1969, 323–327.',
  table: 'Grades of the first reader, and what the second gave',
  cell: (count: number, grade: Grade) => `${count}\u00a0${GRADE_WORDS[grade]}`,
  differ: 'Where they differ',
  noDifference: 'They differ on no item that both graded.',
  both: (first: Grade, second: Grade) => `first ${GRADE_WORDS[first]}, second ${GRADE_WORDS[second]}`,
  apart: (steps: number) => `${steps} grades apart`,
  leftOut: 'Left out of it',
  leftOutNone: 'Every item shown was graded by both.',
  why: {
    firstNotSeen: 'first reader: not seen',
    firstDoesNotApply: 'first reader: does not apply',
    firstOpen: 'first reader: not answered, or still open',
    secondCannotTell: 'second reader: cannot tell from the photos',
    secondDoesNotApply: 'second reader: does not apply',
    secondNotAnswered: 'second reader: not answered',
  },
  items,
} as const;
