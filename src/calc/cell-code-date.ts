import { CODE_DAYS, CODE_FIRST_YEAR, CODE_MONTHS, CODE_YEARS } from './tables/cell-code-characters.ts';

/** The three characters as they stand, and the date if they are one. */
export type CellCodeDate =
  | { raw: string; year: number; month: number; day: number }
  | { raw: string; invalid: 'year' | 'month' | 'day' | 'noSuchDay' };

/**
 * Date of manufacture from the three date characters of a GB/T 34014-2017 code.
 *
 * Shape   three characters in; year, month and day out, or what is wrong: the first character that the tables never
 *         issue (I, O, Q, U, Z are left out of them), or a day that its month does not have.
 * Throws  RangeError unless there are three characters.
 * Source  src/calc/tables/cell-code-characters.ts
 * Check   tests/calc/cell-code.test.ts
 */
export function cellCodeDate(raw: string): CellCodeDate {
  if (raw.length !== 3) throw new RangeError(`cellCodeDate: needs 3 characters, got ${raw.length}`);
  const [year, month, day] = [CODE_YEARS, CODE_MONTHS, CODE_DAYS].map((table, index) =>
    table.indexOf(raw.charAt(index)),
  );
  if (year === undefined || year < 0) return { raw, invalid: 'year' };
  if (month === undefined || month < 0) return { raw, invalid: 'month' };
  if (day === undefined || day < 0) return { raw, invalid: 'day' };
  const date = { year: CODE_FIRST_YEAR + year, month: month + 1, day: day + 1 };
  return date.day > daysInMonth(date) ? { raw, invalid: 'noSuchDay' } : { raw, ...date };
}

/** Gregorian, within 2011 to 2040, where every fourth year is a leap year. */
function daysInMonth({ year, month }: { year: number; month: number }): number {
  if (month === 2) return year % 4 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}
