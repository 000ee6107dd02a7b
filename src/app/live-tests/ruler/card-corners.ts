import type { ImagePoint } from '../../../schema/callout.ts';

interface PhotoSize {
  widthPx: number;
  heightPx: number;
}

/**
 * Corners set in any order, brought into an order round the card that begins with a long side. On the photo the longer
 * pair of opposite sides is taken for the long one; where the camera looked along the card it is not, and
 * `otherSideLong` mends it.
 */
export function cardCorners(corners: readonly ImagePoint[], size: PhotoSize): ImagePoint[] {
  const round = goesRound(corners, size) ? [...corners] : byAngle(corners);
  const sidesPx = round.map((corner, place) => sidePx(corner, round[(place + 1) % round.length] ?? corner, size));
  const [a = 0, b = 0, c = 0, d = 0] = sidesPx;
  return a + c >= b + d ? round : otherSideLong(round);
}

/** The same card with its neighbouring side taken for the long one. */
export function otherSideLong(corners: readonly ImagePoint[]): ImagePoint[] {
  return [...corners.slice(1), ...corners.slice(0, 1)];
}

/** Whether the corners, as they stand, turn the same way all round. */
export function goesRound(corners: readonly ImagePoint[], { widthPx, heightPx }: PhotoSize): boolean {
  const turns = corners.map((corner, place) => {
    const next = corners[(place + 1) % corners.length] ?? corner;
    const after = corners[(place + 2) % corners.length] ?? corner;
    const across = (next[0] - corner[0]) * (after[1] - next[1]) - (next[1] - corner[1]) * (after[0] - next[0]);
    return Math.sign(across * widthPx * heightPx);
  });
  return turns.every((turn) => turn !== 0 && turn === turns[0]);
}

function byAngle(corners: readonly ImagePoint[]): ImagePoint[] {
  const x = corners.reduce((sum, corner) => sum + corner[0], 0) / corners.length;
  const y = corners.reduce((sum, corner) => sum + corner[1], 0) / corners.length;
  const angleOf = (corner: ImagePoint) => Math.atan2(corner[1] - y, corner[0] - x);
  return corners.toSorted((a, b) => angleOf(a) - angleOf(b));
}

function sidePx(a: ImagePoint, b: ImagePoint, { widthPx, heightPx }: PhotoSize): number {
  return Math.hypot((a[0] - b[0]) * widthPx, (a[1] - b[1]) * heightPx);
}
