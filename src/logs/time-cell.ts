import type { TimeFormat } from './log-mapping.ts';

/** Days since 1970-01-01 and seconds into that day; `days` is 0 and `seconds` without limit where there is no date. */
export interface TimeCell {
  days: number;
  seconds: number;
}

/** Formats that are text; the others are plain numbers with a scale. */
export const TEXT_TIMES: readonly TimeFormat[] = ['clock', 'clockHoursMinutes', 'iso', 'dayFirst', 'monthFirst'];
/** Formats that name a day, so that the log has a clock time to start from. */
export const DATED_TIMES: readonly TimeFormat[] = [
  'iso',
  'dayFirst',
  'monthFirst',
  'serialDays',
  'unixSeconds',
  'unixMilliseconds',
];

const CLOCK = /^(-)?(?:(\d+) ?d(?:ays?)?,? ?)?(\d+):(\d{1,2})(?::(\d{1,2}(?:[.,:]\d+)?))?(?: ?([ap])\.?m\.?)?$/i;
const DATE = /^(\d{1,4})[-/. ]([a-zä]{3,9}|\d{1,2})[-/. ](\d{1,4})(?:(?:[,t ]|\. ?)+(\d.*))?$/i;
const ZONE = / ?(?:z|utc|gmt|([+-])(\d{2}):?(\d{2})?)$/i;
const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const OTHER_MONTHS: Record<string, number> = { mai: 5, okt: 10, dez: 12, mär: 3, mrz: 3 };

/** Reads a clock time or a date from its text; `null` where it is none in this format. */
export function timeCell(text: string, format: TimeFormat): TimeCell | null {
  if (format === 'clock' || format === 'clockHoursMinutes') return clockCell(text, format);
  const date = DATE.exec(text);
  if (date === null) return null;
  const days = dayNumber(date, format);
  if (days === null) return null;
  if (date[4] === undefined) return { days, seconds: 0 };
  const zone = ZONE.exec(date[4]);
  const clock = clockCell(zone === null ? date[4] : date[4].slice(0, zone.index), 'clockHoursMinutes');
  if (clock === null || clock.seconds >= 86_460) return null;
  const aheadS =
    zone?.[1] === undefined ? 0 : Number(`${zone[1]}1`) * (Number(zone[2]) * 3600 + Number(zone[3] ?? 0) * 60);
  return { days, seconds: clock.seconds - aheadS };
}

function clockCell(text: string, format: TimeFormat): TimeCell | null {
  const found = CLOCK.exec(text);
  if (found === null) return null;
  const [, minus, dayText, first = '', second = '', third, half] = found;
  const threeParts = third !== undefined || format === 'clockHoursMinutes' || half !== undefined;
  let hours = threeParts ? Number(first) : 0;
  const minutes = Number(threeParts ? second : first);
  // Seconds and a fraction behind a third colon (some loggers) read as one behind a point.
  const secondsPart = threeParts ? Number((third ?? '0').replace(/[,:]/, '.')) : Number(second);
  if (minutes >= 60 && threeParts) return null;
  if (half !== undefined) hours = (hours % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
  const seconds = Number(dayText ?? 0) * 86_400 + hours * 3600 + minutes * 60 + secondsPart;
  return { days: 0, seconds: minus === undefined ? seconds : -seconds };
}

function dayNumber([, first = '', second = '', third = '']: RegExpExecArray, format: TimeFormat): number | null {
  const named = Number.isNaN(Number(second));
  const yearFirst = first.length === 4;
  if (yearFirst !== (format === 'iso')) return null;
  const year = yearFirst ? Number(first) : fullYear(third);
  const monthText = !yearFirst && !named && format === 'monthFirst' ? first : second;
  const dayText = yearFirst ? third : !named && format === 'monthFirst' ? second : first;
  const month = named ? monthNumber(second) : Number(monthText);
  const day = Number(dayText);
  const ms = Date.UTC(year, month - 1, day);
  const back = new Date(ms);
  const real = back.getUTCFullYear() === year && back.getUTCMonth() === month - 1 && back.getUTCDate() === day;
  return real ? ms / 86_400_000 : null;
}

/** Two figures are a year of this century. */
function fullYear(text: string): number {
  return text.length <= 2 ? 2000 + Number(text) : Number(text);
}

function monthNumber(name: string): number {
  const short = name.slice(0, 3).toLowerCase();
  return OTHER_MONTHS[short] ?? MONTHS.indexOf(short) + 1;
}
