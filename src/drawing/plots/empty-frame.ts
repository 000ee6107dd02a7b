import type { Drawing } from '../display-list.ts';
import { textLines } from '../text-lines.ts';
import { AXIS_STROKE, SMALL } from './plot-look.ts';

export interface EmptyFrameInput {
  width: number;
  height: number;
  alt: string;
  nothing: string;
}

/** A dashed frame that says there is nothing to draw yet. */
export function emptyFrame({ width, height, alt, nothing }: EmptyFrameInput): Drawing {
  const lines = textLines(nothing, SMALL, width - 24);
  const lineHeight = SMALL.size * 1.35;
  const firstBaseline = height / 2 - ((lines.length - 1) * lineHeight) / 2 + SMALL.size * 0.35;
  return {
    width,
    height,
    alt,
    marks: [
      {
        kind: 'shape',
        shape: { form: 'box', x: 0.5, y: 0.5, width: width - 1, height: height - 1, radius: 4 },
        stroke: { ...AXIS_STROKE, ink: 'line', dash: [4, 3] },
      },
      ...lines.map((text, place) => ({
        kind: 'text' as const,
        x: width / 2,
        y: firstBaseline + place * lineHeight,
        text,
        ...SMALL,
        anchor: 'middle' as const,
        ink: 'muted' as const,
      })),
    ],
  };
}
