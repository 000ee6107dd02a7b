import { type FourPoints, homography, mapPoint, type PlanePoint, twiceArea } from './homography.ts';
import { requirePositive } from './rated-energy.ts';
import { requireFinite } from './require-finite.ts';
import { requireNotNegative } from './require-not-negative.ts';

/** Size of an ID-1 card (bank card, driving licence). Source: ISO/IEC 7810:2019, 5.1, from memory. */
const CARD_MM = { width: 85.6, height: 53.98 } as const;
const CARD_CORNERS: FourPoints = [
  [0, 0],
  [CARD_MM.width, 0],
  [CARD_MM.width, CARD_MM.height],
  [0, CARD_MM.height],
];
/** Our choice: a finger under a loupe sets a corner to within a pixel of the stored picture. */
export const CORNER_ERROR_PX = 1;
/** Where the distance was not given. Our choice: as near as a phone is held to take in a card and what lies beside it. */
export const ASSUMED_CAMERA_MM = 300;

export interface PhotoRuler {
  distanceMm: number;
  /** Plus or minus, root sum of squares of the two parts below. */
  uncertaintyMm: number;
  placementMm: number;
  offPlaneMm: number;
}

/**
 * Distance between two points of a photo, by a card of known size lying in the same plane.
 *
 * Shape   the card's corners in order round it, beginning with a corner whose next side is a long one, and the two
 *         points, as fractions of the picture's width and height. Null (degenerate) where the corners do not go round a
 *         convex four-sided figure, a point lies beyond the horizon of their plane, or the two points are one.
 * Units   0–1, px, mm in; mm out.
 * Error   each of the six points moved by ±1 px in x and y, the changes of the distance summed as squares; and what a
 *         thing off the card's plane by h looks larger or smaller seen from D: distance · h / D (10 mm at 300 mm: 3.3 %).
 *         Bent cards and the bending of straight lines by a wide lens are not in it.
 * Throws  RangeError if a coordinate is not finite, a size or the camera distance not positive, or the offset negative.
 * Source  card: ISO/IEC 7810 ID-1; definition
 * Check   tests/calc/photo-ruler.test.ts
 */
export function photoRuler({ imageWidthPx, imageHeightPx, offPlaneMm, ...given }: RulerOnPhoto): PhotoRuler | null {
  const cameraMm = given.distanceToCameraMm ?? ASSUMED_CAMERA_MM;
  requirePositive('photoRuler: imageWidthPx', imageWidthPx);
  requirePositive('photoRuler: imageHeightPx', imageHeightPx);
  requirePositive('photoRuler: distanceToCameraMm', cameraMm);
  requireNotNegative('photoRuler: offPlaneMm', offPlaneMm);
  const coordinatesPx = [...given.corners, given.from, given.to].flatMap(([x, y]) => [
    x * imageWidthPx,
    y * imageHeightPx,
  ]);
  for (const valuePx of coordinatesPx) requireFinite('photoRuler: coordinate', valuePx);
  const distanceMm = distanceByCardMm(coordinatesPx);
  if (distanceMm === null || distanceMm === 0) return null;
  let squaresMm2 = 0;
  for (const place of coordinatesPx.keys()) {
    const moved = [-CORNER_ERROR_PX, CORNER_ERROR_PX].map((byPx) =>
      distanceByCardMm(coordinatesPx.map((value, index) => (index === place ? value + byPx : value))),
    );
    const [less, more] = moved;
    if (typeof less !== 'number' || typeof more !== 'number') return null;
    squaresMm2 += ((more - less) / 2) ** 2;
  }
  const placementMm = Math.sqrt(squaresMm2);
  const offPlaneShareMm = (distanceMm * offPlaneMm) / cameraMm;
  return {
    distanceMm,
    uncertaintyMm: Math.hypot(placementMm, offPlaneShareMm),
    placementMm,
    offPlaneMm: offPlaneShareMm,
  };
}

export interface RulerOnPhoto {
  corners: FourPoints;
  from: PlanePoint;
  to: PlanePoint;
  imageWidthPx: number;
  imageHeightPx: number;
  /** How far what is measured may lie above or below the plane of the card. */
  offPlaneMm: number;
  distanceToCameraMm?: number;
}

/** Twelve coordinates: four corners, then the two points. */
function distanceByCardMm(coordinatesPx: readonly number[]): number | null {
  const at = (index: number): PlanePoint => [
    coordinatesPx[2 * index] ?? Number.NaN,
    coordinatesPx[2 * index + 1] ?? Number.NaN,
  ];
  const corners: FourPoints = [at(0), at(1), at(2), at(3)];
  const toCard = homography(corners, CARD_CORNERS);
  if (toCard === null || !goesRoundConvex(corners)) return null;
  const corner = mapPoint(toCard, at(0));
  const from = mapPoint(toCard, at(4));
  const to = mapPoint(toCard, at(5));
  if (corner === null || from === null || to === null) return null;
  if (from.side !== corner.side || to.side !== corner.side) return null;
  return Math.hypot(from.point[0] - to.point[0], from.point[1] - to.point[1]);
}

/** Whether every corner turns the same way. Crossed or dented corners are no picture of a card. */
function goesRoundConvex([p, q, r, s]: FourPoints): boolean {
  const turns = [twiceArea(p, q, r), twiceArea(q, r, s), twiceArea(r, s, p), twiceArea(s, p, q)].map(Math.sign);
  return turns.every((turn) => turn === turns[0]);
}
