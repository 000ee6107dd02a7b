import type { Mark, Stroke } from '../display-list.ts';
import type { FuseGate } from '../trip-plot.ts';
import type { Point } from '../turn-point.ts';
import type { Box } from './label-room.ts';
import type { Scale } from './linear-scale.ts';

const BAR: Stroke = { ink: 'ink', width: 3.4 };
const CAP: Stroke = { ink: 'ink', width: 1.4 };
const HALF_CAP = 5;

/** The upright between the gate's two times: to the edge of the panel where there is no bound; null if neither is. */
export function gateLine(
  { currentA, minTimeS, maxTimeS }: FuseGate,
  scales: { x: Scale; y: Scale },
  panel: Box,
): Point[] | null {
  // A least time of 0 bounds nothing, and has no place on an axis by decades.
  const isOpenBelow = minTimeS === null || minTimeS === 0;
  if (isOpenBelow && maxTimeS === null) return null;
  const at = scales.x(currentA);
  return [
    [at, maxTimeS === null ? panel.top : Math.min(scales.y(maxTimeS), panel.bottom)],
    [at, isOpenBelow ? panel.bottom : scales.y(minTimeS)],
  ];
}

/** A bar from the shortest to the longest time at this current, with a cap at each end that is a bound. */
export function gateMarks(gate: FuseGate, scales: { x: Scale; y: Scale }, panel: Box): Mark[] {
  const line = gateLine(gate, scales, panel);
  if (line === null) return [];
  const bounds = line.filter(([, y], end) => (end === 0 ? gate.maxTimeS !== null : y < panel.bottom));
  return [
    { kind: 'line', points: line, stroke: { ...BAR, ink: 'ground', width: BAR.width + 3 } },
    { kind: 'line', points: line, stroke: { ...BAR, dash: [1.6, 1.6] } },
    ...bounds.map(
      ([x, y]): Mark => ({
        kind: 'line',
        points: [
          [x - HALF_CAP, y],
          [x + HALF_CAP, y],
        ],
        stroke: CAP,
      }),
    ),
  ];
}
