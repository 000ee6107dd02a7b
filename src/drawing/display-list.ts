/**
 * A drawing as a flat list of marks, in the order in which they are painted. Plots, callouts, the cutaway, the rule
 * and the picture card are all made of these; painters for SVG, PDF and canvas turn them into the real thing.
 * Lengths are in the drawing's own units: `width` × `height` is the box it stands in, y downwards.
 */
export interface Drawing {
  width: number;
  height: number;
  /** What the drawing says, for a reader who cannot see it. */
  alt: string;
  marks: Mark[];
}

/** Inks are names; each painter has a palette that says what they are in its theme. */
export type Ink =
  | 'ink'
  | 'muted'
  | 'line'
  | 'face'
  | 'ground'
  | 'tape'
  | 'tapeInk'
  | 'sound'
  | 'passable'
  | 'weak'
  | 'failed'
  | 'white'
  | 'black';

export interface Stroke {
  ink: Ink;
  width: number;
  dash?: number[];
  cap?: 'butt' | 'round';
  join?: 'miter' | 'round';
}

export type Mark = LineMark | PathMark | ShapeMark | TextMark | PictureMark;

export interface LineMark {
  kind: 'line';
  /** At least two points. */
  points: [x: number, y: number][];
  stroke: Stroke;
}

export interface PathMark {
  kind: 'path';
  /** M, L, C (cubic) and Z only: what every painter can do exactly. */
  steps: PathStep[];
  stroke?: Stroke;
  fill?: Ink;
}
export type PathStep =
  | ['M', number, number]
  | ['L', number, number]
  | ['C', number, number, number, number, number, number]
  | ['Z'];

export interface ShapeMark {
  kind: 'shape';
  shape:
    | { form: 'box'; x: number; y: number; width: number; height: number; radius?: number }
    | { form: 'ellipse'; cx: number; cy: number; rx: number; ry: number };
  stroke?: Stroke;
  fill?: Ink;
}

export interface TextMark {
  kind: 'text';
  /** Baseline. */
  x: number;
  y: number;
  text: string;
  size: number;
  weight: 400 | 500 | 600;
  anchor: 'start' | 'middle' | 'end';
  ink: Ink;
  /** Outline behind the letters, so that they read on a photo. */
  halo?: { ink: Ink; width: number };
}

export interface PictureMark {
  kind: 'picture';
  x: number;
  y: number;
  width: number;
  height: number;
  photoId: string;
}

export type Palette = Readonly<Record<Ink, string>>;
