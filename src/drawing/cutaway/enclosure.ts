import { boxPath } from '../box-path.ts';
import type { Mark, PathStep, Stroke } from '../display-list.ts';
import { type PackLayout, WALL } from './pack-layout.ts';
import { type ZoneState, zoneInk } from './zone-look.ts';

const OUTLINE_WIDTH = 2.4;
const HATCH_STEP = 7;

/** Tub and lid in section: cut walls are hatched at 45°, as on any technical drawing. */
export function enclosureMarks(layout: PackLayout, state: ZoneState): Mark[] {
  const outline: Stroke = { ink: zoneInk(state), width: OUTLINE_WIDTH, join: 'round', cap: 'round' };
  const inner: Stroke = { ...outline, width: state === 'next' ? 1.8 : 1.2 };
  return [
    ...hatchMarks(layout, state),
    { kind: 'path', steps: tubOutside(layout), stroke: outline },
    { kind: 'path', steps: tubInside(layout), stroke: inner },
    { kind: 'path', steps: lidOutline(layout), stroke: outline },
  ];
}

export function postMarks({ posts, lid }: PackLayout, state: ZoneState): Mark[] {
  const stroke: Stroke = { ink: zoneInk(state), width: OUTLINE_WIDTH, join: 'round' };
  return [
    { x: posts.minusX, sign: '−' },
    { x: posts.plusX, sign: '+' },
  ].flatMap(({ x, sign }): Mark[] => [
    {
      kind: 'path',
      steps: boxPath({ x: x - 12, y: posts.top, width: 24, height: 19, radius: 2.5 }),
      stroke,
      fill: 'face',
    },
    {
      kind: 'path',
      steps: boxPath({ x: x - 17, y: lid.top - 6, width: 34, height: 6, radius: 1 }),
      stroke,
      fill: 'face',
    },
    { kind: 'text', x, y: posts.top + 15, text: sign, size: 17, weight: 600, anchor: 'middle', ink: zoneInk(state) },
  ]);
}

function tubOutside({ tub, lid }: PackLayout): PathStep[] {
  const r = 9;
  return [
    ['M', tub.left, lid.bottom],
    ['L', tub.left, tub.bottom - r],
    ['C', tub.left, tub.bottom - r / 2, tub.left + r / 2, tub.bottom, tub.left + r, tub.bottom],
    ['L', tub.right - r, tub.bottom],
    ['C', tub.right - r / 2, tub.bottom, tub.right, tub.bottom - r / 2, tub.right, tub.bottom - r],
    ['L', tub.right, lid.bottom],
  ];
}

/** The hollow, closed above by the lid's inner face. */
function tubInside({ inside }: PackLayout): PathStep[] {
  return boxPath({
    x: inside.left,
    y: inside.top,
    width: inside.right - inside.left,
    height: inside.bottom - inside.top,
    radius: 4,
  });
}

/** The lid overhangs the tub on both sides, so that rain runs off it. */
function lidOutline({ lid, tub }: PackLayout): PathStep[] {
  const r = 8;
  return [
    ['M', tub.left, lid.bottom],
    ['L', lid.left, lid.bottom],
    ['L', lid.left, lid.top + r],
    ['C', lid.left, lid.top + r / 2, lid.left + r / 2, lid.top, lid.left + r, lid.top],
    ['L', lid.right - r, lid.top],
    ['C', lid.right - r / 2, lid.top, lid.right, lid.top + r / 2, lid.right, lid.top + r],
    ['L', lid.right, lid.bottom],
    ['L', tub.right, lid.bottom],
  ];
}

function hatchMarks({ lid, tub, inside }: PackLayout, state: ZoneState): Mark[] {
  const stroke: Stroke = { ink: state === 'next' ? 'ink' : 'muted', width: state === 'next' ? 1.2 : 0.8 };
  const marks: Mark[] = [];
  const slash = (x: number, y: number): void => {
    marks.push({
      kind: 'line',
      points: [
        [x, y + WALL],
        [x + WALL, y],
      ],
      stroke,
    });
  };
  for (let y = lid.bottom + 2; y < inside.bottom - 4; y += HATCH_STEP) {
    slash(tub.left, y);
    slash(inside.right, y);
  }
  for (let x = tub.left + 10; x < tub.right - 10 - WALL; x += HATCH_STEP) slash(x, inside.bottom);
  for (let x = lid.left + 8; x < lid.right - 8 - WALL; x += HATCH_STEP) slash(x, lid.top);
  return marks;
}
