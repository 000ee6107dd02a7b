import { h, type VNode } from 'preact';
import type { Drawing } from '../drawing/display-list.ts';
import { type SvgNode, svgNodes } from '../drawing/paint-svg.ts';

/** Shows a drawing as SVG in the colours of the theme. `widthPx` stretches it, keeping its proportions. */
export function DrawingView({ drawing, widthPx }: { drawing: Drawing; widthPx?: number }) {
  const tree = svgNodes(drawing);
  const size = widthPx === undefined ? {} : { width: widthPx, height: (widthPx * drawing.height) / drawing.width };
  return toElement({ ...tree, attrs: { ...tree.attrs, ...size } as SvgNode['attrs'] });
}

function toElement(node: SvgNode): VNode {
  return h(
    node.tag,
    node.attrs,
    ...node.children.map((child) => (typeof child === 'string' ? child : toElement(child))),
  );
}
