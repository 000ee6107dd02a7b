import type { Mark, Stroke } from '../display-list.ts';
import type { Box } from './label-room.ts';

/** Lines at 45° through a box, cut off at its sides. */
export function hatchMarks({ left, top, right, bottom }: Box, step: number, stroke: Stroke): Mark[] {
  const [width, height] = [right - left, bottom - top];
  const marks: Mark[] = [];
  // Each is where x + y is constant.
  for (let sum = step / 2; sum < width + height; sum += step) {
    const [from, to] = [Math.max(0, sum - height), Math.min(width, sum)];
    marks.push({
      kind: 'line',
      points: [
        [left + from, top + sum - from],
        [left + to, top + sum - to],
      ],
      stroke,
    });
  }
  return marks;
}
