import { expect, it } from 'vitest';
import { fitSize } from '../../src/photos/fit-size.ts';
import { type Orientation, uprightSize, uprightTransform } from '../../src/photos/orientation.ts';
import { uprightPlace } from '../browser/photographs/scene.ts';

const STORED = { widthPx: 400, heightPx: 300 };

// Expected places: the words of CIPA DC-008, tag 0x0112, spelt out in scene.ts ("6: the 0th row is the right-hand side").
it.each([1, 2, 3, 4, 5, 6, 7, 8] as Orientation[])(
  'orientation %i sends each corner of 400 × 300 px where the Exif standard says',
  (orientation) => {
    const upright = uprightSize(STORED, orientation);
    expect(upright).toEqual(orientation < 5 ? STORED : { widthPx: 300, heightPx: 400 });
    const [a, b, c, d, e, f] = uprightTransform(STORED, orientation);
    for (const [x, y] of [
      [0, 0],
      [1, 0],
      [0, 1],
      [1, 1],
      [0.25, 0.75],
    ] as const) {
      const [px, py] = [x * 400, y * 300];
      const [u, v] = uprightPlace(x, y, orientation);
      expect([a * px + c * py + e, b * px + d * py + f]).toEqual([u * upright.widthPx, v * upright.heightPx]);
    }
  },
);

it.each([
  [4032, 3024, 2048, 2048, 1536],
  [3024, 4032, 2048, 1536, 2048],
  [8064, 6048, 4096, 4096, 3072],
  [807, 1024, 2048, 807, 1024],
  [2048, 2048, 2048, 2048, 2048],
  [4000, 2251, 2048, 2048, 1153],
  [30_000, 2, 2048, 2048, 1],
])('%i × %i px within %i px is %i × %i px', (widthPx, heightPx, longest, fittedWidth, fittedHeight) => {
  expect(fitSize({ widthPx, heightPx }, longest)).toEqual({ widthPx: fittedWidth, heightPx: fittedHeight });
});
