import { describe, expect, it } from 'vitest';
import { CALLOUT_KINDS, type CalloutKind, type ImagePoint } from '../../../src/schema/callout.ts';
import { movedPoint, movedWhole, pointsFromPath } from '../../../src/ui/callouts/shape-callout.ts';

const whole = { widthPx: 390, heightPx: 520 };
const drawn = (kind: CalloutKind, path: ImagePoint[], zoom = 1) =>
  pointsFromPath(kind, path, { shown: { widthPx: 390 * zoom, heightPx: 520 * zoom }, whole });
const PATH: ImagePoint[] = [
  [0.1, 0.2],
  [0.3, 0.4],
  [0.65432189, 0.5],
];

describe('pointsFromPath', () => {
  it('points a leader where the finger was lifted and sets its number 64 px across and up', () => {
    expect(drawn('leader', PATH)).toEqual([
      [0.6543, 0.5],
      [Math.round((0.6543 - 64 / 390) * 1e4) / 1e4, Math.round((0.5 - 64 / 520) * 1e4) / 1e4],
    ]);
  });

  it('keeps the number’s distance at the whole photo’s size, however far it is magnified', () => {
    expect(drawn('leader', PATH, 6)).toEqual(drawn('leader', PATH));
  });

  it('stores an arrow head first: pulled from (0.1, 0.2) to (0.6543, 0.5)', () => {
    expect(drawn('arrow', PATH)).toEqual([
      [0.6543, 0.5],
      [0.1, 0.2],
    ]);
  });

  it.each(['outline', 'cover'] as const)('stores two corners of %s', (kind) => {
    expect(drawn(kind, PATH)).toEqual([
      [0.1, 0.2],
      [0.6543, 0.5],
    ]);
  });

  it('begins words where the finger was lifted', () => {
    expect(drawn('text', PATH)).toEqual([[0.6543, 0.5]]);
  });

  it.each(['arrow', 'outline', 'cover'] as const)('takes an %s of 11 px as a slip, one of 13 px as meant', (kind) => {
    expect(
      drawn(kind, [
        [0.5, 0.5],
        [0.5 + 11 / 390, 0.5],
      ]),
    ).toBeNull();
    expect(
      drawn(kind, [
        [0.5, 0.5],
        [0.5 + 13 / 390, 0.5],
      ]),
    ).toHaveLength(2);
  });

  it('keeps a stroke that ends where it began', () => {
    expect(
      drawn('stroke', [
        [0.2, 0.2],
        [0.4, 0.2],
        [0.4, 0.4],
        [0.2, 0.2],
      ]),
    ).toHaveLength(4);
    expect(
      drawn('stroke', [
        [0.2, 0.2],
        [0.201, 0.2],
      ]),
    ).toBeNull();
  });

  it.each(CALLOUT_KINDS)('keeps %s inside the picture when the finger leaves it', (kind) => {
    const points = drawn(kind, [
      [-0.5, 0.5],
      [0.5, 1.7],
      [1.4, -0.2],
    ]);
    for (const coordinate of points?.flat() ?? [Number.NaN]) {
      expect(coordinate).toBeGreaterThanOrEqual(0);
      expect(coordinate).toBeLessThanOrEqual(1);
    }
  });

  it.each(CALLOUT_KINDS)('makes nothing of an empty path: %s', (kind) => {
    expect(drawn(kind, [])).toBeNull();
  });
});

describe('moving', () => {
  it('moves one point and leaves the other', () => {
    expect(
      movedPoint(
        [
          [0.1, 0.1],
          [0.5, 0.5],
        ],
        1,
        [0.6, 1.2],
      ),
    ).toEqual([
      [0.1, 0.1],
      [0.6, 1],
    ]);
  });

  it('moves all alike and stops at the edge without changing the shape: 0.3 of an asked 0.5', () => {
    expect(
      movedWhole(
        [
          [0.1, 0.1],
          [0.7, 0.5],
        ],
        [0.5, 0],
      ),
    ).toEqual([
      [0.4, 0.1],
      [1, 0.5],
    ]);
    expect(
      movedWhole(
        [
          [0.1, 0.1],
          [0.7, 0.5],
        ],
        [-0.5, -0.05],
      ),
    ).toEqual([
      [0, 0.05],
      [0.6, 0.45],
    ]);
  });
});
