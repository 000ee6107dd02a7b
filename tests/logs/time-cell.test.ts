import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guessTimeFormat } from '../../src/logs/guess-time-format.ts';
import { isoStamp } from '../../src/logs/iso-stamp.ts';
import type { TimeFormat } from '../../src/logs/log-mapping.ts';
import { timeCell } from '../../src/logs/time-cell.ts';

function seconds(text: string, format: TimeFormat): number | null {
  const cell = timeCell(text, format);
  return cell && cell.days * 86_400 + cell.seconds;
}
const utc = (text: string) => Date.parse(text) / 1000;

describe('timeCell', () => {
  it.each([
    ['0:00:05', 'clock', 5],
    ['26:15:30', 'clock', 94_530],
    ['100:00:00.250', 'clock', 360_000.25],
    ['00:00:01:500', 'clock', 1.5],
    ['0d 00:00:05', 'clock', 5],
    ['2d 03:04:05.5', 'clock', 183_845.5],
    ['1 day, 2:00:00', 'clock', 93_600],
    ['05:30', 'clock', 330],
    ['05:30', 'clockHoursMinutes', 19_800],
    ['2:05 PM', 'clockHoursMinutes', 50_700],
    ['12:30:00 am', 'clock', 1800],
    ['00:00:01,5', 'clock', 1.5],
  ] as const)('reads %s as %s: %f s (by hand)', (text, format, expected) => {
    expect(seconds(text, format)).toBe(expected);
  });

  it.each([
    ['2026-03-26T10:00:00.000Z', 'iso', '2026-03-26T10:00:00Z'],
    ['2026-03-26 10:00:00', 'iso', '2026-03-26T10:00:00Z'],
    ['2026/03/26 10:00', 'iso', '2026-03-26T10:00:00Z'],
    ['2026-03-26T10:00:00+02:00', 'iso', '2026-03-26T08:00:00Z'],
    ['2026-03-26T10:00:00-0330', 'iso', '2026-03-26T13:30:00Z'],
    ['26.03.2026 10:00:05', 'dayFirst', '2026-03-26T10:00:05Z'],
    ['26/03/26 10:00:05', 'dayFirst', '2026-03-26T10:00:05Z'],
    ['26-Mar-2026 10:00:05', 'dayFirst', '2026-03-26T10:00:05Z'],
    ['3/26/2026 1:02:03 PM', 'monthFirst', '2026-03-26T13:02:03Z'],
    ['03/26/2026', 'monthFirst', '2026-03-26T00:00:00Z'],
  ] as const)('reads %s as %s: %s', (text, format, expected) => {
    expect(seconds(text, format)).toBe(utc(expected));
  });

  it.each([
    ['26/13/2026', 'dayFirst'],
    ['13/26/2026', 'monthFirst'],
    ['2026-02-30', 'iso'],
    ['26.03.2026', 'iso'],
    ['10:75:00', 'clock'],
    ['unavailable', 'iso'],
    ['', 'clock'],
  ] as const)('refuses %j as %s', (text, format) => {
    expect(timeCell(text, format)).toBeNull();
  });

  it('reads ISO stamps from bytes as Date.parse does, or leaves them to the text', () => {
    const stamp = { days: 0, seconds: 0 };
    const between = fc.date({ min: new Date('1970-01-01'), max: new Date('2099-12-31'), noInvalidDate: true });
    fc.assert(
      fc.property(between, (date) => {
        const text = date.toISOString();
        const bytes = new TextEncoder().encode(`${text},`);
        const read = isoStamp(bytes, { from: 0, to: text.length }, stamp)
          ? stamp.days * 86_400 + stamp.seconds
          : seconds(text, 'iso');
        expect(read).toBeCloseTo(date.getTime() / 1000, 6);
      }),
      { numRuns: 3000 },
    );
    const odd = new TextEncoder().encode('2026-03-26T10:00:00+02:00');
    expect(isoStamp(odd, { from: 0, to: odd.length }, stamp)).toBe(false);
  });
});

describe('guessTimeFormat', () => {
  const guess = (cells: string[], withDate = false) =>
    guessTimeFormat({ cells, decimalMark: '.', unit: null, withDate });

  it.each([
    [['0', '1.5', '3'], 'seconds'],
    [['1774519200', '1774519201'], 'unixSeconds'],
    [['1774519200000', '1774519201000'], 'unixMilliseconds'],
    [['46107.41667', '46107.41668'], 'serialDays'],
    [['0:00:01', '25:00:01'], 'clock'],
    [['00:10', '00:20'], 'clock'],
    [['2026-03-26T10:00:00', '2026-03-26T10:00:01'], 'iso'],
    [['26/03/2026 10:00', '26/03/2026 10:01'], 'dayFirst'],
    [['03/26/2026 10:00', '03/26/2026 10:01'], 'monthFirst'],
    [['03.04.2026 23:59', '04.04.2026 00:01'], 'dayFirst'],
    [['04/03/2026 23:59', '04/04/2026 00:01'], 'monthFirst'],
    [['4/3/2026 1:00:00 PM', '4/3/2026 1:00:01 PM'], 'monthFirst'],
  ] as const)('takes %j for %s', (cells, format) => {
    expect(guess([...cells])).toBe(format);
  });

  it('takes two parts beside a date for hours and minutes', () => {
    expect(guess(['10:00', '10:01'], true)).toBe('clockHoursMinutes');
  });
});
