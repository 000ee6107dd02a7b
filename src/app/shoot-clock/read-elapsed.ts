/**
 * Reads a time since a start as a person types it: "12:05", "1:02:03", "0:07.4" with a point or a comma, in ms. Null for
 * what is no such time; bare seconds are none, for "90" may as well be meant as minutes.
 */
export function readElapsedMs(text: string): number | null {
  const found = /^(?:(\d{1,2}):([0-5]?\d)|(\d{1,4})):([0-5]\d)(?:[.,](\d{1,3}))?$/.exec(text.trim());
  if (found === null) return null;
  const [, hours = '0', minutesOfHour, minutes, seconds = '0', tenths = '0'] = found;
  const wholeS = Number(hours) * 3600 + Number(minutesOfHour ?? minutes) * 60 + Number(seconds);
  return wholeS * 1000 + Number(tenths.padEnd(3, '0'));
}
