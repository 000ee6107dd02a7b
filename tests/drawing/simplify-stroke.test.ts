import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { simplifyStroke } from '../../src/drawing/simplify-stroke.ts';
import { type ImagePoint, MAX_CALLOUT_POINTS } from '../../src/schema/callout.ts';

const simplified = (points: ImagePoint[], tolerancePx = 1) =>
  simplifyStroke({ points, widthPx: 1000, heightPx: 1000, tolerancePx });

function distancePx(point: ImagePoint, from: ImagePoint, to: ImagePoint): number {
  // Nearest of 2001 points along the stretch: a slow reference, apart from the closed form of the code.
  let nearest = Number.POSITIVE_INFINITY;
  for (let step = 0; step <= 2000; step++) {
    const share = step / 2000;
    const x = from[0] + share * (to[0] - from[0]);
    const y = from[1] + share * (to[1] - from[1]);
    nearest = Math.min(nearest, 1000 * Math.hypot(point[0] - x, point[1] - y));
  }
  return nearest;
}

describe('simplifyStroke', () => {
  it('keeps 2 of 101 points of a straight line', () => {
    const line = Array.from({ length: 101 }, (_, step): ImagePoint => [step / 100, step / 200]);
    expect(simplified(line)).toEqual([
      [0, 0],
      [1, 0.5],
    ]);
  });

  it('keeps the corner of an L: 3 of 21 points', () => {
    const corner = Array.from(
      { length: 21 },
      (_, step): ImagePoint => (step <= 10 ? [step / 20, 0] : [0.5, (step - 10) / 20]),
    );
    expect(simplified(corner)).toEqual([
      [0, 0],
      [0.5, 0],
      [0.5, 0.5],
    ]);
  });

  it('keeps a bump of 3 px and drops one of 1 px at a tolerance of 2 px', () => {
    expect(
      simplified(
        [
          [0, 0],
          [0.5, 0.003],
          [1, 0],
        ],
        2,
      ),
    ).toHaveLength(3);
    expect(
      simplified(
        [
          [0, 0],
          [0.5, 0.001],
          [1, 0],
        ],
        2,
      ),
    ).toHaveLength(2);
  });

  it('keeps the far end of a line that turns back on itself', () => {
    expect(
      simplified([
        [0.2, 0.5],
        [0.8, 0.5],
        [0.4, 0.5],
      ]),
    ).toEqual([
      [0.2, 0.5],
      [0.8, 0.5],
      [0.4, 0.5],
    ]);
  });

  it('brings a spiral of 5000 points to at most 64, ends kept', () => {
    const spiral = Array.from({ length: 5000 }, (_, step): ImagePoint => {
      const angle = step / 40;
      const radius = step / 10_500;
      return [0.5 + radius * Math.cos(angle), 0.5 + radius * Math.sin(angle)];
    });
    const kept = simplified(spiral, 0.5);
    expect(kept.length).toBeLessThanOrEqual(MAX_CALLOUT_POINTS);
    expect(kept.length).toBeGreaterThan(20);
    expect(kept[0]).toEqual([0.5, 0.5]);
  });

  it('leaves no dropped point more than the tolerance and half a rounding step away, for any stroke of 40 points', () => {
    const point = fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }));
    fc.assert(
      fc.property(fc.array(point, { minLength: 2, maxLength: 40 }), (points) => {
        const kept = simplified(points as ImagePoint[], 20);
        for (const dropped of points as ImagePoint[]) {
          const nearest = Math.min(...kept.slice(1).map((to, place) => distancePx(dropped, kept[place]!, to)));
          // 0.05 px of rounding each way on 1000 px, and the reference's own step of at most 0.71 px.
          expect(nearest).toBeLessThanOrEqual(20 + 0.1 + 0.75);
        }
      }),
      { numRuns: 30, seed: 7 },
    );
  });

  it('stores four decimals inside 0–1', () => {
    expect(
      simplified([
        [-0.2, 0.123456],
        [1.3, 0.98765],
      ]),
    ).toEqual([
      [0, 0.1235],
      [1, 0.9877],
    ]);
  });

  it('returns a single point and nothing as they are', () => {
    expect(simplified([[0.5, 0.5]])).toEqual([[0.5, 0.5]]);
    expect(simplified([])).toEqual([]);
  });

  it('refuses a tolerance of 0', () => {
    expect(() => simplified([[0, 0]], 0)).toThrow('simplifyStroke: tolerance must be above 0 px, got 0');
  });
});
