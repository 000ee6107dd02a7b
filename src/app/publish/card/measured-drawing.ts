import type { Drawing } from '../../../drawing/display-list.ts';
import { type TextFace, textWidth } from '../../../drawing/text-width.ts';

/**
 * The drawing with every text that turns out wider on this phone than it was planned set so much smaller: characters
 * that the typeface lacks come from a typeface of the system, whose widths no table knows.
 */
export function measuredDrawing(drawing: Drawing, measure: (text: string, face: TextFace) => number): Drawing {
  return {
    ...drawing,
    marks: drawing.marks.map((mark) => {
      if (mark.kind !== 'text') return mark;
      const planned = textWidth(mark.text, mark);
      const measured = measure(mark.text, mark);
      return measured <= planned + 0.5 ? mark : { ...mark, size: (mark.size * planned) / measured };
    }),
  };
}
