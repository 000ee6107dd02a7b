import type { Callout } from '../schema/callout.ts';
import { coverMarksOf } from './callouts/cover.ts';
import { leaderMarksOf } from './callouts/leader.ts';
import { arrowMarksOf, outlineMarksOf, strokeMarksOf } from './callouts/line-callouts.ts';
import { textMarksOf } from './callouts/words.ts';
import type { Drawing, Mark } from './display-list.ts';

/** What has to be known of a callout to draw it. `number` is null for kinds that carry none. */
export type DrawnCallout = Pick<Callout, 'kind' | 'points' | 'text'> & { number: number | null };

export interface CalloutsInput {
  callouts: readonly DrawnCallout[];
  /** Size at which the whole photo is shown. */
  widthPx: number;
  heightPx: number;
  /** Units per pixel of a phone: 1 there. Without it lengths follow the size at which the photo is shown. */
  scale?: number;
  alt?: string;
}

/** The frame every kind of callout is drawn in. */
export interface PhotoFrame {
  widthPx: number;
  heightPx: number;
  scale: number;
}

/** Longer side of a photo across a phone 390 px wide, 3 : 4: there a leader is 2.4 px wide. */
const PHONE_LONGER_SIDE_PX = 520;

/** Covers lie lowest, then outlines, strokes and arrows, then leaders and words, so that no number is ever hidden. */
const PAINTING_ORDER: readonly Callout['kind'][] = ['cover', 'outline', 'stroke', 'arrow', 'text', 'leader'];

/** Everything drawn on a photo, in black and white only: it must read on metal and on foam, in either theme. */
export function calloutMarks(input: CalloutsInput): Drawing {
  const frame = frameOf(input);
  const marks = PAINTING_ORDER.flatMap((kind) =>
    input.callouts.filter((callout) => callout.kind === kind).flatMap((callout) => marksOf(callout, frame)),
  );
  return { width: input.widthPx, height: input.heightPx, alt: input.alt ?? '', marks };
}

/** The cover-ups alone, to be burnt into the pixels wherever the photo leaves the phone. */
export function coverMarks(input: CalloutsInput): Drawing {
  return calloutMarks({ ...input, callouts: input.callouts.filter((callout) => callout.kind === 'cover') });
}

export function frameOf({ widthPx, heightPx, scale }: CalloutsInput): PhotoFrame {
  return { widthPx, heightPx, scale: scale ?? Math.max(widthPx, heightPx) / PHONE_LONGER_SIDE_PX };
}

function marksOf(callout: DrawnCallout, frame: PhotoFrame): Mark[] {
  switch (callout.kind) {
    case 'leader':
      return leaderMarksOf(callout, frame);
    case 'arrow':
      return arrowMarksOf(callout, frame);
    case 'outline':
      return outlineMarksOf(callout, frame);
    case 'stroke':
      return strokeMarksOf(callout, frame);
    case 'text':
      return textMarksOf(callout, frame);
    case 'cover':
      return coverMarksOf(callout, frame);
  }
}
