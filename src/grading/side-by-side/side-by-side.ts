import type { PackRecord } from '../../record/pack-record.ts';
import type { Checklist } from '../../schema/checklist.ts';
import type { Route } from '../../schema/pack-states.ts';
import type { VerdictName } from '../../schema/verdict.ts';
import type { Grading, Range } from '../grading.ts';

/** At most this many packs stand side by side: more do not fit a page, nor a head. */
export const MOST_PACKS = 8;

/** One pack as it comes to the comparison: its record, graded by the definition it is on. */
export interface Compared {
  packId: string;
  record: PackRecord;
  definition: Checklist;
  grading: Grading;
}

/** The plain result that joins comparison, screen, PDF and CSV. Nothing in it is rounded. */
export interface SideBySide {
  /** Packs that can be ranked against one another, in the order in which their first pack was given. */
  groups: RankGroup[];
  /** Samples of one model, in the order given; a model with one sample too. */
  models: ModelSamples[];
}

/**
 * Packs asked the same: one checklist, one major version, one route. Short and whole are never ranked together. Where
 * minor versions differ, everything here rests on what all of them asked.
 */
export interface RankGroup {
  checklistId: string;
  major: number;
  route: Route;
  /** Versions the packs are on, oldest first. */
  versions: string[];
  /** The newest of them: its weights, hazards and factors count for all. */
  weighedBy: string;
  commonItemIds: string[];
  /** Asked of some only, with the packs that were asked. */
  leftOut: { itemId: string; title: string; askedPackIds: string[] }[];
  /** Ranked ones first, by rank; then those that are not; equal ones in the order given. */
  members: RankMember[];
  /** What the draws of `firmness` start from; null with fewer than two ranked packs. */
  firmness: FirmnessInput | null;
}

export interface RankMember {
  packId: string;
  /** On the common items alone. */
  build: Range | null;
  factor: Range;
  score: Range | null;
  verdict: { low: VerdictName; high: VerdictName; settled: boolean };
  settled: boolean;
  /** Its verdict on all it was asked is worse at the low end than on the common items: said, so that nothing hides. */
  worseOnItsOwn: boolean;
  /** 1 + how many stand above it; null where it is not ranked. */
  rank: number | null;
  notRanked: 'stop' | 'nothingToScore' | null;
  /** Packs that stand above it, and ranked ones that stand neither above nor below it. */
  belowPackIds: string[];
  tiedPackIds: string[];
}

export interface ModelSamples {
  /** "Tarn Cells Wren 24" as on the nameplate. */
  name: string;
  packIds: string[];
  /** How many of them have no score. */
  unscoredCount: number;
  /** Those with a score stand in one group: scores of different ones cannot be set against one another. */
  isOneGroup: boolean;
  /** Lowest low and highest high of their scores in it; null with fewer than two, or where they stand in several. */
  spread: Range | null;
}

/** All that an order rests on, so small that thousands of weightings can be drawn. */
export interface FirmnessInput {
  /** Zone weights of the definition that counts; they need not sum to 1. */
  zoneWeights: number[];
  packs: FirmPack[];
}
export interface FirmPack {
  packId: string;
  verdict: { low: VerdictName; high: VerdictName; settled: boolean };
  /** At the definition's own weights and factors: the order that the draws are held against. */
  score: Range;
  /** By zone, q at both ends; null where nothing in the zone can apply. */
  zones: (Range | null)[];
  /** How many hazards stand at each risk level, at both ends. */
  risks: { low: RiskCounts; high: RiskCounts };
}
export interface RiskCounts {
  high: number;
  serious: number;
  medium: number;
}

/** In how many of the draws an order held. Counts, not shares, so that nothing is rounded. */
export interface Firmness {
  draws: number;
  seed: number;
  packIds: string[];
  /** By pack: draws in which it stood above every other. */
  leads: number[];
  /** Draws in which none did. */
  noneLeads: number;
  /** above[x][y]: draws in which x stood above y. */
  above: number[][];
  /** Draws in which every pair stood as it does at the definition's own weights: above, below or tied. */
  orderHolds: number;
}

/** What a protection did when it was tried. */
export const PROTECTION_KINDS = [
  'overCurrent',
  'short',
  'lowTemperature',
  'highTemperature',
  'lowVoltage',
  'highVoltage',
] as const;
export type ProtectionKind = (typeof PROTECTION_KINDS)[number];
export type ProtectionState = 'acts' | 'actsLate' | 'doesNot' | 'notTested';
/** What a protection cuts that cuts charge and load apart. */
export type ProtectionSides = 'charge' | 'load' | 'both';
export interface Protection {
  kind: ProtectionKind;
  state: ProtectionState;
  /** How many trials it rests on. */
  trialCount: number;
  /** In how many of them only heat ended the current. */
  heatOnlyCount: number;
  /** On which sides heat was tried; null of every other kind, and where heat was not. */
  sides: ProtectionSides | null;
}
