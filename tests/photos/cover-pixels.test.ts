import { expect, it } from 'vitest';
import { coverPixels } from '../../src/photos/burn-in-covers.ts';

const SIZE = { widthPx: 200, heightPx: 100 };

// Closed form: edges × size, left and top rounded down, right and bottom up, clipped to the picture.
it.each([
  ['a box on whole pixels', { x: 0.25, y: 0.5, width: 0.5, height: 0.25 }, [50, 50, 100, 25]],
  ['a box between pixels grows outward', { x: 0.2512, y: 0.505, width: 0.001, height: 0.001 }, [50, 50, 1, 1]],
  ['a box past the edges is clipped', { x: 0.9, y: 0.9, width: 0.5, height: 0.5 }, [180, 90, 20, 10]],
  ['the whole picture', { x: 0, y: 0, width: 1, height: 1 }, [0, 0, 200, 100]],
] as const)('%s', (_, box, pixels) => {
  expect(coverPixels(box, SIZE)).toEqual(pixels);
});
