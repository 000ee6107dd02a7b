import { VERDICTS, type VerdictName } from '../schema/verdict.ts';
import { formatSignificant, formatTyped } from './format-number.ts';
import { VERDICT_WORDS } from './verdict.ts';

/** A figure of a sealed sheet; absent where one side has no such line. */
type Figure = number | string | boolean | null;

/** Words for the names in a path that do not say by themselves what they are. All others are split into words. */
const PLACE_WORDS: Readonly<Record<string, string>> = {
  earlier: 'By the earlier checklist',
  promised: 'Promised',
  items: 'Item',
  zones: 'Zone',
  hazards: 'Hazard',
  findings: 'Finding',
  remedies: 'Remedy',
  after: 'After remedies',
  afterRemedies: 'Cost after remedies',
  unpricedIds: 'remedies without a price',
  askedCount: 'items asked',
  itemCount: 'items in the checklist',
  settledCount: 'items settled',
  unlookedCount: 'items not looked at singly',
  openSafetyItemIds: 'Safety items still open',
  q: 'build',
  zoneId: 'zone',
  hazardId: 'hazard',
  clearsHazardIds: 'clears',
  frac: 'share (0–1)',
  perKwh: 'cost (per kWh)',
  pricePerKwh: 'price (per kWh)',
  interruptAtLeast20kA: 'interrupt of 20 kA or more',
  dcVoltageV: 'DC voltage (V)',
  worstBmsErrorMv: 'worst BMS error (mV)',
  k: 'factor',
  lines: 'line',
  factors: 'factor',
  outside: 'outside ones alone',
  workshop: 'all of them',
  capacity: 'Capacity',
  overcurrent: 'Over-current',
  mainLeadsAllowableA: 'Main leads allowed (A)',
  cells: 'Cells',
  bmsErrors: 'BMS error of cell',
  restBands: 'rest voltage of cell',
  shares: 'share of number',
  cutOffs: 'Cut-off',
  cellMarks: 'Cell code',
  itemIds: 'items',
  runIds: 'runs',
  gentleRunIds: 'gentle runs',
  hardRunIds: 'hard runs',
  leadId: 'lead',
  numbers: 'cells',
  possible: 'still possible',
  loweredByTold: 'lowered because only told',
  unlooked: 'not looked at singly',
  ok: 'can be told',
  fits: 'a fuse fits',
  kAs05PerMm2: 'k (A√s/mm²)',
  refused: 'could not be worked out',
  secondReaders: 'Second reader',
  shownCount: 'items shown',
  isCut: 'cut off at 1',
  observedFrac: 'agreement found (0–1)',
  chanceFrac: 'agreement by chance (0–1)',
  pairCount: 'items both graded',
  sameCount: 'of the same grade',
  farApartCount: 'two grades apart or more',
  counts: 'first reader',
  differences: 'differs on',
  leftOut: 'left out',
  firstNotSeen: 'first reader, not seen',
  firstDoesNotApply: 'first reader, does not apply',
  firstOpen: 'first reader, open',
  secondCannotTell: 'cannot tell',
  secondDoesNotApply: 'does not apply',
  secondNotAnswered: 'not answered',
};

/** Units as they end a name, longest first: "chargeUncertaintyAh" is "charge uncertainty (Ah)". */
const UNIT_ENDS: readonly (readonly [end: string, unit: string])[] = [
  ['APerMm2', 'A/mm²'],
  ['AhPerDay', 'Ah a day'],
  ['WhPerKg', 'Wh/kg'],
  ['WhPerL', 'Wh/L'],
  ['PerKwh', 'per kWh'],
  ['Microohm', 'µΩ'],
  ['Mohm', 'mΩ'],
  ['PerH', 'per hour'],
  ['DegC', '°C'],
  ['Mm2', 'mm²'],
  ['Frac', '0–1'],
  ['Mm', 'mm'],
  ['Mv', 'mV'],
  ['Ah', 'Ah'],
  ['Wh', 'Wh'],
  ['Kg', 'kg'],
  ['A', 'A'],
  ['V', 'V'],
  ['W', 'W'],
  ['K', 'K'],
  ['S', 's'],
];

/** Ends of a range, said right behind what they are ends of. */
const ENDS: readonly string[] = ['low', 'high', 'best'];

/**
 * One part of a path in words, given the words before it: "Zone Vents, build low". `name` is what the record or its
 * checklist calls it, null for a field of a result.
 */
export function withPlace(before: string, part: string, name: string | null): string {
  if (before === '') return capital(name ?? placeWords(part));
  if (name !== null) return `${before} ${name}`;
  return ENDS.includes(part) ? `${before} ${part}` : `${before}, ${placeWords(part)}`;
}

/** "Capacity, Run 1 · Gentle". */
export function afterTest(before: string, test: string): string {
  return before === '' ? test : `${before}, ${test}`;
}

export const lineWords = {
  /** Of tests of one kind. */
  tests: {
    instruments: 'Instrument',
    runs: 'Run',
    logs: 'Log',
    trips: 'Trip',
    cutOffs: 'Trial',
    cellSets: 'Cell readings',
    resistances: 'Resistance',
    leads: 'Lead',
    joints: 'Joint',
    drains: 'Drain',
    parallelRuns: 'Parallel run',
    readOuts: 'Read-out',
    cellMarks: 'Code',
    rulers: 'Ruler',
  } as Readonly<Record<string, string>>,
};

/** Both sides of a line, to as many digits as tell them apart. */
export function figurePair(one: Figure, other: Figure): [string, string] {
  if (typeof one === 'number' && typeof other === 'number') return numberPair(one, other);
  return typeof one === 'string' && typeof other === 'string'
    ? listPair(one, other)
    : [figureWords(one), figureWords(other)];
}

/** Figures of so many signs are shown whole. Our choice: two of them stand in a line of a phone. */
const SHORT_LENGTH = 6;

function numberPair(one: number, other: number): [string, string] {
  const whole: [string, string] = [formatTyped(one), formatTyped(other)];
  if (whole[0] !== whole[1] && whole.every((text) => text.length <= SHORT_LENGTH)) return whole;
  for (let digits = 4; digits < 17; digits += 1) {
    const pair: [string, string] = [formatSignificant(one, digits), formatSignificant(other, digits)];
    if (pair[0] !== pair[1]) return pair;
  }
  return [formatSignificant(one, 17), formatSignificant(other, 17)];
}

/** From this many members on that two lists share, these are "…". Our choice: a line of a phone. */
const MANY_SHARED = 3;

function listPair(one: string, other: string): [string, string] {
  const [mine, theirs] = [one.split(', '), other.split(', ')];
  const shared = mine.filter((member) => theirs.includes(member));
  const isOtherOrder = shared.length === mine.length && shared.length === theirs.length;
  if (isOtherOrder || shared.length < MANY_SHARED) return [figureWords(one), figureWords(other)];
  const short = (list: string[]) => ['…', ...list.filter((member) => !shared.includes(member)).map(wordOf)].join(', ');
  return [short(mine), short(theirs)];
}

/** A figure in words. Names of items and tests are put in before. */
export function figureWords(figure: Figure): string {
  if (figure === null || figure === '') return 'none';
  if (typeof figure === 'boolean') return figure ? 'yes' : 'no';
  return typeof figure === 'number' ? formatTyped(figure) : figure.split(', ').map(wordOf).join(', ');
}

function wordOf(text: string): string {
  if (isVerdict(text)) return VERDICT_WORDS[text].title;
  return /^[a-z]+[a-zA-Z0-9]*( \d+)?$/.test(text) ? splitWords(text) : text;
}

function isVerdict(text: string): text is VerdictName {
  return (VERDICTS as readonly string[]).includes(text);
}

function placeWords(part: string): string {
  const known = Object.hasOwn(PLACE_WORDS, part) ? PLACE_WORDS[part] : undefined;
  if (known !== undefined) return known;
  const unit = UNIT_ENDS.find(([end]) => part.length > end.length && part.endsWith(end));
  if (unit === undefined) return splitWords(part);
  return `${splitWords(part.slice(0, -unit[0].length))} (${unit[1]})`;
}

/** "chargeUncertainty" → "charge uncertainty". */
function splitWords(name: string): string {
  return name.replace(/([a-z0-9])([A-Z])/g, (_, end: string, start: string) => `${end} ${start.toLowerCase()}`);
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
