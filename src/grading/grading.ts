import type { Likelihood, RiskLevel, Severity } from '../schema/checklist.ts';
import type { Evidence, Grade, Outcome } from '../schema/grade.ts';
import type { Route } from '../schema/pack-states.ts';
import type { VerdictName } from '../schema/verdict.ts';
import type { Derived } from './derive/figure.ts';

/** The plain result object that joins the engine to screens and sheet. Nothing in it is rounded. */
export interface Grading {
  route: Route;
  /** Every item of the definition, in its order. */
  items: ItemResult[];
  zones: ZoneResult[];
  /** Items asked on this route / in the definition. */
  askedCount: number;
  itemCount: number;
  /** Asked items whose set has one member. */
  settledCount: number;
  /** Items answered by "the rest of this zone is sound". */
  unlookedCount: number;
  /** Null when no item can apply: "nothing to score". */
  build: Range | null;
  factor: Range;
  /** Null when nothing applies, or when a stop item has surely failed (withheld). */
  score: Range | null;
  settled: boolean;
  /** Σ W·(w settled / w not surely inapplicable), 0–1. */
  settledShareFrac: number;
  stop: 'none' | 'possible' | 'failed';
  verdict: { low: VerdictName; high: VerdictName; settled: boolean };
  hazards: HazardResult[];
  /** Weak and failed items that surely apply or may apply, worst risk first, then definition order. */
  findings: Finding[];
  remedies: RemedyResult[];
  /** Scores after the outside remedies, and after all; null where the score is withheld or nothing applies. */
  after: { outside: Range | null; workshop: Range | null };
  ledger: Ledger | null;
  /** Safety items still open (more than one outcome possible, not counting does-not-apply by an excluded fact). */
  openSafetyItemIds: string[];
}

export interface Range {
  low: number;
  high: number;
}

export interface ItemResult {
  itemId: string;
  zoneId: string;
  asked: boolean;
  /** Outcomes still possible, in the order of OUTCOMES. Empty only when not asked. */
  possible: Outcome[];
  settled: boolean;
  /** The grade that counts, after the told rule; null when there is none. */
  grade: Grade | null;
  evidence: Evidence | null;
  /** Why the set is what it is. */
  because:
    | 'answered'
    | 'measured'
    | 'notSeen'
    | 'doesNotApply'
    | 'factExcludes'
    | 'factOpen'
    | 'unanswered'
    | 'notAsked'
    | 'error';
  /** The told rule lowered a sound answer to passable. */
  loweredByTold: boolean;
  unlooked: boolean;
  /** What was measured or derived, and why a person's grade counts against it; null where nothing was. */
  measured: { possible: Grade[]; found: Derived; overrules: string | null } | null;
  /** With `because: 'error'`. */
  error?: string;
}

export interface ZoneResult {
  zoneId: string;
  /** Share of Build after renormalising, 0–1; 0 where no item of the zone can apply. */
  weightFrac: number;
  /** q_zone, 0–1; null where nothing in the zone can apply. */
  q: Range | null;
  askedCount: number;
  settledCount: number;
  /** Worst grade found so far, for the lid glyph; null when nothing was graded. */
  worst: Grade | null;
}

export interface HazardResult {
  hazardId: string;
  /** Risk at the low end (worst remaining) and at the high end (best remaining); null: none. */
  risk: { low: RiskLevel | null; high: RiskLevel | null };
  k: Range;
  itemIds: string[];
}

export interface Finding {
  itemId: string;
  zoneId: string;
  grade: Grade;
  /** True when every remaining outcome is a finding. */
  sure: boolean;
  hazardId: string | null;
  severity: Severity | null;
  likelihood: Likelihood | null;
  risk: RiskLevel | null;
  /** Points of Build lost at the low end. */
  lostPoints: number;
}

export interface RemedyResult {
  remedyId: string;
  reach: 'outside' | 'workshop';
  /** Items it would settle. */
  itemIds: string[];
  /** Score gained on top of those printed before it, at each end: `buildGain` and all `hazardGains` together. */
  gain: Range;
  /** The part that comes from credit, at the factor before it. */
  buildGain: Range;
  /** The parts that come from hazards, in definition order; only hazards whose factor it changes. */
  hazardGains: { hazardId: string; gain: Range }[];
  /** Score after this and all printed before it. */
  cumulative: Range;
  /** Hazards brought from high or serious to medium or lower: at the low end, or at the high end while `open`. */
  clearsHazardIds: string[];
  /** Not yet known whether it can be done: it counts at the high end only. */
  open?: 'fuseFits';
  /** Found that it cannot be done: it counts at neither end. */
  ruledOut?: 'fuseFits';
}

export interface Ledger {
  /** The low end's when unsettled. Items that lost points, in definition order; Σ lostPoints = 100 − Build. */
  lines: { itemId: string; lostPoints: number; open: boolean }[];
  /** Factors as points, worst first: Build minus all of them is the Score. */
  factors: { hazardId: string; risk: RiskLevel; k: number; lostPoints: number; open: boolean }[];
}

export interface NextQuestion {
  kind: 'item' | 'fact';
  id: string;
  /** Verdict steps and points that stay between the ends on average once it is answered. */
  meanVerdictSteps: number;
  meanWidthPoints: number;
  /** Points the range would narrow by on average. */
  narrowsByPoints: number;
}
