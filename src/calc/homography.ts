/** A point in a plane: pixels, millimetres or whatever the plane is measured in. */
export type PlanePoint = readonly [x: number, y: number];
export type FourPoints = readonly [PlanePoint, PlanePoint, PlanePoint, PlanePoint];
/** Rows of a 3 × 3 matrix, determined up to a factor. */
export type Homography = readonly [number, number, number, number, number, number, number, number, number];

/**
 * Our choice: four points of which three lie this near a line, as a fraction of the longest distance, fix nothing. A
 * thousand times finer than a pixel in a picture, a thousand times coarser than the arithmetic.
 */
const COLLINEAR_FRAC = 1e-7;

/**
 * The perspective that carries four points exactly onto four others.
 *
 * Shape   two times four points, in matching order; null where three of either four lie on a line.
 * Units   any, the two planes need not share one.
 * Error   none but that of floating point; there are as many equations as unknowns.
 * Throws  RangeError if a coordinate is not finite.
 * Source  each four points are the image of the projective basis under a matrix found by Cramer's rule; the one matrix
 *         times the adjugate of the other. R. Hartley, A. Zisserman, Multiple View Geometry, 2nd ed., 4.1 (from memory)
 * Check   tests/calc/homography.test.ts
 */
export function homography(from: FourPoints, to: FourPoints): Homography | null {
  const fromBasis = basisMatrix(from);
  const toBasis = basisMatrix(to);
  if (fromBasis === null || toBasis === null) return null;
  return scaled(multiply(toBasis, inverseHomography(fromBasis)));
}

/** The way back, up to a factor: the adjugate. */
export function inverseHomography([a, b, c, d, e, f, g, h, i]: Homography): Homography {
  return [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ];
}

/** Where a point goes, and on which side of the horizon it lies (the sign); null on the horizon itself. */
export function mapPoint([a, b, c, d, e, f, g, h, i]: Homography, [x, y]: PlanePoint): MappedPoint | null {
  const depth = g * x + h * y + i;
  const point: PlanePoint = [(a * x + b * y + c) / depth, (d * x + e * y + f) / depth];
  return point.every(Number.isFinite) ? { point, side: depth > 0 ? 1 : -1 } : null;
}

export interface MappedPoint {
  point: PlanePoint;
  side: 1 | -1;
}

/** Columns: the first three points, each scaled so that their sum is the fourth. */
function basisMatrix([p, q, r, s]: FourPoints): Homography | null {
  const points = [p, q, r, s];
  if (!points.flat().every(Number.isFinite)) {
    throw new RangeError(`homography: coordinates must be finite, got ${points.join(' ')}`);
  }
  const longest = Math.max(
    ...points.flatMap((one) => points.map((two) => Math.hypot(one[0] - two[0], one[1] - two[1]))),
  );
  const areas = [twiceArea(s, q, r), twiceArea(p, s, r), twiceArea(p, q, s)] as const;
  const least = Math.min(...[...areas, twiceArea(p, q, r)].map(Math.abs));
  if (!(least > COLLINEAR_FRAC * longest ** 2)) return null;
  const [u, v, w] = areas;
  return [p[0] * u, q[0] * v, r[0] * w, p[1] * u, q[1] * v, r[1] * w, u, v, w];
}

/** Twice the signed area of a triangle; 0 where its corners lie on a line. */
export function twiceArea(one: PlanePoint, two: PlanePoint, three: PlanePoint): number {
  return (two[0] - one[0]) * (three[1] - one[1]) - (three[0] - one[0]) * (two[1] - one[1]);
}

/** Largest entry ±1, so that products of large coordinates stay readable. */
function scaled(matrix: Homography): Homography {
  const size = Math.max(...matrix.map(Math.abs));
  const [a, b, c, d, e, f, g, h, i] = matrix;
  return [a / size, b / size, c / size, d / size, e / size, f / size, g / size, h / size, i / size];
}

function multiply(left: Homography, right: Homography): Homography {
  const entry = (row: number, column: number) =>
    [0, 1, 2].reduce((sum, k) => sum + (left[3 * row + k] ?? 0) * (right[3 * k + column] ?? 0), 0);
  return [
    entry(0, 0),
    entry(0, 1),
    entry(0, 2),
    entry(1, 0),
    entry(1, 1),
    entry(1, 2),
    entry(2, 0),
    entry(2, 1),
    entry(2, 2),
  ];
}
