import { localDay } from '../text/format-day.ts';

/** Our choice: long enough for a sitting, short enough that a break is noticed. */
const GOOD_FOR_MS = 4 * 3_600_000;

/** One passage through a gate that has to be passed again after a while. */
export interface Passage {
  passedAtMs: number;
  /** Local day on which it was passed. */
  day: string;
}

/** Whether a passage still holds: within four hours, on the same local day, and not in the future. */
export function isFresh(passage: Passage, atMs: number, offsetMinutes: number): boolean {
  const age = atMs - passage.passedAtMs;
  return passage.day === localDay(atMs, offsetMinutes) && age >= -60_000 && age < GOOD_FOR_MS;
}

export function goodUntilMs({ passedAtMs }: Passage): number {
  return passedAtMs + GOOD_FOR_MS;
}
