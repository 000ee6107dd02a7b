import type { Drawing, Mark, PathStep, Stroke } from './display-list.ts';

export interface MarkPlace {
  x: number;
  y: number;
  /** Units of the whole per unit of the part; 1 where it is left out. */
  scale?: number;
}

/** The marks of a drawing, moved and enlarged to stand as a part of a greater one. Texts without words are left out. */
export function placeMarks({ marks }: Pick<Drawing, 'marks'>, place: MarkPlace): Mark[] {
  return marks.filter((mark) => mark.kind !== 'text' || mark.text !== '').map((mark) => placed(mark, place));
}

function placed(mark: Mark, { x, y, scale = 1 }: MarkPlace): Mark {
  const at = (px: number, py: number): [number, number] => [x + px * scale, y + py * scale];
  switch (mark.kind) {
    case 'line':
      return {
        ...mark,
        points: mark.points.map(([px, py]) => at(px, py)),
        stroke: scaledStroke(mark.stroke, scale),
      };
    case 'path':
      return {
        ...mark,
        steps: mark.steps.map((step) => placedStep(step, at)),
        ...(mark.stroke && { stroke: scaledStroke(mark.stroke, scale) }),
      };
    case 'shape':
      return {
        ...mark,
        shape: placedShape(mark.shape, { x, y, scale }),
        ...(mark.stroke && { stroke: scaledStroke(mark.stroke, scale) }),
      };
    case 'text': {
      const [tx, ty] = at(mark.x, mark.y);
      const halo = mark.halo && { halo: { ...mark.halo, width: mark.halo.width * scale } };
      return { ...mark, x: tx, y: ty, size: mark.size * scale, ...halo };
    }
    case 'picture': {
      const [px, py] = at(mark.x, mark.y);
      return { ...mark, x: px, y: py, width: mark.width * scale, height: mark.height * scale };
    }
  }
}

type Shape = Extract<Mark, { kind: 'shape' }>['shape'];

function placedShape(shape: Shape, { x, y, scale }: Required<MarkPlace>): Shape {
  if (shape.form === 'ellipse') {
    return {
      ...shape,
      cx: x + shape.cx * scale,
      cy: y + shape.cy * scale,
      rx: shape.rx * scale,
      ry: shape.ry * scale,
    };
  }
  return {
    ...shape,
    x: x + shape.x * scale,
    y: y + shape.y * scale,
    width: shape.width * scale,
    height: shape.height * scale,
    ...(shape.radius !== undefined && { radius: shape.radius * scale }),
  };
}

function placedStep(step: PathStep, at: (x: number, y: number) => [number, number]): PathStep {
  if (step[0] === 'Z') return step;
  if (step[0] === 'C') return ['C', ...at(step[1], step[2]), ...at(step[3], step[4]), ...at(step[5], step[6])];
  return [step[0], ...at(step[1], step[2])];
}

function scaledStroke(stroke: Stroke, scale: number): Stroke {
  return {
    ...stroke,
    width: stroke.width * scale,
    ...(stroke.dash && { dash: stroke.dash.map((length) => length * scale) }),
  };
}
