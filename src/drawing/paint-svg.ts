import type { Drawing, Ink, Mark, Palette, PathStep, ShapeMark, Stroke, TextMark } from './display-list.ts';
import { CSS_INKS, FONT_FAMILY } from './palette.ts';

/** A plain tree: `ui/` turns it into elements, `svgMarkup` into text. */
export interface SvgNode {
  tag: string;
  attrs: Readonly<Record<string, string>>;
  children: (SvgNode | string)[];
}

export interface SvgOptions {
  /** Without one, inks are CSS variables and follow the theme of the page. */
  palette?: Palette;
  /** Where a photo's pixels are; null leaves an empty frame. */
  pictureHref?: (photoId: string) => string | null;
}

/** Paints a drawing as a tree of SVG elements. An empty `alt` means that words beside it already say it. */
export function svgNodes(drawing: Drawing, options: SvgOptions = {}): SvgNode {
  const painter = { inks: options.palette ?? CSS_INKS, pictureHref: options.pictureHref ?? (() => null) };
  const name: Record<string, string> =
    drawing.alt === '' ? { 'aria-hidden': 'true' } : { role: 'img', 'aria-label': drawing.alt };
  return {
    tag: 'svg',
    attrs: {
      xmlns: 'http://www.w3.org/2000/svg',
      width: figure(drawing.width),
      height: figure(drawing.height),
      viewBox: `0 0 ${figure(drawing.width)} ${figure(drawing.height)}`,
      ...name,
    },
    children: drawing.marks.map((mark) => markNode(mark, painter)),
  };
}

/** Paints a drawing as SVG text that stands alone: for export, for annotations, for files. */
export function svgMarkup(drawing: Drawing, options: SvgOptions = {}): string {
  const tree = svgNodes(drawing, options);
  return nodeMarkup({
    ...tree,
    attrs: { ...tree.attrs, 'font-family': `'${FONT_FAMILY}', 'IBM Plex Sans', sans-serif` },
  });
}

interface Painter {
  inks: Palette;
  pictureHref: (photoId: string) => string | null;
}

function markNode(mark: Mark, painter: Painter): SvgNode {
  switch (mark.kind) {
    case 'line':
      return leaf('polyline', {
        points: mark.points.map(([x, y]) => `${figure(x)},${figure(y)}`).join(' '),
        ...look(mark, painter.inks),
      });
    case 'path':
      return leaf('path', { d: mark.steps.map(stepText).join(''), ...look(mark, painter.inks) });
    case 'shape':
      return shapeNode(mark, painter.inks);
    case 'text':
      return textNode(mark, painter.inks);
    case 'picture': {
      const box = { x: figure(mark.x), y: figure(mark.y), width: figure(mark.width), height: figure(mark.height) };
      const href = painter.pictureHref(mark.photoId);
      if (href === null)
        return leaf('rect', { ...box, fill: 'none', stroke: painter.inks.line, 'stroke-dasharray': '4 3' });
      return leaf('image', { ...box, href, preserveAspectRatio: 'none' });
    }
  }
}

function shapeNode(mark: ShapeMark, inks: Palette): SvgNode {
  const { shape } = mark;
  if (shape.form === 'ellipse') {
    const place = { cx: figure(shape.cx), cy: figure(shape.cy), rx: figure(shape.rx), ry: figure(shape.ry) };
    return leaf('ellipse', { ...place, ...look(mark, inks) });
  }
  const place = { x: figure(shape.x), y: figure(shape.y), width: figure(shape.width), height: figure(shape.height) };
  const corner: Record<string, string> = shape.radius === undefined ? {} : { rx: figure(shape.radius) };
  return leaf('rect', { ...place, ...corner, ...look(mark, inks) });
}

function textNode(mark: TextMark, inks: Palette): SvgNode {
  const halo: Record<string, string> =
    mark.halo === undefined
      ? {}
      : {
          stroke: inks[mark.halo.ink],
          'stroke-width': figure(mark.halo.width),
          'stroke-linejoin': 'round',
          'paint-order': 'stroke',
        };
  return {
    tag: 'text',
    attrs: {
      x: figure(mark.x),
      y: figure(mark.y),
      'font-size': figure(mark.size),
      'font-weight': String(mark.weight),
      'text-anchor': mark.anchor,
      fill: inks[mark.ink],
      ...halo,
    },
    children: [mark.text],
  };
}

function look(mark: { stroke?: Stroke; fill?: Ink }, inks: Palette): Record<string, string> {
  const attrs: Record<string, string> = { fill: mark.fill === undefined ? 'none' : inks[mark.fill] };
  if (mark.stroke === undefined) return attrs;
  const { ink, width, dash, cap, join } = mark.stroke;
  attrs.stroke = inks[ink];
  attrs['stroke-width'] = figure(width);
  if (dash !== undefined) attrs['stroke-dasharray'] = dash.map(figure).join(' ');
  if (cap !== undefined) attrs['stroke-linecap'] = cap;
  if (join !== undefined) attrs['stroke-linejoin'] = join;
  return attrs;
}

function leaf(tag: string, attrs: Record<string, string>): SvgNode {
  return { tag, attrs, children: [] };
}

function stepText(step: PathStep): string {
  const [letter, ...numbers] = step;
  return letter + numbers.map(figure).join(' ');
}

/** Three decimals are finer than any screen or printer can show. */
function figure(value: number): string {
  return String(Math.round(value * 1000) / 1000 + 0);
}

function nodeMarkup(node: SvgNode | string): string {
  if (typeof node === 'string') return escaped(node);
  const attrs = Object.entries(node.attrs).map(([name, value]) => ` ${name}="${escaped(value)}"`);
  const inside = node.children.map(nodeMarkup).join('');
  return inside === '' ? `<${node.tag}${attrs.join('')}/>` : `<${node.tag}${attrs.join('')}>${inside}</${node.tag}>`;
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Escapes for text and attributes alike, and drops what XML 1.0 section 2.2 does not allow in a file at all. */
function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, '')
    .replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? '');
}
