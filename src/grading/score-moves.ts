import type { Grading, HazardResult, ItemResult } from './grading.ts';
import { askedOf, type GradedBy } from './item-changes.ts';
import { type ItemReason, itemReasons } from './item-move-reasons.ts';

export interface ItemMove {
  itemId: string;
  title: string;
  reasons: ItemReason[];
  was: ItemResult | null;
  now: ItemResult | null;
  /** Points of Build it gains (+) or loses (−) in the ledger; null where a score is withheld. */
  points: number | null;
}

export interface HazardMove {
  hazardId: string;
  title: string;
  reason: 'risk' | 'factor';
  was: { risk: HazardResult['risk']['low']; k: number };
  now: { risk: HazardResult['risk']['low']; k: number };
  /** Items that bring the hazard now and did not then, or no longer do. */
  broughtBy: string[];
  noLongerBy: string[];
  /** Points of score its factor gains (+) or loses (−) in the ledger; null where a score is withheld. */
  points: number | null;
}

/** Lines of the ledger that moved although nothing about them changed. */
export interface Shifted {
  count: number;
  points: number | null;
}

/**
 * Why one record's score is another under another definition, line by line of the ledger. All points together are
 * `lowChange` (1e-9).
 */
export interface ScoreMoves {
  /** The score range, or the verdict at either end, is another. */
  moved: boolean;
  /** Change of the low end, whose ledger is printed; null where a score is withheld. */
  lowChange: number | null;
  items: ItemMove[];
  hazards: HazardMove[];
  /** Items that weigh otherwise only because others came or went beside them. */
  shares: Shifted;
  /** Factors that take otherwise only because there is more or less of Build for them to take from. */
  sameFactors: Shifted;
}

/** Points below which nothing moved: rounding in sums near 100. */
const SAME_POINTS = 1e-9;

/**
 * The moves of one record's score from one definition to another.
 *
 * Each line is the difference of two printed ledgers, at the low end. Σ of a ledger is 100 − score, so the differences
 * sum to the change of the score whatever the two definitions are, and no order has to be chosen for them.
 *
 * Units   points, 0–100; + raises the score
 * Check   tests/grading/score-moves.test.ts
 */
export function scoreMoves(was: GradedBy, now: GradedBy): ScoreMoves {
  const lost = lostPoints(was.grading, now.grading);
  const lines = itemLines(was, now, lost);
  const factors = hazardLines(was, now, lost);
  const [before, after] = [was.grading.score, now.grading.score];
  return {
    moved: isMoved(was.grading, now.grading),
    lowChange: before === null || after === null ? null : after.low - before.low,
    items: lines.filter(({ reasons }) => reasons.length > 0),
    hazards: factors.flatMap(({ move }) => (move === null ? [] : [move])),
    shares: shifted(lines.filter(({ reasons }) => reasons.length === 0).map(({ points }) => points)),
    sameFactors: shifted(factors.filter(({ move }) => move === null).map(({ points }) => points)),
  };
}

/** What each line of the two ledgers takes; a line that is not printed takes nothing. Null where one has no ledger. */
type Lost = { item(id: string): number; hazard(id: string): number } | null;

function lostPoints({ ledger: was }: Grading, { ledger: now }: Grading): Lost {
  if (was === null || now === null) return null;
  const gained = new Map<string, number>();
  const add = (key: string, points: number) => gained.set(key, (gained.get(key) ?? 0) + points);
  for (const { itemId, lostPoints } of was.lines) add(`item ${itemId}`, lostPoints);
  for (const { itemId, lostPoints } of now.lines) add(`item ${itemId}`, -lostPoints);
  for (const { hazardId, lostPoints } of was.factors) add(`hazard ${hazardId}`, lostPoints);
  for (const { hazardId, lostPoints } of now.factors) add(`hazard ${hazardId}`, -lostPoints);
  return {
    item: (id) => gained.get(`item ${id}`) ?? 0,
    hazard: (id) => gained.get(`hazard ${id}`) ?? 0,
  };
}

/** Items of both definitions, those of the later one in its order, then those it no longer has. */
function itemLines(was: GradedBy, now: GradedBy, lost: Lost): ItemMove[] {
  const before = new Map(askedOf(was).map((asked) => [asked.item.id, asked]));
  const after = new Map(askedOf(now).map((asked) => [asked.item.id, asked]));
  const ids = [...new Set([...now.definition.items, ...was.definition.items].map(({ id }) => id))];
  return ids.flatMap((itemId): ItemMove[] => {
    const [one, other] = [before.get(itemId), after.get(itemId)];
    const title = (other ?? one)?.item.title;
    if (title === undefined) return [];
    return [
      {
        itemId,
        title,
        reasons: itemReasons(
          one && { ...one, definition: was.definition },
          other && { ...other, definition: now.definition },
        ),
        was: one?.result ?? null,
        now: other?.result ?? null,
        points: lost === null ? null : lost.item(itemId),
      },
    ];
  });
}

function hazardLines(was: GradedBy, now: GradedBy, lost: Lost): { move: HazardMove | null; points: number | null }[] {
  const before = new Map(was.grading.hazards.map((hazard) => [hazard.hazardId, hazard]));
  const after = new Map(now.grading.hazards.map((hazard) => [hazard.hazardId, hazard]));
  const titles = new Map([...was.definition.hazards, ...now.definition.hazards].map(({ id, title }) => [id, title]));
  return [...titles].map(([hazardId, title]) => {
    const [one, other] = [before.get(hazardId) ?? NO_HAZARD, after.get(hazardId) ?? NO_HAZARD];
    const points = lost === null ? null : lost.hazard(hazardId);
    const reason = hazardReason(one, other);
    if (reason === null) return { move: null, points };
    const move: HazardMove = {
      hazardId,
      title,
      reason,
      was: { risk: one.risk.low, k: one.k.low },
      now: { risk: other.risk.low, k: other.k.low },
      broughtBy: other.itemIds.filter((id) => !one.itemIds.includes(id)),
      noLongerBy: one.itemIds.filter((id) => !other.itemIds.includes(id)),
      points,
    };
    return { move, points };
  });
}

const NO_HAZARD: Pick<HazardResult, 'risk' | 'k' | 'itemIds'> = {
  risk: { low: null, high: null },
  k: { low: 1, high: 1 },
  itemIds: [],
};

/** Null where the factor is the same: a risk that takes nothing, or takes as much as before, moves no score. */
function hazardReason(was: typeof NO_HAZARD, now: typeof NO_HAZARD): HazardMove['reason'] | null {
  if (was.k.low === now.k.low) return null;
  return was.risk.low === now.risk.low ? 'factor' : 'risk';
}

function shifted(points: readonly (number | null)[]): Shifted {
  const known = points.filter((value) => value !== null);
  if (known.length < points.length) return { count: 0, points: null };
  return {
    count: known.filter((value) => Math.abs(value) > SAME_POINTS).length,
    points: known.reduce((sum, value) => sum + value, 0),
  };
}

function isMoved(was: Grading, now: Grading): boolean {
  if (was.verdict.low !== now.verdict.low || was.verdict.high !== now.verdict.high) return true;
  if (was.score === null || now.score === null) return was.score !== now.score;
  const off = [now.score.low - was.score.low, now.score.high - was.score.high];
  return off.some((points) => Math.abs(points) > SAME_POINTS);
}
