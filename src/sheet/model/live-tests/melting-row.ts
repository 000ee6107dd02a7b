import { MELTING_TIME_HOLDS_TO_S, meltingTimeS } from '../../../calc/melting-time.ts';
import type { LeadResult } from '../../../grading/live-tests/results.ts';
import { duration } from '../../../text/live-tests/results/figures.ts';
import { leadWords as say } from '../../../text/live-tests/results/lead.ts';
import type { ResultRow } from '../sheet.ts';
import { row } from './test-rows.ts';

/** Starts that a lead can have: calc/melting-time.ts begins at the one, no insulation lasts at the other. */
const START_DEG_C = { lowest: -40, highest: 250 } as const;

/** When the copper of a lead melts at the highest current tried: an upper bound. Beyond 10 s the equation does not hold. */
export function meltingRow({ lead, areaMm2, withstand }: LeadResult): ResultRow[] {
  const { metal = 'copper' } = lead;
  if (withstand === null || areaMm2 === null || metal !== 'copper') return [];
  const { startDegC, eachA } = withstand;
  if (startDegC < START_DEG_C.lowest || startDegC > START_DEG_C.highest) return [];
  const timeS = meltingTimeS({ areaMm2: areaMm2.high, currentA: eachA, startDegC });
  if (timeS > MELTING_TIME_HOLDS_TO_S) return [];
  return row(say.labels.melts, duration(Number(timeS.toPrecision(3))), say.meltNote);
}
