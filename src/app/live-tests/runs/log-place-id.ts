/** Addresses of tests have 32 hexadecimal digits; the first half of a log's SHA-256 tells logs apart as surely. */
const DIGITS = 32;

/** What follows `live-test/` in the address of a log. */
export function logPlace(logId: string): string {
  return `log/${logId.slice(0, DIGITS)}`;
}

export function isAt(logId: string, testId: string): boolean {
  return logId.slice(0, DIGITS) === testId;
}
