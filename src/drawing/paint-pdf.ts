import type { Drawing, Ink, Mark, Palette, PathStep, ShapeMark, Stroke, TextMark } from './display-list.ts';
import { PAPER } from './palette.ts';

/** What a page must be able to do. All lengths, text sizes among them, are in the page's one unit; colours are #RRGGBB. */
export interface PdfSurface {
  polyline(points: [x: number, y: number][], stroke: PdfStroke): void;
  path(steps: PathStep[], style: PdfStyle): void;
  box(box: PdfBox & { radius: number }, style: PdfStyle): void;
  ellipse(ellipse: { cx: number; cy: number; rx: number; ry: number }, style: PdfStyle): void;
  text(text: PdfText): void;
  image(photoId: string, box: PdfBox): void;
}

export interface PdfBox {
  x: number;
  y: number;
  width: number;
  height: number;
}
export interface PdfStroke {
  colour: string;
  width: number;
  dash: number[];
  cap: 'butt' | 'round';
  join: 'miter' | 'round';
}
/** A null stroke or fill is not painted. */
export interface PdfStyle {
  stroke: PdfStroke | null;
  fill: string | null;
}
export interface PdfText {
  x: number;
  y: number;
  text: string;
  size: number;
  weight: 400 | 500 | 600;
  anchor: 'start' | 'middle' | 'end';
  colour: string;
  /** Painted first, as an outline of this full width. */
  halo: { colour: string; width: number } | null;
}

export interface PdfPlace {
  /** Where the drawing's top left corner stands on the page. */
  x: number;
  y: number;
  /** Page units per unit of the drawing. */
  scale: number;
  palette?: Palette;
}

/** Paints a drawing on a page. The place and the scale are worked into every number, so a surface needs no transform. */
export function paintPdf(drawing: Drawing, surface: PdfSurface, place: PdfPlace): void {
  const inks = place.palette ?? PAPER;
  for (const mark of drawing.marks) paintMark(mark, surface, { ...place, inks });
}

type Pen = PdfPlace & { inks: Palette };

function paintMark(mark: Mark, surface: PdfSurface, pen: Pen): void {
  switch (mark.kind) {
    case 'line':
      surface.polyline(
        mark.points.map(([x, y]) => at(x, y, pen)),
        strokeOf(mark.stroke, pen),
      );
      return;
    case 'path':
      surface.path(
        mark.steps.map((step) => stepAt(step, pen)),
        styleOf(mark, pen),
      );
      return;
    case 'shape':
      paintShape(mark, surface, pen);
      return;
    case 'text':
      surface.text(textAt(mark, pen));
      return;
    case 'picture':
      surface.image(mark.photoId, boxAt(mark, pen));
  }
}

function paintShape(mark: ShapeMark, surface: PdfSurface, pen: Pen): void {
  const { shape } = mark;
  if (shape.form === 'box') {
    surface.box({ ...boxAt(shape, pen), radius: (shape.radius ?? 0) * pen.scale }, styleOf(mark, pen));
    return;
  }
  const [cx, cy] = at(shape.cx, shape.cy, pen);
  surface.ellipse({ cx, cy, rx: shape.rx * pen.scale, ry: shape.ry * pen.scale }, styleOf(mark, pen));
}

function textAt(mark: TextMark, pen: Pen): PdfText {
  const [x, y] = at(mark.x, mark.y, pen);
  const { text, weight, anchor, halo } = mark;
  return {
    x,
    y,
    text,
    weight,
    anchor,
    size: mark.size * pen.scale,
    colour: pen.inks[mark.ink],
    halo: halo === undefined ? null : { colour: pen.inks[halo.ink], width: halo.width * pen.scale },
  };
}

function at(x: number, y: number, pen: Pen): [number, number] {
  return [pen.x + x * pen.scale, pen.y + y * pen.scale];
}

function boxAt(box: PdfBox, pen: Pen): PdfBox {
  const [x, y] = at(box.x, box.y, pen);
  return { x, y, width: box.width * pen.scale, height: box.height * pen.scale };
}

function stepAt(step: PathStep, pen: Pen): PathStep {
  switch (step[0]) {
    case 'Z':
      return step;
    case 'C':
      return ['C', ...at(step[1], step[2], pen), ...at(step[3], step[4], pen), ...at(step[5], step[6], pen)];
    default:
      return [step[0], ...at(step[1], step[2], pen)];
  }
}

function styleOf(mark: { stroke?: Stroke; fill?: Ink }, pen: Pen): PdfStyle {
  return {
    stroke: mark.stroke === undefined ? null : strokeOf(mark.stroke, pen),
    fill: mark.fill === undefined ? null : pen.inks[mark.fill],
  };
}

function strokeOf(stroke: Stroke, pen: Pen): PdfStroke {
  return {
    colour: pen.inks[stroke.ink],
    width: stroke.width * pen.scale,
    dash: (stroke.dash ?? []).map((length) => length * pen.scale),
    cap: stroke.cap ?? 'butt',
    join: stroke.join ?? 'miter',
  };
}
