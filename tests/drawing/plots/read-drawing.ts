import type { Drawing, LineMark, Mark, ShapeMark, TextMark } from '../../../src/drawing/display-list.ts';
import { type Box, textBox } from '../../../src/drawing/plots/label-room.ts';

export const textsOf = ({ marks }: Drawing): TextMark[] =>
  marks.filter((mark): mark is TextMark => mark.kind === 'text');
export const linesOf = ({ marks }: Drawing): LineMark[] =>
  marks.filter((mark): mark is LineMark => mark.kind === 'line');
export const boxesOf = ({ marks }: Drawing) =>
  marks.flatMap((mark) => (mark.kind === 'shape' && mark.shape.form === 'box' ? [{ ...mark, shape: mark.shape }] : []));
export const dotsOf = ({ marks }: Drawing) =>
  marks.flatMap((mark) =>
    mark.kind === 'shape' && mark.shape.form === 'ellipse' ? [{ ...mark, shape: mark.shape }] : [],
  );

export function textOf(drawing: Drawing, text: string): TextMark {
  const found = textsOf(drawing).filter((mark) => mark.text === text);
  if (found.length !== 1) throw new Error(`${found.length} times "${text}"`);
  return found[0]!;
}

/** The middle of a word, across and down. */
export function middleOf(mark: TextMark): { x: number; y: number } {
  const box = textBox(mark);
  return { x: (box.left + box.right) / 2, y: mark.y - mark.size * 0.35 };
}

/** Everywhere a mark reaches, its stroke's width left out. */
export function reachOf(mark: Mark): Box {
  const points = pointsOf(mark);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

function pointsOf(mark: Mark): [number, number][] {
  switch (mark.kind) {
    case 'line':
      return mark.points;
    case 'path':
      return mark.steps.flatMap((step) => (step[0] === 'Z' ? [] : [[step[1], step[2]] as [number, number]]));
    case 'shape':
      return shapePoints(mark);
    case 'text': {
      const box = textBox(mark);
      return [
        [box.left, box.top],
        [box.right, box.bottom],
      ];
    }
    case 'picture':
      return [
        [mark.x, mark.y],
        [mark.x + mark.width, mark.y + mark.height],
      ];
  }
}

function shapePoints({ shape }: ShapeMark): [number, number][] {
  if (shape.form === 'box') {
    return [
      [shape.x, shape.y],
      [shape.x + shape.width, shape.y + shape.height],
    ];
  }
  return [
    [shape.cx - shape.rx, shape.cy - shape.ry],
    [shape.cx + shape.rx, shape.cy + shape.ry],
  ];
}
