import { requirePositive } from './rated-energy.ts';
import { requireNotNegative } from './require-not-negative.ts';
import type { RunEnd } from './run-end-name.ts';

export const INCOMPLETE_REASONS = [
  'endUnknown',
  'notEndedLow',
  'startUnknown',
  'notChargedFull',
  'taperTooHigh',
  'restTooShort',
] as const;
export type IncompleteReason = (typeof INCOMPLETE_REASONS)[number];

export type CompleteRun = { complete: true } | { complete: false; because: IncompleteReason[] };

/** How a run began and ended. What nobody noted is absent (`end`: null). */
export interface RunConditions {
  end: RunEnd | null;
  chargedToV?: number | undefined;
  makerChargeVoltageV?: number | undefined;
  /** Charge current when the charge was ended. */
  taperA?: number | undefined;
  ratedCapacityAh?: number | undefined;
  /** Between the end of charge and the start of the run. */
  restMin?: number | undefined;
}

/** Our choice: at 0.05C and the maker's voltage an LFP pack takes hardly any more charge. */
const FULL_TAPER_PER_H = 0.05;
/** Our choice: long enough for the charge's surface voltage to settle, short enough to be kept to. */
const LEAST_REST_MIN = 30;
/** 0.05 · 280 is not 14 in binary; far below what any meter shows. */
const BINARY_SLACK_FRAC = 1e-9;

/**
 * Whether a run shows the pack's capacity, or only that it holds at least so much.
 *
 * Shape   conditions in; complete, or every reason why not, in the order of INCOMPLETE_REASONS.
 *         Conditions that are known and not met are told even where others are not known.
 * Units   V, A, Ah, min in.
 * Throws  RangeError if a voltage or the rated capacity is not positive, or the taper or rest negative.
 * Source  our choice: ended by low voltage; begun full: charged to the maker's voltage until 0.05C, rested 30 min
 * Check   tests/calc/complete-run.test.ts
 */
export function completeRun(conditions: RunConditions): CompleteRun {
  requireConditions(conditions);
  const because = [...endReasons(conditions.end), ...startReasons(conditions)];
  return because.length === 0 ? { complete: true } : { complete: false, because };
}

function endReasons(end: RunEnd | null): IncompleteReason[] {
  if (end === null || end === 'unclear') return ['endUnknown'];
  return end === 'lowVoltage' ? [] : ['notEndedLow'];
}

function startReasons(given: RunConditions): IncompleteReason[] {
  const { chargedToV, makerChargeVoltageV, taperA, ratedCapacityAh, restMin } = given;
  const known = [chargedToV, makerChargeVoltageV, taperA, ratedCapacityAh, restMin].every((it) => it !== undefined);
  const because: IncompleteReason[] = known ? [] : ['startUnknown'];
  if (chargedToV !== undefined && makerChargeVoltageV !== undefined) {
    if (chargedToV < makerChargeVoltageV * (1 - BINARY_SLACK_FRAC)) because.push('notChargedFull');
  }
  if (taperA !== undefined && ratedCapacityAh !== undefined) {
    if (taperA > FULL_TAPER_PER_H * ratedCapacityAh * (1 + BINARY_SLACK_FRAC)) because.push('taperTooHigh');
  }
  if (restMin !== undefined && restMin < LEAST_REST_MIN) because.push('restTooShort');
  return because;
}

function requireConditions({ chargedToV, makerChargeVoltageV, taperA, ratedCapacityAh, restMin }: RunConditions): void {
  if (chargedToV !== undefined) requirePositive('completeRun: chargedToV', chargedToV);
  if (makerChargeVoltageV !== undefined) requirePositive('completeRun: makerChargeVoltageV', makerChargeVoltageV);
  if (taperA !== undefined) requireNotNegative('completeRun: taperA', taperA);
  if (ratedCapacityAh !== undefined) requirePositive('completeRun: ratedCapacityAh', ratedCapacityAh);
  if (restMin !== undefined) requireNotNegative('completeRun: restMin', restMin);
}
