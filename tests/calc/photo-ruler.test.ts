import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FourPoints, PlanePoint } from '../../src/calc/homography.ts';
import { type PhotoRuler, photoRuler, type RulerOnPhoto } from '../../src/calc/photo-ruler.ts';

const PICTURE = { imageWidthPx: 2048, imageHeightPx: 1536 } as const;
const CARD: readonly PlanePoint[] = [
  [0, 0],
  [85.6, 0],
  [85.6, 53.98],
  [0, 53.98],
];

/** A pinhole camera over the plane of the card, tilted about its x axis: closed form, in fractions of the picture. */
function seen([x, y]: PlanePoint, { tiltDeg = 0, cameraMm = 300, nearerMm = 0 }): PlanePoint {
  const tilt = (tiltDeg * Math.PI) / 180;
  const fromCentre = y - 27;
  const depthMm = cameraMm + fromCentre * Math.sin(tilt) - nearerMm;
  const focalPx = 1600;
  const xPx = 1024 + (focalPx * (x - 60)) / depthMm;
  const yPx = 768 + (focalPx * fromCentre * Math.cos(tilt)) / depthMm;
  return [xPx / PICTURE.imageWidthPx, yPx / PICTURE.imageHeightPx];
}

function ruled(from: PlanePoint, to: PlanePoint, view: Parameters<typeof seen>[1] & { offPlaneMm?: number } = {}) {
  const corners = CARD.map((corner) => seen(corner, { ...view, nearerMm: 0 }));
  return photoRuler({
    ...PICTURE,
    corners: four(corners),
    from: seen(from, view),
    to: seen(to, view),
    offPlaneMm: view.offPlaneMm ?? 0,
    distanceToCameraMm: view.cameraMm ?? 300,
  });
}

describe('photoRuler', () => {
  it.each([0, 20, 45])('finds 40 mm beside the card from a camera tilted by %d°', (tiltDeg) => {
    expect(there(ruled([95, 10], [95, 50], { tiltDeg })).distanceMm).toBeCloseTo(40, 8);
    expect(there(ruled([95, 10], [119, 42], { tiltDeg })).distanceMm).toBeCloseTo(40, 8);
  });

  it('finds the card itself 85.60 mm long, 53.98 mm high and 101.2 mm across', () => {
    expect(there(ruled([0, 0], [85.6, 0], { tiltDeg: 30 })).distanceMm).toBeCloseTo(85.6, 8);
    expect(there(ruled([0, 0], [0, 53.98], { tiltDeg: 30 })).distanceMm).toBeCloseTo(53.98, 8);
    expect(there(ruled([0, 0], [85.6, 53.98])).distanceMm).toBeCloseTo(Math.hypot(85.6, 53.98), 8);
  });

  it('finds the same for corners that go round the other way', () => {
    const mirrored = (point: PlanePoint): PlanePoint => [1 - point[0], point[1]];
    const given = { ...PICTURE, offPlaneMm: 0, corners: four(CARD.map((corner) => mirrored(seen(corner, {})))) };
    const found = photoRuler({ ...given, from: mirrored(seen([95, 10], {})), to: mirrored(seen([95, 50], {})) });
    expect(there(found).distanceMm).toBeCloseTo(40, 8);
  });

  // Closed form: from D, a thing nearer by h looks D/(D − h) as large, so it is smaller than read by h/D of the reading.
  it.each([10, -10])(
    'counts 3.3 % for a thing 10 mm off the plane at 300 mm, which is what it is off (%d mm)',
    (nearerMm) => {
      const found = there(ruled([95, 10], [95, 50], { nearerMm, offPlaneMm: 10 }));
      expect(found.offPlaneMm / found.distanceMm).toBeCloseTo(10 / 300, 12);
      expect(Math.abs(found.distanceMm - 40)).toBeCloseTo(found.offPlaneMm, 8);
    },
  );

  it('takes 300 mm where nobody gave the distance of the camera, and halves the share at 600 mm', () => {
    const given: RulerOnPhoto = { ...PICTURE, ...at(), offPlaneMm: 10 };
    const found = there(photoRuler(given));
    expect(found.offPlaneMm / found.distanceMm).toBeCloseTo(0.0333, 4);
    expect(there(photoRuler({ ...given, distanceToCameraMm: 600 })).offPlaneMm).toBeCloseTo(found.offPlaneMm / 2, 9);
  });

  it('sums the two parts as squares', () => {
    const found = there(photoRuler({ ...PICTURE, ...at(), offPlaneMm: 10 }));
    expect(found.placementMm).toBeGreaterThan(0);
    expect(found.uncertaintyMm ** 2).toBeCloseTo(found.placementMm ** 2 + found.offPlaneMm ** 2, 12);
  });

  // Another way to the same figure: 4000 pictures with every coordinate moved at random within ±1 px, whose standard
  // deviation is 1/√3 of the half-widths summed as squares (GUM, rectangular distribution).
  it.each([0, 30])('has a placement part that agrees within 5 %% with 4000 random placements, tilt %d°', (tiltDeg) => {
    const random = seeded(7);
    const exact = there(ruled([95, 10], [119, 42], { tiltDeg }));
    const distances = Array.from({ length: 4000 }, () => {
      const [a, b, c, d, from, to] = [...CARD, [95, 10] as const, [119, 42] as const].map((point) => {
        const [x, y] = seen(point, { tiltDeg });
        const moved: PlanePoint = [x + (2 * random() - 1) / 2048, y + (2 * random() - 1) / 1536];
        return moved;
      });
      if (!a || !b || !c || !d || !from || !to) throw new Error('six points');
      return there(photoRuler({ ...PICTURE, corners: [a, b, c, d], from, to, offPlaneMm: 0 })).distanceMm;
    });
    const mean = distances.reduce((sum, value) => sum + value, 0) / distances.length;
    const deviation = Math.sqrt(
      distances.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (distances.length - 1),
    );
    expect(Math.abs((deviation * Math.sqrt(3)) / exact.placementMm - 1)).toBeLessThan(0.05);
  });

  it('is twice as sure on a picture of twice the pixels', () => {
    const coarse = there(photoRuler({ ...PICTURE, ...at(), offPlaneMm: 0 }));
    const fine = there(photoRuler({ ...at(), imageWidthPx: 4096, imageHeightPx: 3072, offPlaneMm: 0 }));
    expect(fine.distanceMm).toBeCloseTo(coarse.distanceMm, 9);
    expect(fine.placementMm / coarse.placementMm).toBeCloseTo(0.5, 3);
  });

  it('gives nothing for crossed, dented or fallen-together corners, one point, or a point beyond the horizon', () => {
    const { corners, from, to } = at();
    const [p, q, r, s] = corners;
    const rule = (change: Partial<RulerOnPhoto>) =>
      photoRuler({ ...PICTURE, corners, from, to, offPlaneMm: 0, ...change });
    expect(rule({})).not.toBeNull();
    expect(rule({ corners: [p, r, q, s] })).toBeNull();
    expect(rule({ corners: [p, q, [0.34, 0.48], s] })).toBeNull();
    expect(rule({ corners: [p, q, q, s] })).toBeNull();
    expect(rule({ to: from })).toBeNull();
    const steep = CARD.map((corner) => seen(corner, { tiltDeg: 60 }));
    const beyond = { corners: four(steep), from: seen([95, 50], { tiltDeg: 60 }), to: [0.5, 5] as const };
    const behind = { ...beyond, to: [0.5, -5] as const };
    expect([rule(beyond), rule(behind)].filter((found) => found === null)).toHaveLength(1);
  });

  it('never gives a figure that is not finite', () => {
    const unit = fc.double({ min: 0, max: 1, noNaN: true });
    const point = fc.tuple(unit, unit);
    fc.assert(
      fc.property(fc.tuple(point, point, point, point), point, point, (corners, from, to) => {
        const found = photoRuler({ ...PICTURE, corners, from, to, offPlaneMm: 5 });
        expect(found === null || Object.values(found).every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it.each([{ imageWidthPx: 0 }, { offPlaneMm: -1 }, { distanceToCameraMm: 0 }, { from: [Number.NaN, 0] as const }])(
    'refuses %o',
    (change) => {
      expect(() => photoRuler({ ...PICTURE, ...at(), offPlaneMm: 0, ...change })).toThrow(RangeError);
    },
  );
});

function at() {
  return { corners: four(CARD.map((corner) => seen(corner, {}))), from: seen([95, 10], {}), to: seen([95, 50], {}) };
}

function there(found: PhotoRuler | null): PhotoRuler {
  if (found === null) throw new Error('degenerate');
  return found;
}

function four(points: readonly PlanePoint[]): FourPoints {
  const [one, two, three, last] = points;
  if (!one || !two || !three || !last) throw new Error('four points');
  return [one, two, three, last];
}

/** Park and Miller's generator: the same numbers each time. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
