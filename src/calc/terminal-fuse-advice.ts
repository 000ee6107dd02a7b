import type { FaultCurrent } from './fault-current.ts';
import { requirePositive } from './rated-energy.ts';
import { fuseSizeFromA } from './tables/fuse-sizes.ts';
import { LFP_PLAUSIBILITY } from './tables/lfp-plausibility.ts';

/** A fuse carries at most 80 % of its rating for good. Source: NEC 210.20(A), 215.3, read. */
const OVER_CONTINUOUS = 1.25;
/** Share of the lead's allowable current a fuse may have. Source: 33 CFR 183.455(c), read (voltage clause in part). */
const OVER_LEAD = 1.5;
/** From this voltage the fuse must not exceed the lead, but for the next standard size. Source: the same. */
const STRICTER_FROM_V = 50;
/** Least interrupt rating where nothing bounds the fault current from above. Source: ABYC E-11, seen on trade pages. */
const SAFE_INTERRUPT_A = 20_000;

export interface FuseQuestion {
  /** What the maker claims the pack gives for good. */
  continuousCurrentA: number | null;
  /** Of the main leads, as parallel-allowable-current.ts gives it. */
  leadAllowableA: number | null;
  nominalVoltageV: number | null;
  /** Fully charged; null: 3.65 / 3.2 of nominal. */
  fullVoltageV: number | null;
  fault: FaultCurrent | null;
}

export type MissingForFuse = 'continuousCurrentA' | 'leadAllowableA' | 'nominalVoltageV';

export type FuseAdvice =
  | {
      fits: true;
      ratingA: number;
      leastA: number;
      mostA: number;
      /** DC voltage the fuse must be made for, at least. */
      dcVoltageV: number;
      /** DC current it must be able to interrupt, at least; null when no figure is known to be enough. */
      interruptA: number | null;
      /** The fault current is unknown or a lower estimate: choose 20 kA or more. */
      interruptAtLeast20kA: boolean;
    }
  | { fits: false; leastA: number; mostA: number }
  | { fits: null; missing: MissingForFuse[] };

/**
 * The fuse to put at a pack's terminal: the smallest standard size from 1.25 × continuous, within what the leads bear.
 *
 * Shape   `fits: false` when no standard size lies between least and most; `null` names what must be known first.
 * Units   A, V in and out.
 * Throws  RangeError if a figure that is given is not a positive finite number.
 * Source  NEC 210.20(A) for least; 33 CFR 183.455(c) for most; interrupt rating not below the fault current
 * Check   tests/calc/terminal-fuse-advice.test.ts
 */
export function terminalFuseAdvice(question: FuseQuestion): FuseAdvice {
  const { continuousCurrentA, leadAllowableA, nominalVoltageV, fullVoltageV, fault } = question;
  for (const [name, value] of Object.entries({ continuousCurrentA, leadAllowableA, nominalVoltageV, fullVoltageV })) {
    if (value !== null) requirePositive(`terminalFuseAdvice: ${name}`, value);
  }
  if (continuousCurrentA === null || leadAllowableA === null || nominalVoltageV === null) {
    const asked = { continuousCurrentA, leadAllowableA, nominalVoltageV };
    const names = ['continuousCurrentA', 'leadAllowableA', 'nominalVoltageV'] as const;
    return { fits: null, missing: names.filter((name) => asked[name] === null) };
  }
  const leastA = OVER_CONTINUOUS * continuousCurrentA;
  const mostA = mostForLeadA(leadAllowableA, nominalVoltageV);
  const ratingA = fuseSizeFromA(leastA);
  if (ratingA === null || ratingA > mostA) return { fits: false, leastA, mostA };
  const { cellChargeV, cellNominalV } = LFP_PLAUSIBILITY;
  const chargedV = fullVoltageV ?? (nominalVoltageV * cellChargeV) / cellNominalV;
  return { fits: true, ratingA, leastA, mostA, dcVoltageV: Math.max(chargedV, nominalVoltageV), ...interruptOf(fault) };
}

function mostForLeadA(leadAllowableA: number, nominalVoltageV: number): number {
  if (nominalVoltageV < STRICTER_FROM_V) return OVER_LEAD * leadAllowableA;
  const nextA = fuseSizeFromA(leadAllowableA);
  return nextA !== null && nextA <= OVER_LEAD * leadAllowableA ? nextA : leadAllowableA;
}

/** A lower estimate tells only what would not do; past 20 kA even that much is not enough, so it is named. */
function interruptOf(fault: FaultCurrent | null): { interruptA: number | null; interruptAtLeast20kA: boolean } {
  if (fault?.bound === 'upper') return { interruptA: fault.currentA, interruptAtLeast20kA: false };
  const aboveA = fault !== null && fault.currentA > SAFE_INTERRUPT_A ? fault.currentA : null;
  return { interruptA: aboveA, interruptAtLeast20kA: true };
}
