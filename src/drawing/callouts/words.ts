import type { DrawnCallout, PhotoFrame } from '../callouts.ts';
import type { Mark } from '../display-list.ts';
import { textLines } from '../text-lines.ts';
import { textWidth } from '../text-width.ts';
import { shownPoints } from './shown-points.ts';

const FACE = { size: 16, weight: 600 } as const;
const LINE_HEIGHT = 1.3;
const WIDEST_FRAC = 0.6;
const HALO_WIDTH = 4;

/** Words on the photo, wrapped at 0.6 of its width and pushed back inside where they would run off it. */
export function textMarksOf(callout: DrawnCallout, frame: PhotoFrame): Mark[] {
  const [start] = shownPoints(callout, frame);
  if (start === undefined) return [];
  const face = { ...FACE, size: FACE.size * frame.scale };
  const margin = HALO_WIDTH * frame.scale;
  const lines = textLines(callout.text ?? '', face, frame.widthPx * WIDEST_FRAC);
  const width = Math.max(0, ...lines.map((line) => textWidth(line, face)));
  const height = (lines.length - 1) * LINE_HEIGHT * face.size;
  const x = Math.max(margin, Math.min(start[0], frame.widthPx - margin - width));
  const top = Math.max(margin + face.size, Math.min(start[1], frame.heightPx - margin - height));
  return lines.map((text, place) => ({
    kind: 'text',
    x,
    y: top + place * LINE_HEIGHT * face.size,
    text,
    ...face,
    anchor: 'start',
    ink: 'black',
    halo: { ink: 'white', width: HALO_WIDTH * frame.scale },
  }));
}
