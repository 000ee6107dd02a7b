import type { EntryKey } from '../schema/entry.ts';
import { afterwardsWords } from './afterwards.ts';
import { calloutWords } from './callouts.ts';
import { GRADE_WORDS } from './grades.ts';
import { nameplateWords } from './nameplate.ts';
import { photoWords } from './photo-screens.ts';
import { stateWords } from './sheet-record.ts';

/** What is needed to name an entry as a person would. */
export interface NamedEntry {
  key: EntryKey;
  v: unknown;
  /** The checklist's own words for an item, a fact, a zone or a remedy; its id where there are none. */
  titleOf(id: string): string;
}

type Fields = Readonly<Record<string, unknown>>;
type Namer = (part: string, value: Fields, titleOf: NamedEntry['titleOf']) => string;

/** An entry in words: "Answer to Cell vents: weak", "Callout 'lifted weld'", "Nameplate: Maker". */
export function entryName({ key, v, titleOf }: NamedEntry): string {
  const [, subject, part] = key;
  const value = typeof v === 'object' && v !== null ? (v as Fields) : {};
  const namer = Object.hasOwn(NAMERS, subject) ? NAMERS[subject] : undefined;
  return namer ? namer(part, value, titleOf) : `${subject}, ${part}`;
}

const NAMERS: Readonly<Record<string, Namer>> = {
  pack: (part) => PACK_PARTS[part] ?? `The pack: ${part}`,
  nameplate: (part) => `${nameplateWords.title}: ${wordIn(nameplateWords.labels, part)}`,
  answer: (part, value, titleOf) => `Answer to “${titleOf(part)}”${tail(wordIn(GRADE_WORDS, textOf(value.grade)))}`,
  fact: (part, _, titleOf) => `About this pack: ${titleOf(part)}`,
  photo: (_, value, titleOf) => {
    const zone = textOf(value.zone);
    const where = photoWords.outside[zone] ?? titleOf(zone);
    return `Photo, ${where}${quoted(value.caption)}`;
  },
  photoItem: (part, _, titleOf) => `Photo at “${titleOf(part.split('/')[1] ?? '')}”`,
  callout: (_, value) =>
    `Callout, ${wordIn(calloutWords.kinds, textOf(value.kind)).toLowerCase()}${quoted(value.text)}`,
  makeSafe: () => 'Make safe, as it was passed',
  state: (part) => `Lid off: ${wordIn(stateWords.names, part)}`,
  afterwards: (part) => `${afterwardsWords.title}: ${wordIn(afterwardsWords, part)}`,
  words: (part) => `Your words: ${wordIn(afterwardsWords, part)}`,
  closing: (_, value) => `Closed sheet, revision ${textOf(value.revision)}`,
  reopening: (_, value) => `Reason for a revision${quoted(value.reason)}`,
  attachment: (_, value) =>
    `${value.kind === 'makerReply' ? 'Maker’s reply' : 'Correction'} to a closed sheet${quoted(value.text)}`,
  offer: (_, value) => `${value.kind === 'option' ? 'Option' : 'Price'}${quoted(value.label)}`,
  remedyNote: (part, _, titleOf) => `What a remedy takes${quoted(titleOf(part))}`,
  take: (_, value) => `Take${quoted(value.label)}`,
  takeMark: (_, value) => (value.kind === 'word' ? `Mark in a take${quoted(value.label)}` : 'Moment in a take'),
  secondReader: (_, value) => `Second reader${quoted(value.label)}`,
  secondAnswer: (part, value, titleOf) =>
    `Second reader on “${titleOf(part.split('/')[1] ?? '')}”${tail(wordIn(GRADE_WORDS, textOf(value.grade)))}`,
  voice: (_, value, titleOf) => `Voice note${voicePlace(value.on, titleOf)}${quoted(value.label)}`,
  instrument: (_, value) => `Instrument${quoted(value.name)}`,
  run: (_, value) => `Capacity run${quoted(value.label)}`,
  log: (_, value) => `Log${quoted(value.name)}`,
  trip: () => 'Over-current test',
  cutOff: () => 'Cut-off test',
  sensorGate: () => 'Gate of the hot and cold sensor tests, as it was passed',
  cellSet: () => 'A set of cell readings',
  cell: (part) => `Reading of cell ${part.split('/')[1] ?? ''}`,
  resistance: () => 'Resistance test',
  lead: (_, value) => `Lead${quoted(value.label)}`,
  joint: (_, value) => `Joint${quoted(value.label)}`,
  drain: () => 'Standby drain',
  parallelRun: () => 'Run in parallel',
  parallelShare: (part) => `Share of pack ${part.split('/')[1] ?? ''} in a run in parallel`,
  readOut: () => 'What the BMS reads out',
  cellMark: (_, value) => `Cell code${quoted(value.text)}`,
  ruler: () => 'Measurement on a photo',
};

/** " on “Cell vents”", " on a photo". */
function voicePlace(on: unknown, titleOf: NamedEntry['titleOf']): string {
  if (typeof on !== 'object' || on === null || !('kind' in on)) return '';
  if (on.kind === 'photo') return ' on a photo';
  return 'id' in on ? ` on “${titleOf(textOf(on.id))}”` : '';
}

const PACK_PARTS: Readonly<Record<string, string>> = {
  made: 'The pack itself, put away',
  checklist: 'The checklist it is graded by',
  carriedFrom: 'The checklist it was carried over from',
  route: 'How much is asked',
  keepOriginals: 'Whether camera originals are kept',
  retestOf: 'The pack it is a retest of',
};

/** Longest words of the person's own that are quoted. Our choice: one line on a phone. */
const MAX_QUOTE = 60;

function quoted(value: unknown): string {
  const text = textOf(value);
  if (text === '') return '';
  return `: “${text.length > MAX_QUOTE ? `${text.slice(0, MAX_QUOTE - 1)}…` : text}”`;
}

function tail(words: string): string {
  return words === '' ? '' : `: ${words}`;
}

function textOf(value: unknown): string {
  return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
}

/** The word for an id, the id itself where there is none. */
function wordIn(words: Readonly<Record<string, unknown>>, id: string): string {
  return Object.hasOwn(words, id) ? textOf(words[id]) : id;
}
