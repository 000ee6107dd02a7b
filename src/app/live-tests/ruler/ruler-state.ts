import type { ImagePoint } from '../../../schema/callout.ts';
import type { Named } from '../../../schema/live-tests/live-tests.ts';
import type { Ruler } from '../../../schema/live-tests/ruler.ts';
import type { Put } from '../../../storage/store.ts';
import { isProvisional } from '../../state/provisional.ts';
import { cardCorners, goesRound } from './card-corners.ts';

type Corners = Ruler['corners'];

export function pointsOf({ corners, from, to }: Pick<Ruler, 'corners' | 'from' | 'to'>): ImagePoint[] {
  return [...corners, from, to];
}

/** Points after a change: the card's are put in order once all four are set, and again where they cross. */
export function tidiedPoints(
  before: readonly ImagePoint[],
  points: readonly ImagePoint[],
  size: { widthPx: number; heightPx: number },
): ImagePoint[] {
  const corners = points.slice(0, 4);
  const ordered = corners.length < 4 || (before.length >= 4 && goesRound(corners, size));
  return [...(ordered ? corners : cardCorners(corners, size)), ...points.slice(4)];
}

/** The entry of a ruler with new points; null while one of the six is missing. */
export function pointsPut(
  { id, photoId, before }: { id: string; photoId: string; before: Named<Ruler> | undefined },
  points: readonly ImagePoint[],
): Put | null {
  const [a, b, c, d, from, to] = points;
  if (!a || !b || !c || !d || !from || !to) return null;
  const corners: Corners = [a, b, c, d];
  return rulerPut(id, { ...before, photoId, corners, from, to });
}

/** The entry of a ruler with one of its other fields changed; null takes the field away. */
export function fieldPut(
  before: Named<Ruler>,
  key: 'label' | 'offPlaneMm' | 'cameraMm',
  value: string | number | null,
): Put {
  const { [key]: _old, ...others } = before;
  return rulerPut(before.id, value === null || value === '' ? others : { ...others, [key]: value });
}

function rulerPut(id: string, ruler: object): Put {
  const { id: _id, made, ...v }: Record<string, unknown> = { ...ruler };
  const keepsMade = typeof made === 'string' && !isProvisional(made);
  return { subject: 'ruler', part: id, v: { ...v, made: keepsMade ? made : null } };
}
