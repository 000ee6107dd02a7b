import type { DerivationName } from '../schema/figures.ts';
import type { Grade } from '../schema/grade.ts';
import { formatSignificant, formatTyped, RANGE_DASH } from './format-number.ts';
import { NO_BREAK, withUnit } from './format-unit.ts';
import { GRADE_WORDS } from './grades.ts';

/** A figure as grading/derive/figure.ts has it: an interval, one end of which may be left out. */
export interface FigureShown {
  low: number;
  high: number;
  open?: 'low' | 'high';
}
export interface ReadingShown {
  case: string;
  figure?: FigureShown;
}

/** "3.65 V", "3.7 V or more", "below −5 °C", "62–71 %". */
export function figureWords({ low, high, open }: FigureShown, unit: string): string {
  if (low === Infinity) return 'no end in sight';
  if (low === -Infinity && high === Infinity) return 'a figure that was not read';
  if (low === high) return valueWords(low, unit);
  if (high === Infinity) return open === 'low' ? `above ${valueWords(low, unit)}` : `${valueWords(low, unit)} or more`;
  if (low === -Infinity)
    return open === 'high' ? `below ${valueWords(high, unit)}` : `${valueWords(high, unit)} or less`;
  return `${short(low)}${RANGE_DASH}${valueWords(high, unit)}`;
}

/** Typed digits as they are; a computed figure to four digits. */
function short(value: number): string {
  const typed = formatTyped(value);
  return typed.replace(/[^0-9]/g, '').length <= 5 ? typed : trimmed(formatSignificant(value, 4));
}

function trimmed(text: string): string {
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

function valueWords(value: number, unit: string): string {
  if (unit === '') return short(value);
  return unit === '×' ? `${short(value)}${NO_BREAK}times` : withUnit(short(value), unit);
}

type Say = (figure: string) => string;
const AS_IT_IS: Say = (figure) => figure;

/** What an answer from a distance that nobody noted says of it. */
const ANY_DISTANCE = figureWords({ low: 0, high: Infinity }, 'm');

/** By derivation and case, what the live tests found. `figure` is already in words; cases without one leave it out. */
const CASES: Readonly<Record<DerivationName, Readonly<Record<string, Say>>>> = {
  overCurrent: {
    opened: (figure) => `opened after ${figure}`,
    heatOnly: () => 'only heat opened it',
    fuseOnly: () => 'only a fuse inside would open it',
    noneSeen: () => 'nothing opened it',
  },
  highVoltage: { any: (figure) => `highest cell at the cut: ${figure}` },
  lowVoltage: { any: (figure) => `lowest cell at the cut: ${figure}` },
  chargeCurrent: { any: (figure) => `cut at ${figure} the printed charge current` },
  coldCharge: {
    blocked: (figure) => `charging blocked at ${figure}`,
    icePackOnly: () => 'charging blocked only with an ice pack on the sensor',
    cameBackCold: () => 'charging came back while still below 0\u00a0°C',
  },
  hot: {
    withSwitch: (figure) => `BMS cut at ${figure}, a thermal switch is fitted`,
    withoutSwitch: (figure) => `BMS cut at ${figure}, no thermal switch`,
  },
  cellVoltages: {
    rested: (figure) => `${figure} rested`,
    justEmptied: (figure) => `${figure} just emptied`,
    nearFull: (figure) => `${figure} near full`,
  },
  lowestCell: { any: (figure) => `lowest cell ${figure}` },
  cellSpread: {
    rested: (figure) => `spread ${figure} rested on the plateau`,
    nearFull: (figure) => `spread ${figure} near full`,
  },
  cellResistances: { any: (figure) => `spread ${figure} of the mean` },
  bmsVoltages: { any: (figure) => `worst cell ${figure} off the meter` },
  mainLeads: { any: (figure) => `allowed ${figure} of the printed continuous current` },
  links: {
    copper: (figure) => `${figure} in copper`,
    aluminium: (figure) => `${figure} in aluminium`,
    other: () => 'a link of nickel or steel',
  },
  terminalRise: { any: (figure) => `${figure} above the air at the printed current` },
  standby: { any: AS_IT_IS },
  wakeUp: {
    byItself: () => 'woke by itself',
    anyCharger: () => 'any charger woke it',
    special: () => 'woke only with a special charger, a button or another battery',
    didNot: () => 'did not wake',
  },
  readOut: {
    free: (figure) =>
      figure === ANY_DISTANCE ? 'answers, from how far is not noted, no account' : `answers at ${figure}, no account`,
    account: () => 'asks for an account',
    noAnswer: () => 'does not answer',
  },
};

/** The same of a trial that ended before anything acted: its figure is how far it went, not where anything cut. */
const NOT_YET: Partial<Record<DerivationName, Readonly<Record<string, Say>>>> = {
  overCurrent: { opened: (reached) => `carried for ${reached} without opening` },
  highVoltage: { any: (reached) => `highest cell ${reached}, not cut` },
  lowVoltage: { any: (reached) => `lowest cell ${reached}, not cut` },
  chargeCurrent: { any: (reached) => `${reached} the printed charge current let in for a minute` },
  coldCharge: { blocked: (reached) => `charging still on at ${reached}` },
  hot: {
    withSwitch: (reached) => `BMS had not cut at ${reached}, a thermal switch is fitted`,
    withoutSwitch: (reached) => `BMS had not cut at ${reached}, no thermal switch`,
  },
};

/** One reading of the live tests in words. Throws RangeError for a case that has none: a fault of the caller. */
export function derivedWords(from: DerivationName, reading: ReadingShown, unit: string): string {
  const say = Object.hasOwn(CASES[from], reading.case) ? CASES[from][reading.case] : undefined;
  if (say === undefined)
    throw new RangeError(`derivedWords: ${from} must have words for its case, got ${reading.case}`);
  const { figure } = reading;
  if (figure === undefined) return say('');
  const sayNotYet = figure.open === undefined ? undefined : NOT_YET[from]?.[reading.case];
  if (sayNotYet !== undefined) return sayNotYet(valueWords(figure.open === 'low' ? figure.low : figure.high, unit));
  return say(figureWords(figure, unit));
}

function listWords(grades: readonly Grade[]): string {
  const words = grades.map((grade) => GRADE_WORDS[grade]);
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}

/** Begins with a capital where it begins with a letter. */
function asSentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export const measuredWords = {
  title: 'Readings',
  fromTests: 'From your tests',
  openTests: 'Open its tests',
  openSensorTests: 'Open the hot and cold tests',
  notTested: 'Not tested yet. Test it, or choose what is known.',
  notYet: 'Type what you measured, or choose what you see.',
  /** After the readings: what they come to. */
  comesTo: (what: string, grades: readonly Grade[]) => `${what}: ${listWords(grades)}`,
  /** The same as a line of its own. */
  line: (what: string, grades: readonly Grade[]) => `${asSentence(what)}: ${listWords(grades)}.`,
  part: 'More readings, or a sentence you know to be true, settle it.',
  /** What was typed, behind what it comes to. */
  fromReadings: (found: string, readings: readonly string[]) => `${found} (${readings.join(', ')})`,
  reading: (title: string, value: string) => `${title.charAt(0).toLowerCase()}${title.slice(1)} ${value}`,
  notAllRead: 'and not all was read',
  or: (alternatives: readonly string[]) => alternatives.join(', or '),
  needsNameplate: 'The Nameplate lacks what this is held against.',
  overruleTitle: 'Overrule what was measured: why?',
  overruleReasons: ['Seen to be worse than the figure says', 'The test was disturbed', 'The instrument was wrong'],
  overruled: (reason: string) => `Overruled: ${/[.!?]$/.test(reason) ? reason : `${reason}.`}`,
  asMeasured: 'as measured',
  overruledBecause: (grades: readonly Grade[], reason: string) =>
    `measured ${listWords(grades)}, overruled because: ${reason}`,
  outOfReach: (least: number, most: number) => `Must be from ${formatTyped(least)} to ${formatTyped(most)}.`,
};
