import type { Outcome } from '../schema/grade.ts';
import type { Drawing, Mark, PathStep, Stroke } from './display-list.ts';
import { type Point, turnPoint } from './turn-point.ts';

export type LidOutcome = Outcome | 'notSeen';

export const LID_GLYPH_WIDTH = 26;
export const LID_GLYPH_HEIGHT = 28;

/** Angles of the lid, clockwise positive: ajar and tilted swing about its left end, off is lifted and turned in the air. */
export const LID_ANGLE_DEG = { sound: 0, passable: -13, weak: -38, failed: 14 } as const;

const LID = { left: 2.8, right: 23.2, top: 13.4, bottom: 19 };
const LID_HINGE: Point = [LID.left, (LID.top + LID.bottom) / 2];
const LIFTED_BY = 9;
const TUB = { left: 4.6, right: 21.4, top: 19, bottom: 26.9, corner: 2.2 };
const OUTLINE: Stroke = { ink: 'ink', width: 2, join: 'round', cap: 'round' };

/**
 * A tub and its lid: closed, ajar, tilted, off; both dashed when not seen; thin with a bar in it when the item does not
 * apply. Colour only inside the lid. Give `alt` where no word stands beside it.
 */
export function lidGlyph(outcome: LidOutcome, alt = ''): Drawing {
  return { width: LID_GLYPH_WIDTH, height: LID_GLYPH_HEIGHT, alt, marks: marksOf(outcome) };
}

function marksOf(outcome: LidOutcome): Mark[] {
  if (outcome === 'notSeen') {
    const dashed: Stroke = { ...OUTLINE, cap: 'butt', dash: [3.2, 2.2] };
    return [
      { kind: 'path', steps: tubSteps().slice(0, -1), stroke: dashed },
      { kind: 'path', steps: closed(lidCorners('sound')), stroke: dashed },
    ];
  }
  if (outcome === 'doesNotApply') {
    const thin: Stroke = { ...OUTLINE, ink: 'muted', width: 1.4 };
    return [
      { kind: 'path', steps: tubSteps(), stroke: thin },
      { kind: 'path', steps: closed(lidCorners('sound')), stroke: thin },
      {
        kind: 'line',
        points: [
          [10, 22.9],
          [16, 22.9],
        ],
        stroke: { ...OUTLINE, ink: 'muted' },
      },
    ];
  }
  return [
    { kind: 'path', steps: tubSteps(), stroke: OUTLINE },
    { kind: 'path', steps: closed(lidCorners(outcome)), fill: outcome, stroke: OUTLINE },
  ];
}

/** Corners of the lid's outline: top left, top right, bottom right, bottom left of the lid before it is turned. */
export function lidCorners(grade: keyof typeof LID_ANGLE_DEG): Point[] {
  const lift = grade === 'failed' ? LIFTED_BY : 0;
  const centre: Point = grade === 'failed' ? [(LID.left + LID.right) / 2, LID_HINGE[1] - lift] : LID_HINGE;
  const corners: Point[] = [
    [LID.left, LID.top - lift],
    [LID.right, LID.top - lift],
    [LID.right, LID.bottom - lift],
    [LID.left, LID.bottom - lift],
  ];
  return corners.map((corner) => turnPoint(corner, LID_ANGLE_DEG[grade], centre));
}

/** From the rim's left end round to its right one, then along the rim. */
function tubSteps(): PathStep[] {
  const { left, right, top, bottom, corner } = TUB;
  return [
    ['M', left, top],
    ['L', left, bottom - corner],
    ['C', left, bottom - corner / 2, left + corner / 2, bottom, left + corner, bottom],
    ['L', right - corner, bottom],
    ['C', right - corner / 2, bottom, right, bottom - corner / 2, right, bottom - corner],
    ['L', right, top],
    ['Z'],
  ];
}

function closed(corners: Point[]): PathStep[] {
  return [...corners.map(([x, y], place): PathStep => [place === 0 ? 'M' : 'L', x, y]), ['Z']];
}
