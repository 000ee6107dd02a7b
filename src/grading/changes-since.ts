import type { Nameplate } from '../schema/nameplate.ts';
import type { Route } from '../schema/pack-states.ts';
import { type ClaimChange, claimChanges } from './claim-changes.ts';
import { type FigureChange, figureChanges } from './figure-changes.ts';
import type { Grading } from './grading.ts';
import { type GradedBy, type ItemChanges, itemChanges } from './item-changes.ts';
import type { Tested } from './judged.ts';

/** One record with the grading that its own checklist gives it. */
export interface GradedPack extends GradedBy {
  record: Tested;
}

export interface StandingOnce {
  route: Route;
  checklistId: string;
  version: string;
  score: Grading['score'];
  settled: boolean;
  stop: Grading['stop'];
  verdict: Grading['verdict'];
  askedCount: number;
  itemCount: number;
}

/** What sets two scores apart: they answer different questions, and one is no measure of the other. */
export type ScoresApart = 'routes' | 'checklists' | 'versions';

export interface ChangesSince {
  was: StandingOnce;
  now: StandingOnce;
  /** Why the scores may not be compared as one; null where they may. */
  apart: ScoresApart | null;
  /** Which way the score surely went; `cannotTell` while the ranges overlap. Null where they are apart or one is withheld. */
  scoreWent: 'higher' | 'lower' | 'same' | 'cannotTell' | null;
  /** Null where the two checklists are different ones: an item's id means the same within one only. */
  items: ItemChanges | null;
  figures: FigureChange[];
  claims: ClaimChange[];
}

/** Points below which two scores are one: rounding in sums near 100. */
const SAME_POINTS = 1e-9;

/**
 * What changed from an earlier sample, or an earlier revision of the product, to a later one. Pure; nothing is rounded.
 *
 * Check   tests/grading/changes-since.test.ts
 */
export function changesSince(was: GradedPack, now: GradedPack): ChangesSince {
  const [before, after] = [standingOnce(was), standingOnce(now)];
  const apart = apartBy(before, after);
  return {
    was: before,
    now: after,
    apart,
    scoreWent: apart === null ? scoreWent(before, after) : null,
    items: before.checklistId === after.checklistId ? itemChanges(was, now) : null,
    figures: figureChanges(was.record, now.record),
    claims: claimChanges(nameplateOf(was), nameplateOf(now)),
  };
}

function standingOnce({ definition, grading }: GradedBy): StandingOnce {
  const { route, score, settled, stop, verdict, askedCount, itemCount } = grading;
  const { id: checklistId, version } = definition;
  return { route, checklistId, version, score, settled, stop, verdict, askedCount, itemCount };
}

/** Only a patch version keeps scores (DESIGN §4). */
function apartBy(was: StandingOnce, now: StandingOnce): ScoresApart | null {
  if (was.checklistId !== now.checklistId) return 'checklists';
  if (was.route !== now.route) return 'routes';
  return minorOf(was.version) === minorOf(now.version) ? null : 'versions';
}

function minorOf(version: string): string {
  return version.split('.').slice(0, 2).join('.');
}

function scoreWent({ score: was, ...before }: StandingOnce, { score: now, ...after }: StandingOnce) {
  if (was === null || now === null) return null;
  if (now.low > was.high + SAME_POINTS) return 'higher';
  if (now.high < was.low - SAME_POINTS) return 'lower';
  return before.settled && after.settled ? 'same' : 'cannotTell';
}

function nameplateOf({ record }: GradedPack): Nameplate {
  return record.nameplate;
}
