import type { DrawnCallout, PhotoFrame } from '../callouts.ts';
import type { Mark } from '../display-list.ts';
import { cornerBox } from './corner-box.ts';
import { shownPoints } from './shown-points.ts';

const HATCH_STEP = 12;
const HATCH_WIDTH = 0.8;

/**
 * A solid black block with a thin hatch that says it was put there. Its edges are moved outward to whole units, so that
 * no half-covered row of pixels is left when it is burnt in.
 */
export function coverMarksOf(callout: DrawnCallout, frame: PhotoFrame): Mark[] {
  const box = cornerBox(shownPoints(callout, frame));
  if (box === null) return [];
  const x = Math.max(0, Math.floor(box.x));
  const y = Math.max(0, Math.floor(box.y));
  const width = Math.min(frame.widthPx, Math.ceil(box.x + box.width)) - x;
  const height = Math.min(frame.heightPx, Math.ceil(box.y + box.height)) - y;
  const marks: Mark[] = [{ kind: 'shape', shape: { form: 'box', x, y, width, height }, fill: 'black' }];
  // Lines at 45° through the box: each is where x + y is constant, cut off at the box's sides.
  const step = HATCH_STEP * frame.scale;
  for (let sum = step; sum < width + height; sum += step) {
    const from = Math.max(0, sum - height);
    const to = Math.min(width, sum);
    marks.push({
      kind: 'line',
      points: [
        [x + from, y + sum - from],
        [x + to, y + sum - to],
      ],
      stroke: { ink: 'white', width: HATCH_WIDTH * frame.scale },
    });
  }
  return marks;
}
