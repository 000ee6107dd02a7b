import { pictureSurface } from './picture-surface.ts';

/**
 * Whether a canvas hands back what was drawn on it. Browsers that resist fingerprinting may answer with white or with
 * noise, and a photo shrunk there would be lost without a sound. A few steps of difference are let pass: milder
 * protection only disturbs the lowest bits.
 */
export function canvasIsHonest(): boolean {
  const surface = pictureSurface({ widthPx: RAMP.length, heightPx: 1 });
  RAMP.forEach((level, x) => {
    surface.context.fillStyle = `rgb(${level} ${level} ${level})`;
    surface.context.fillRect(x, 0, 1, 1);
  });
  const { data } = surface.context.getImageData(0, 0, RAMP.length, 1);
  surface.release();
  return RAMP.every((level, x) => Math.abs((data[4 * x] ?? -1) - level) <= MOST_STEPS_OFF);
}

/** Dark and light in turn: neither all white, all black nor a smooth noise passes for it. */
const RAMP = [10, 200, 40, 230, 70, 250, 100, 160];
/** Our choice: two lowest bits. */
const MOST_STEPS_OFF = 3;
