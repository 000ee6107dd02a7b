import { describe, expect, it } from 'vitest';
import type { CalloutKind, ImagePoint } from '../../../src/schema/callout.ts';
import { type Crosshair, keyStep, movedCrosshair, setPoint } from '../../../src/ui/callouts/crosshair.ts';

/** Sets a point at each place in turn; the path of the last one. */
function pathOf(kind: CalloutKind, places: ImagePoint[]): ImagePoint[] | null {
  let crosshair: Crosshair = { at: [0.5, 0.5], set: [] };
  let path: ImagePoint[] | null = null;
  for (const at of places) ({ crosshair, path } = setPoint(kind, { ...crosshair, at }));
  return path;
}

describe('keyStep', () => {
  it('goes a hundredth of the photo, with Shift a twentieth, finer when magnified', () => {
    expect(keyStep('ArrowRight', { large: false, zoom: 1 })).toEqual([0.01, 0]);
    expect(keyStep('ArrowUp', { large: true, zoom: 1 })).toEqual([0, -0.05]);
    expect(keyStep('ArrowLeft', { large: true, zoom: 5 })).toEqual([-0.01, 0]);
  });

  it('knows no other key', () => {
    expect(keyStep('a', { large: false, zoom: 1 })).toBeNull();
  });
});

describe('movedCrosshair', () => {
  it('stops at the edge of the picture', () => {
    expect(movedCrosshair({ at: [0.98, 0.02], set: [] }, [0.05, -0.05]).at).toEqual([1, 0]);
  });
});

describe('setPoint', () => {
  it.each(['leader', 'text'] as const)('needs one point for a %s', (kind) => {
    expect(pathOf(kind, [[0.2, 0.3]])).toEqual([[0.2, 0.3]]);
  });

  it.each(['arrow', 'outline', 'cover'] as const)('needs two points for an %s, in two places', (kind) => {
    expect(pathOf(kind, [[0.2, 0.3]])).toBeNull();
    expect(
      pathOf(kind, [
        [0.2, 0.3],
        [0.2, 0.3],
      ]),
    ).toBeNull();
    expect(
      pathOf(kind, [
        [0.2, 0.3],
        [0.6, 0.7],
      ]),
    ).toEqual([
      [0.2, 0.3],
      [0.6, 0.7],
    ]);
  });

  it('takes points for a stroke until one is set twice in the same place', () => {
    expect(
      pathOf('stroke', [
        [0.1, 0.1],
        [0.2, 0.1],
        [0.3, 0.2],
      ]),
    ).toBeNull();
    expect(
      pathOf('stroke', [
        [0.1, 0.1],
        [0.2, 0.1],
        [0.3, 0.2],
        [0.3, 0.2],
      ]),
    ).toEqual([
      [0.1, 0.1],
      [0.2, 0.1],
      [0.3, 0.2],
    ]);
    expect(
      pathOf('stroke', [
        [0.1, 0.1],
        [0.1, 0.1],
      ]),
    ).toBeNull();
  });

  it('begins anew after a whole path', () => {
    expect(setPoint('arrow', { at: [0.6, 0.7], set: [[0.2, 0.3]] }).crosshair.set).toEqual([]);
  });
});
