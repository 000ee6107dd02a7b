import fc from 'fast-check';
import perspectiveTransform from 'perspective-transform';
import { describe, expect, it } from 'vitest';
import {
  type FourPoints,
  type Homography,
  homography,
  inverseHomography,
  mapPoint,
  type PlanePoint,
} from '../../src/calc/homography.ts';
import fixture from '../fixtures/homography.json';

function rowOf(id: string) {
  const row = fixture.rows.find((candidate) => candidate.id === id);
  if (row === undefined) throw new Error(`no row ${id}`);
  return { ...row, src: fourPoints(row.src), dst: fourPoints(row.dst) };
}

describe('homography', () => {
  it.each(['readme', 'a4', 'identity'])('finds the matrix of row %s to 1e-9 of each entry', (id) => {
    const { src, dst, H } = rowOf(id);
    expect(H).toHaveLength(3);
    expectEntries(scaledToLast(found(src, dst)), (H ?? []).flat());
  });

  it('maps the point of the library README: 250, 120 to 117.275, 530.920', () => {
    const { src, dst, point, mapped } = rowOf('readme');
    // The library rounds its matrix to ten decimals, so the printed point comes from such a one.
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0, i = 0] = scaledToLast(found(src, dst)).map(
      (entry) => Math.round(entry * 1e10) / 1e10,
    );
    expectPoint(image([a, b, c, d, e, f, g, h, i], planePoint(point)), planePoint(mapped));
  });

  it('maps both pixels of the A4 sheet and finds 64.546 mm between them', () => {
    const { src, dst, points, distanceMm } = rowOf('a4');
    const matrix = found(src, dst);
    const [one, two] = (points ?? []).map(({ px, mm }) => {
      expectPoint(image(matrix, planePoint(px)), planePoint(mm));
      return image(matrix, planePoint(px));
    });
    if (one === undefined || two === undefined) throw new Error('two points');
    expect(Math.hypot(one[0] - two[0], one[1] - two[1])).toBeCloseTo(distanceMm ?? Number.NaN, 9);
  });

  it('goes back by the matrix that three libraries give', () => {
    const { src, dst, inverse } = rowOf('a4');
    const back = inverseHomography(found(src, dst));
    expectEntries(scaledToLast(back), (inverse ?? []).flat());
    expectPoint(image(back, [210, 297]), [1610, 1879]);
  });

  it.each(fixture.cases)('reproduces $id', ({ id, expected, origin }) => {
    expect(origin).toBe('library');
    const { src, dst } = rowOf('a4');
    const matrix = found(src, dst);
    const distance = () => {
      const [one, two] = [image(matrix, [900, 800]), image(matrix, [1200, 1000])];
      return [Math.hypot(one[0] - two[0], one[1] - two[1])];
    };
    const ways: Record<string, () => readonly number[]> = {
      'homography-a4-H': () => scaledToLast(matrix),
      'homography-a4-dist': distance,
      'homography-a4-inverse': () => image(inverseHomography(matrix), [210, 297]),
      'homography-a4-p2': () => image(matrix, [1200, 1000]),
    };
    expectEntries(ways[id]?.() ?? [], [expected].flat());
  });

  it('agrees with perspective-transform 1.1 on any convex quadrilateral of a photo', () => {
    const jitter = fc.double({ min: -150, max: 150, noNaN: true });
    const point = fc.tuple(
      fc.double({ min: 400, max: 1600, noNaN: true }),
      fc.double({ min: 400, max: 1600, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(jitter, { minLength: 8, maxLength: 8 }), point, (moves, pixel) => {
        const at = (index: number, value: number) => value + (moves[index] ?? 0);
        const src: FourPoints = [
          [at(0, 300), at(1, 300)],
          [at(2, 1700), at(3, 300)],
          [at(4, 1700), at(5, 1700)],
          [at(6, 300), at(7, 1700)],
        ];
        const dst: FourPoints = [
          [0, 0],
          [85.6, 0],
          [85.6, 53.98],
          [0, 53.98],
        ];
        const other = perspectiveTransform(src.flat(), dst.flat());
        const [x, y] = image(found(src, dst), pixel);
        const [otherX, otherY] = other.transform(...pixel);
        // The library rounds its matrix to ten decimals.
        expect(x).toBeCloseTo(otherX, 4);
        expect(y).toBeCloseTo(otherY, 4);
      }),
    );
  });

  it('carries each corner exactly onto its partner', () => {
    const { src, dst } = rowOf('readme');
    const matrix = found(src, dst);
    for (const [index, corner] of src.entries())
      expectPoint(image(matrix, corner), dst[index] ?? [Number.NaN, Number.NaN]);
  });

  it('refuses three points on a line, on either side, and points that fall together', () => {
    const { src, dst } = rowOf('degenerate');
    expect(homography(src, dst)).toBeNull();
    expect(homography(dst, src)).toBeNull();
    const [one, two, three] = dst;
    expect(homography([one, two, three, three], dst)).toBeNull();
    expect(homography([one, one, one, one], dst)).toBeNull();
  });

  it('has no image for a point on the horizon, and tells the two sides apart', () => {
    // x' = x / (1 − y): the horizon is y = 1.
    const matrix: Homography = [1, 0, 0, 0, 1, 0, 0, -1, 1];
    expect(mapPoint(matrix, [5, 1])).toBeNull();
    expect(mapPoint(matrix, [5, 0.5])).toEqual({ point: [10, 1], side: 1 });
    expect(mapPoint(matrix, [5, 2])).toEqual({ point: [-5, -2], side: -1 });
  });

  it('throws at a coordinate that is not finite', () => {
    const { src, dst } = rowOf('identity');
    expect(() => homography([[Number.NaN, 0], src[1], src[2], src[3]], dst)).toThrow(RangeError);
  });
});

function found(from: FourPoints, to: FourPoints): Homography {
  const matrix = homography(from, to);
  if (matrix === null) throw new Error('degenerate');
  return matrix;
}

function image(matrix: Homography, point: PlanePoint): PlanePoint {
  const mapped = mapPoint(matrix, point);
  if (mapped === null) throw new Error('on the horizon');
  return mapped.point;
}

function scaledToLast(matrix: Homography): number[] {
  return matrix.map((entry) => entry / matrix[8]);
}

function expectEntries(entries: readonly number[], expected: readonly number[]): void {
  expect(entries).toHaveLength(expected.length);
  for (const [index, entry] of entries.entries()) {
    const target = expected[index] ?? Number.NaN;
    expect(Math.abs(entry - target)).toBeLessThan(1e-9 * Math.max(1e-3, Math.abs(target)));
  }
}

function expectPoint([x, y]: PlanePoint, [targetX, targetY]: PlanePoint): void {
  expect(x).toBeCloseTo(targetX, 8);
  expect(y).toBeCloseTo(targetY, 8);
}

function planePoint(values: readonly number[] | undefined): PlanePoint {
  const [x, y] = values ?? [];
  if (x === undefined || y === undefined) throw new Error('not a point');
  return [x, y];
}

function fourPoints(values: readonly (readonly number[])[]): FourPoints {
  const [one, two, three, four] = values.map(planePoint);
  if (one === undefined || two === undefined || three === undefined || four === undefined)
    throw new Error('four points');
  return [one, two, three, four];
}
