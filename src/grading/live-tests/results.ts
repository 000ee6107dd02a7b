import type { CellCode } from '../../calc/cell-code.ts';
import type { CellOutliers } from '../../calc/cell-outliers.ts';
import type { CompleteRun } from '../../calc/complete-run.ts';
import type { DcResistance } from '../../calc/dc-resistance.ts';
import type { FaultCurrent } from '../../calc/fault-current.ts';
import type { Counted } from '../../calc/lead-sharing.ts';
import type { LimitBehaviour } from '../../calc/limit-behaviour.ts';
import type { OvercurrentBehaviour } from '../../calc/overcurrent-behaviour.ts';
import type { RestVoltageBand } from '../../calc/rest-voltage-band.ts';
import type { FuseAdvice } from '../../calc/terminal-fuse-advice.ts';
import type { CellMark } from '../../schema/live-tests/cell-mark.ts';
import type { CutOff, CutOffKind } from '../../schema/live-tests/cut-off.ts';
import type { Drain } from '../../schema/live-tests/drain.ts';
import type { Instrument } from '../../schema/live-tests/instrument.ts';
import type { Joint } from '../../schema/live-tests/joint.ts';
import type { Lead } from '../../schema/live-tests/lead.ts';
import type { LiveTests, Named } from '../../schema/live-tests/live-tests.ts';
import type { Resistance } from '../../schema/live-tests/resistance.ts';
import type { Ruler } from '../../schema/live-tests/ruler.ts';
import type { Run } from '../../schema/live-tests/run.ts';
import type { Trip } from '../../schema/live-tests/trip.ts';

/**
 * What the live tests come to: plain objects at full precision, without words. `null` is "cannot be told from what was
 * noted". Uncertainties are standard ones (k = 1). Ids are those of the tests a figure rests on.
 */

/** A figure known within limits; all three are equal where it is known as well as it was measured. */
export interface Range {
  low: number;
  best: number;
  high: number;
}

// Capacity

export interface RunResult {
  run: Named<Run>;
  instrument: Named<Instrument> | null;
  /** As typed or read from the log, else charge ÷ duration. */
  currentA: number | null;
  completeness: CompleteRun;
  ratePerH: number | null;
  shareOfRatedFrac: number | null;
  energyWh: number | null;
  /** As noted, else energy ÷ charge. */
  meanVoltageV: number | null;
  /** Null unless the instrument states both parts of its accuracy; a part it does not have is noted as 0. */
  chargeUncertaintyAh: number | null;
  energyUncertaintyWh: number | null;
}

/** Means of the complete runs at the current nearest 0.2C. */
export interface GentleCapacity {
  currentA: number;
  chargeAh: number;
  energyWh: number | null;
  /** Means of the runs' own: one meter's error does not shrink over several runs. */
  chargeUncertaintyAh: number | null;
  energyUncertaintyWh: number | null;
  count: number;
  runIds: string[];
}

/** What the pack is held to have delivered. */
export interface Delivered {
  chargeAh: number | null;
  energyWh: number | null;
  /** No run was complete: the greatest charge and the greatest energy of any, and the pack may hold more. */
  atLeast: boolean;
  /** Of what the nameplate promises. */
  chargeShareFrac: number | null;
  energyShareFrac: number | null;
  chargeUncertaintyAh: number | null;
  energyUncertaintyWh: number | null;
  runIds: string[];
}

export interface RetentionResult {
  frac: number;
  gentleA: number;
  hardA: number;
  gentleRunIds: string[];
  hardRunIds: string[];
}

export interface CostResult {
  perKwh: number;
  basis: 'measured' | 'nominalVoltage';
  price: number;
  currency: string | null;
  pricedOn: string | null;
  chargeAh: number;
  energyWh: number | null;
  nominalVoltageV: number | null;
  uncertaintyPerKwh: number | null;
}

export interface CapacityResult {
  runs: RunResult[];
  completeCount: number;
  gentle: GentleCapacity | null;
  delivered: Delivered | null;
  retention: RetentionResult | null;
  /** The standard uncertainty from the scatter of the runs; null under three different currents. */
  peukert: { exponent: number; exponentUncertainty: number | null; runIds: string[] } | null;
  /** Only from complete runs. */
  cost: CostResult | null;
}

// Leads, over-current and fuse

/** How long a lead stands a current before its insulation is harmed. */
export interface WithstandResult {
  leadId: string;
  /** In the pack's path, and in one conductor of this lead, whose area is taken at its least. */
  currentA: number;
  eachA: number;
  timeS: number;
  bound: 'exact' | 'atLeast';
  startDegC: number;
  /** `insulationMark`: as warm as the insulation is marked for, the usual assumption. */
  startFrom: 'insulationMark' | 'surroundings';
  finalDegC: number;
  kAs05PerMm2: number;
}

export type AreaRefused = 'overInsulation' | 'wayNotSaid' | 'nothingMeasured';

export interface LeadResult {
  lead: Named<Lead>;
  /** Of one conductor; of a bar with all its layers. */
  areaMm2: Range | null;
  /** Why there is no area; null when there is one. */
  areaRefused: AreaRefused | null;
  counted: Counted;
  /** All together, as counted. Cables of copper only. */
  allowable: { lowA: number; bestA: number; highA: number } | null;
  /** At the continuous claim and the best area. */
  densityAPerMm2: number | null;
  /** Of the whole entry over its length, at the best area and the temperature below. */
  resistanceMohm: number | null;
  /** As noted around it, else 20 °C. */
  resistanceAtDegC: number;
  /** At the continuous claim. */
  dropMv: number | null;
  heatW: number | null;
  /** At the highest current that a trip carried. */
  withstand: WithstandResult | null;
}

export interface OvercurrentResult {
  behaviour: OvercurrentBehaviour;
  /** In the order in which they were made. */
  trips: Named<Trip>[];
  highestCarriedA: number | null;
  /** Of the main lead that stands it for the shortest time. */
  withstand: WithstandResult | null;
}

export interface FuseResult {
  advice: FuseAdvice;
  /** The low end of what the main leads are allowed. */
  leadAllowableA: number | null;
  fault: FaultCurrent | null;
  continuousCurrentA: number | null;
  nominalVoltageV: number | null;
  /** As the nameplate says, else 3.65 V times the cells in series. */
  fullVoltageV: number | null;
}

// Cells

/** Cells that stand apart from the others, by number; or why none can be told. */
export type Outliers = { ok: true; numbers: number[] } | Extract<CellOutliers, { ok: false }>;

export interface CellSetResult {
  set: LiveTests['cellSets'][number];
  /** Cells with a voltage. */
  readCount: number;
  /** Cells in series, by the nameplate. */
  expectedCount: number | null;
  /** Of two cells or more. */
  spread: { lowV: number; highV: number; spreadMv: number; lowNumber: number; highNumber: number } | null;
  voltageOutliers: Outliers;
  /** Only of a rested set; one that does not say for how long counts as not rested. */
  restBands: { number: number; band: RestVoltageBand }[] | null;
  resistance: {
    meanMohm: number;
    /** Highest less lowest, as a share of the mean; null of one cell alone. */
    spreadFrac: number | null;
    readCount: number;
    outliers: Outliers;
  } | null;
  /** What the BMS shows above (+) or below (−) the meter. */
  bmsErrors: { number: number; errorMv: number }[];
  /** Regardless of sign. */
  worstBmsErrorMv: number | null;
}

// Resistance, joints, drain, parallel

export interface ResistanceResult {
  test: Named<Resistance>;
  /** Null where a reading is missing. */
  outcome: DcResistance | null;
}

export interface JointResult {
  joint: Named<Joint>;
  riseK: number | null;
  ratedA: number | null;
  /** At the continuous claim. */
  riseAtRatedK: number | null;
  resistanceMicroohm: number | null;
}

export interface DrainResult {
  drain: Named<Drain>;
  drainAhPerDay: number;
  /** From the capacity that the nameplate promises; null without one, or where nothing is drawn. */
  daysToFlat: number | null;
  capacityAh: number | null;
}

export interface ParallelResult {
  run: LiveTests['parallelRuns'][number];
  /** Null unless two or more were read, and all that are noted. */
  sharing: { shares: { number: number; shareFrac: number }[]; worstDivergenceFrac: number } | null;
}

// Cut-offs

/** What a cut-off was held against: a limit of cells of this kind, or one that follows from the nameplate's claim. */
export type CutOffLimit = { from: 'nameplate' | 'cell' } & (
  | { of: 'cell' | 'pack'; limitV: number; lateV: number }
  | { of: 'sensor'; limitDegC: number; lateDegC: number }
  | { of: 'current'; limitA: number; lateA: number }
);

export interface CutOffTrial {
  cutOff: Named<CutOff>;
  /** Null without a limit or without the figure. */
  verdict: LimitBehaviour | null;
  limit: CutOffLimit | null;
}

/**
 * What is still to be tried of one cut-off, or noted of it: any trial; the figure at which it acted or ended; the limit
 * it is held against; a trial that goes far enough; how the pack came back; what it needs to wake.
 */
export type CutOffRemains = 'trial' | 'figure' | 'limit' | 'further' | 'cells' | 'recovery' | 'wakeUp';

export interface CutOffResult {
  kind: CutOffKind;
  /** In the order in which they were made. */
  trials: CutOffTrial[];
  /** In the order above; empty when nothing is left. */
  remains: CutOffRemains[];
}

// Codes and rulers

export interface CellMarkResult {
  mark: Named<CellMark>;
  code: CellCode;
}

export interface RulerResult {
  ruler: Named<Ruler>;
  /** Null when the photo is not at hand or the corners give no plane. */
  distance: {
    distanceMm: number;
    /** Of the points set by hand. */
    placementMm: number;
    /** Of the thing off the plane of the card; null, as is the whole, where it was not said how far it may be. */
    offPlaneMm: number | null;
    uncertaintyMm: number | null;
  } | null;
}

export interface LiveResults {
  capacity: CapacityResult;
  overcurrent: OvercurrentResult;
  fuse: FuseResult;
  leads: LeadResult[];
  mainLeadsAllowableA: Range | null;
  cells: CellSetResult[];
  resistances: ResistanceResult[];
  joints: JointResult[];
  drains: DrainResult[];
  parallelRuns: ParallelResult[];
  /** Every kind, in the order of CUT_OFF_KINDS, tried or not. */
  cutOffs: CutOffResult[];
  cellMarks: CellMarkResult[];
  rulers: RulerResult[];
}
