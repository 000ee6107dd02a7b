const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** An ISO 8601 day, YYYY-MM-DD, in words: "24 November 2026". Throws RangeError for anything else. */
export function formatDay(day: string): string {
  const parts = /^(\d{4})-(\d\d)-(\d\d)/.exec(day);
  const month = MONTHS[Number(parts?.[2]) - 1];
  if (!parts || month === undefined) throw new RangeError(`formatDay: day must be YYYY-MM-DD, got ${day}`);
  return `${Number(parts[3])}\u00a0${month}\u00a0${parts[1]}`;
}

/** The calendar day, YYYY-MM-DD, on a clock that is so many minutes ahead of UTC. */
export function localDay(atMs: number, utcOffsetMinutes: number): string {
  return new Date(atMs + utcOffsetMinutes * 60_000).toISOString().slice(0, 10);
}

/** "24 November 2026, 14:02" on a clock that is so many minutes ahead of UTC. */
export function formatMoment(atMs: number, utcOffsetMinutes: number): string {
  return `${formatDay(localDay(atMs, utcOffsetMinutes))}, ${formatClock(atMs, utcOffsetMinutes)}`;
}

/** "14:02" on a clock that is so many minutes ahead of UTC. */
export function formatClock(atMs: number, utcOffsetMinutes: number): string {
  return new Date(atMs + utcOffsetMinutes * 60_000).toISOString().slice(11, 16);
}

/** "UTC+01:00", "UTC−03:30" or "UTC". */
export function formatOffset(utcOffsetMinutes: number): string {
  if (utcOffsetMinutes === 0) return 'UTC';
  const size = Math.abs(utcOffsetMinutes);
  const two = (n: number) => String(n).padStart(2, '0');
  return `UTC${utcOffsetMinutes < 0 ? '\u2212' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

/** A camera's local time, YYYY-MM-DDThh:mm:ss with or without an offset: "24 November 2026, 14:02". */
export function formatTakenAt(takenAt: string): string {
  return `${formatDay(takenAt)}, ${takenAt.slice(11, 16)}`;
}
