import { expect, it } from 'vitest';
import { formatDay, formatMoment, formatOffset, formatTakenAt, localDay } from '../../src/text/format-day.ts';

const spaced = (text: string) => text.replaceAll('\u00a0', ' ');

it('writes 2026-11-24 as 24 November 2026', () => {
  expect(spaced(formatDay('2026-11-24'))).toBe('24 November 2026');
  expect(spaced(formatDay('2027-01-05'))).toBe('5 January 2027');
});

it('refuses month 13 and a day in words', () => {
  expect(() => formatDay('2026-13-01')).toThrow(RangeError);
  expect(() => formatDay('yesterday')).toThrow(RangeError);
});

// 1 000 000 000 s after the epoch is 9 September 2001, 01:46:40 UTC (a published date of Unix time).
it('puts 10⁹ s at 01:46 on 9 September 2001 in UTC, at 18:46 the day before at UTC−07:00', () => {
  expect(spaced(formatMoment(1e12, 0))).toBe('9 September 2001, 01:46');
  expect(spaced(formatMoment(1e12, -420))).toBe('8 September 2001, 18:46');
  expect(localDay(1e12, -420)).toBe('2001-09-08');
});

it('names offsets UTC, UTC+01:00 and UTC−03:30', () => {
  expect([0, 60, -210].map(formatOffset)).toEqual(['UTC', 'UTC+01:00', 'UTC−03:30']);
});

it('keeps the camera’s own local time: 14:02', () => {
  expect(spaced(formatTakenAt('2026-11-24T14:02:33+01:00'))).toBe('24 November 2026, 14:02');
});
