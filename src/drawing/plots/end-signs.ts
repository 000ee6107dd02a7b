import type { RunEndChoice } from '../../schema/live-tests/run.ts';
import type { Mark, Stroke } from '../display-list.ts';
import type { Point } from '../turn-point.ts';

const EDGE: Stroke = { ink: 'ink', width: 1.6, join: 'round', cap: 'round' };

/**
 * What stands at the end of a run. Low voltage: a filled dot. The pack opened: the line is broken and ends at a bar.
 * Stopped by hand or clock: an open square. Current tapered off: an open triangle. Cannot be told: a cross.
 */
export function endSign(end: RunEndChoice, [x, y]: Point, isSteep: boolean): Mark[] {
  switch (end) {
    case 'lowVoltage':
      return [{ kind: 'shape', shape: { form: 'ellipse', cx: x, cy: y, rx: 3.6, ry: 3.6 }, fill: 'ink' }];
    case 'packDisconnect':
      return brokenEnd([x, y], isSteep);
    case 'stopped':
      return [
        {
          kind: 'shape',
          shape: { form: 'box', x: x - 3.5, y: y - 3.5, width: 7, height: 7 },
          stroke: EDGE,
          fill: 'ground',
        },
      ];
    case 'taper':
      return [
        {
          kind: 'path',
          steps: [['M', x - 4.4, y - 3.6], ['L', x + 4.4, y - 3.6], ['L', x, y + 4.2], ['Z']],
          stroke: EDGE,
          fill: 'ground',
        },
      ];
    case 'unclear':
      return [line([x - 3.6, y - 3.6], [x + 3.6, y + 3.6], EDGE), line([x - 3.6, y + 3.6], [x + 3.6, y - 3.6], EDGE)];
  }
}

/** The sign in a key: with a piece of line before it where the line is part of the sign. */
export function endKeySign(end: RunEndChoice, x: number, y: number): Mark[] {
  if (end !== 'packDisconnect') return endSign(end, [x, y], false);
  return [line([x - 7, y], [x - 2.5, y], { ...EDGE, cap: 'butt' }), ...endSign(end, [x + 2, y], false)];
}

/** A gap in the line and a bar across its way: upright at the end of a level line, level below a fall. */
function brokenEnd([x, y]: Point, isSteep: boolean): Mark[] {
  const gap: Stroke = { ink: 'ground', width: 5 };
  const bar: Stroke = { ink: 'ink', width: 2.4 };
  if (isSteep) return [line([x, y - 6], [x, y - 1.5], gap), line([x - 6, y], [x + 6, y], bar)];
  return [line([x - 4, y], [x - 0.5, y], gap), line([x + 0.5, y - 6], [x + 0.5, y + 6], bar)];
}

function line(from: Point, to: Point, stroke: Stroke): Mark {
  return { kind: 'line', points: [from, to], stroke };
}
