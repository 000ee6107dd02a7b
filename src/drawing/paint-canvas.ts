import { boxPath } from './box-path.ts';
import type {
  Drawing,
  Ink,
  Mark,
  Palette,
  PathStep,
  PictureMark,
  ShapeMark,
  Stroke,
  TextMark,
} from './display-list.ts';
import { FONT_FAMILY } from './palette.ts';

/** The part of a 2D canvas context that is used; the real one fits it. */
export interface CanvasSurface {
  fillStyle: unknown;
  strokeStyle: unknown;
  lineWidth: number;
  lineCap: 'butt' | 'round' | 'square';
  lineJoin: 'bevel' | 'miter' | 'round';
  font: string;
  textAlign: 'center' | 'end' | 'left' | 'right' | 'start';
  textBaseline: 'alphabetic' | 'bottom' | 'hanging' | 'ideographic' | 'middle' | 'top';
  save(): void;
  restore(): void;
  scale(x: number, y: number): void;
  beginPath(): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  bezierCurveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void;
  closePath(): void;
  ellipse(x: number, y: number, rx: number, ry: number, turn: number, start: number, end: number): void;
  setLineDash(dash: number[]): void;
  stroke(): void;
  fill(): void;
  strokeText(text: string, x: number, y: number): void;
  fillText(text: string, x: number, y: number): void;
}

export interface CanvasOptions {
  palette: Palette;
  /** Canvas pixels per unit of the drawing. */
  scale: number;
  /** Puts a photo into its box, in drawing units: the canvas already stands in them. */
  drawPicture: (mark: PictureMark) => void;
}

/** Paints a drawing on a canvas; its state is as before afterwards. */
export function paintCanvas(drawing: Drawing, surface: CanvasSurface, options: CanvasOptions): void {
  surface.save();
  surface.scale(options.scale, options.scale);
  for (const mark of drawing.marks) paintMark(mark, surface, options);
  surface.restore();
}

function paintMark(mark: Mark, surface: CanvasSurface, options: CanvasOptions): void {
  switch (mark.kind) {
    case 'line':
      tracePath(
        mark.points.map(([x, y], place) => [place === 0 ? 'M' : 'L', x, y]),
        surface,
      );
      applyLook(mark, surface, options.palette);
      return;
    case 'path':
      tracePath(mark.steps, surface);
      applyLook(mark, surface, options.palette);
      return;
    case 'shape':
      traceShape(mark, surface);
      applyLook(mark, surface, options.palette);
      return;
    case 'text':
      paintText(mark, surface, options.palette);
      return;
    case 'picture':
      options.drawPicture(mark);
  }
}

function traceShape({ shape }: ShapeMark, surface: CanvasSurface): void {
  if (shape.form === 'box') {
    tracePath(boxPath({ ...shape, radius: shape.radius ?? 0 }), surface);
    return;
  }
  surface.beginPath();
  surface.ellipse(shape.cx, shape.cy, shape.rx, shape.ry, 0, 0, 2 * Math.PI);
}

function tracePath(steps: PathStep[], surface: CanvasSurface): void {
  surface.beginPath();
  for (const step of steps) {
    if (step[0] === 'M') surface.moveTo(step[1], step[2]);
    else if (step[0] === 'L') surface.lineTo(step[1], step[2]);
    else if (step[0] === 'C') surface.bezierCurveTo(step[1], step[2], step[3], step[4], step[5], step[6]);
    else surface.closePath();
  }
}

function applyLook(mark: { stroke?: Stroke; fill?: Ink }, surface: CanvasSurface, palette: Palette): void {
  if (mark.fill !== undefined) {
    surface.fillStyle = palette[mark.fill];
    surface.fill();
  }
  if (mark.stroke === undefined) return;
  surface.strokeStyle = palette[mark.stroke.ink];
  surface.lineWidth = mark.stroke.width;
  surface.lineCap = mark.stroke.cap ?? 'butt';
  surface.lineJoin = mark.stroke.join ?? 'miter';
  surface.setLineDash(mark.stroke.dash ?? []);
  surface.stroke();
}

const CANVAS_ALIGN = { start: 'left', middle: 'center', end: 'right' } as const;

function paintText(mark: TextMark, surface: CanvasSurface, palette: Palette): void {
  surface.font = `${mark.weight} ${mark.size}px '${FONT_FAMILY}', sans-serif`;
  surface.textAlign = CANVAS_ALIGN[mark.anchor];
  surface.textBaseline = 'alphabetic';
  if (mark.halo !== undefined) {
    surface.strokeStyle = palette[mark.halo.ink];
    surface.lineWidth = mark.halo.width;
    surface.lineJoin = 'round';
    surface.setLineDash([]);
    surface.strokeText(mark.text, mark.x, mark.y);
  }
  surface.fillStyle = palette[mark.ink];
  surface.fillText(mark.text, mark.x, mark.y);
}
