import type { ItemResult } from '../../grading/grading.ts';
import { roundedShares } from '../../grading/largest-remainder.ts';
import type { HazardMove, ItemMove } from '../../grading/score-moves.ts';
import type { LedgerRow } from '../../sheet/model/sheet.ts';
import { formatFixed, outward } from '../../text/format-number.ts';
import { BECAUSE_WORDS, GRADE_WORDS, OUTCOME_WORDS } from '../../text/grades.ts';
import { MOVE_REASONS, regradeWords } from '../../text/regrade.ts';
import { listOf } from '../../text/sheet.ts';
import type { Surveyed } from './survey.ts';

const say = regradeWords.moves;

/** A line and its exact points, before both are dressed. */
interface Move {
  text: string;
  detail: string;
  points: number | null;
}

/** The two low ends with every move between them, the weightiest first. Shown tenths add up as the exact points do. */
export function moveRows({ from, to, was, now, moves }: Surveyed): LedgerRow[] {
  const titles = new Map([...from.definition.items, ...to.definition.items].map(({ id, title }) => [id, title]));
  const titleOf = (id: string) => titles.get(id) ?? id;
  const lines = [...moves.items.map(itemLine), ...moves.hazards.map((move) => hazardLine(move, titleOf))].toSorted(
    (one, other) => Math.abs(other.points ?? 0) - Math.abs(one.points ?? 0),
  );
  const { shares, sameFactors } = moves;
  if (shares.count > 0) lines.push({ text: say.shares(shares.count), detail: say.sharesDetail, points: shares.points });
  if (sameFactors.count > 0)
    lines.push({ text: say.sameFactors(sameFactors.count), detail: '', points: sameFactors.points });
  const [before, after] = [lowTenths(was), lowTenths(now)];
  const tenths = signedTenths(
    lines.map(({ points }) => points),
    (after ?? 0) - (before ?? 0),
  );
  const rows = lines.map(({ text, detail }, place): LedgerRow => {
    const count = tenths?.[place];
    return {
      kind: 'lost',
      text,
      points: count === undefined ? '' : signed(count),
      detail: detail === '' ? null : detail,
    };
  });
  return [total(say.was(from.definition.version), before), ...rows, total(say.now(to.definition.version), after)];
}

function itemLine({ title, reasons, was, now, points }: ItemMove): Move {
  const outcomes = [was, now].flatMap((result) => (result === null ? [] : [outcomeOf(result)]));
  const [one, other] = outcomes;
  const outcome = one === undefined || other === undefined ? one : say.outcome(one, other);
  const why = reasons.map((reason) => MOVE_REASONS[reason]).join('; ');
  const isPlain = reasons.includes('addedOpen') || outcome === undefined;
  return { text: title, detail: isPlain ? why : `${why}: ${outcome}`, points };
}

function hazardLine(move: HazardMove, titleOf: (itemId: string) => string): Move {
  const { title, reason, was, now, broughtBy, noLongerBy, points } = move;
  const detail = [
    reason === 'risk' ? say.risk(was.risk, now.risk) : say.times(was.k, now.k),
    ...(broughtBy.length === 0 ? [] : [say.nowBy(listOf(broughtBy.map(titleOf)))]),
    ...(noLongerBy.length === 0 ? [] : [say.noLongerBy(listOf(noLongerBy.map(titleOf)))]),
  ];
  return { text: say.factor(title), detail: detail.join('; '), points };
}

/** "failed", "does not apply", or why it is still open. */
function outcomeOf({ grade, possible, because }: ItemResult): string {
  if (grade !== null) return GRADE_WORDS[grade];
  const [only] = possible;
  return possible.length === 1 && only !== undefined ? OUTCOME_WORDS[only] : BECAUSE_WORDS[because];
}

function total(text: string, tenths: number | null): LedgerRow {
  return { kind: 'total', text, points: tenths === null ? '\u2013' : formatFixed(tenths / 10, 1), detail: null };
}

/** The low end as its sheet shows it; null where it is withheld. */
function lowTenths({ score, settled }: Surveyed['was']): number | null {
  if (score === null) return null;
  return Math.round(Number(settled ? formatFixed(score.low, 1) : outward(score, 1).low) * 10);
}

/**
 * Whole tenths by largest remainder that add up to `wanted`, the step between the two ends as shown. A whole number is
 * added to every share first, so that gains and losses are cut alike.
 */
function signedTenths(points: readonly (number | null)[], wanted: number): number[] | null {
  const known = points.filter((value) => value !== null);
  if (known.length < points.length) return null;
  const tenths = known.map((value) => Number((value * 10).toFixed(9)));
  const lift = Math.ceil(Math.max(0, ...tenths.map((value) => -value)));
  const lifted = tenths.map((value) => value + lift);
  const least = lifted.reduce((sum, value) => sum + Math.floor(value), 0);
  const totalCount = wanted + lift * lifted.length;
  // With a line or two, ends that are rounded differently can be further apart than any cut reaches.
  const reachable = totalCount >= least && totalCount <= least + lifted.length;
  return roundedShares(lifted, { unit: 1, ...(reachable && { totalCount }) }).map((count) => count - lift);
}

function signed(tenths: number): string {
  const text = formatFixed(tenths / 10, 1);
  return tenths > 0 ? `+${text}` : text;
}
