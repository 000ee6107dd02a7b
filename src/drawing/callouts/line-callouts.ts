import type { DrawnCallout, PhotoFrame } from '../callouts.ts';
import type { Mark } from '../display-list.ts';
import { type Point, turnPoint } from '../turn-point.ts';
import { cornerBox } from './corner-box.ts';
import { HALO_EACH_SIDE, haloedLine, haloedShape } from './haloed-line.ts';
import { shownPoints } from './shown-points.ts';

const HEAD_LENGTH = 13;
const HEAD_HALF_ANGLE_DEG = 24;

/** Head first, then tail. The head keeps its size; a shorter arrow is all head. */
export function arrowMarksOf(callout: DrawnCallout, frame: PhotoFrame): Mark[] {
  const [tip, tail] = shownPoints(callout, frame);
  if (tip === undefined || tail === undefined) return [];
  const length = Math.hypot(tail[0] - tip[0], tail[1] - tip[1]);
  if (length === 0) return [];
  const along = HEAD_LENGTH * frame.scale;
  const onShaft: Point = [
    tip[0] + ((tail[0] - tip[0]) / length) * along,
    tip[1] + ((tail[1] - tip[1]) / length) * along,
  ];
  const reach: Point = [tip[0] + (onShaft[0] - tip[0]) / COS_HALF, tip[1] + (onShaft[1] - tip[1]) / COS_HALF];
  const barbs = [turnPoint(reach, HEAD_HALF_ANGLE_DEG, tip), turnPoint(reach, -HEAD_HALF_ANGLE_DEG, tip)] as const;
  const shaft = length > along ? haloedLine([onShaft, tail], frame.scale) : [];
  return [
    ...shaft,
    {
      kind: 'path',
      steps: [['M', ...tip], ['L', ...barbs[0]], ['L', ...barbs[1]], ['Z']],
      fill: 'black',
      stroke: { ink: 'white', width: HALO_EACH_SIDE * frame.scale, join: 'round' },
    },
  ];
}
const COS_HALF = Math.cos((HEAD_HALF_ANGLE_DEG * Math.PI) / 180);

export function outlineMarksOf(callout: DrawnCallout, frame: PhotoFrame): Mark[] {
  const box = cornerBox(shownPoints(callout, frame));
  return box === null ? [] : haloedShape({ form: 'box', ...box, radius: 4 * frame.scale }, frame.scale);
}

/** The pen's path; a mere tap is a dot. */
export function strokeMarksOf(callout: DrawnCallout, frame: PhotoFrame): Mark[] {
  const points = shownPoints(callout, frame);
  const [first] = points;
  if (first === undefined) return [];
  return haloedLine(points.length === 1 ? [first, first] : points, frame.scale);
}
