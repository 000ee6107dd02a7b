import { calloutMarks, type DrawnCallout } from '../../drawing/callouts.ts';
import type { Mark, TextMark } from '../../drawing/display-list.ts';
import { placeMarks } from '../../drawing/place-marks.ts';
import { textBox } from '../../drawing/text-box.ts';
import type { SheetPhoto } from '../model/sheet.ts';

export interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** The largest box of the photo's own shape within `box`, at its top left. */
export function containedBox({ widthPx, heightPx }: Pick<SheetPhoto, 'widthPx' | 'heightPx'>, box: Box): Box {
  const scale = Math.min(box.width / widthPx, box.height / heightPx);
  return { x: box.x, y: box.y, width: widthPx * scale, height: heightPx * scale };
}

/** Callout sizes that are tried, in units of a phone's pixels: a number 24 px on the card down to 9. Our choice. */
const CALLOUT_SCALES = [1.6, 1.5, 1.4, 1.3, 1.1, 0.9, 0.75, 0.6];
const MOST_WORDS_SCALE = 1.15;
/** Half a ring with its white edge, and a little ground, at scale 1. */
const RING_ROOM = 17;

/** A photo in its box, with its callouts drawn as large as they can stand without one lying on another. */
export function photoMarks(photo: SheetPhoto, box: Box): Mark[] {
  const { x, y, width, height } = box;
  return [
    { kind: 'picture', ...box, photoId: photo.photoId },
    ...placeMarks({ marks: calloutsFitting(photo, box) }, { x, y }),
    { kind: 'shape', shape: { form: 'box', x, y, width, height }, stroke: { ink: 'line', width: 2 } },
  ];
}

function calloutsFitting(photo: SheetPhoto, box: Box): Mark[] {
  // Cover-ups are in the pixels by then.
  const callouts = photo.callouts.filter(({ kind }) => kind !== 'cover');
  const wordless = callouts.filter(({ kind }) => kind !== 'text');
  for (const shown of [callouts, wordless]) {
    for (const scale of CALLOUT_SCALES) {
      const marks = calloutsAt(shown, box, scale);
      if (marks.every(isFree(box))) return marks;
    }
  }
  return calloutsAt(wordless, box, Math.min(...CALLOUT_SCALES)).filter(isFree(box));
}

/** Words on a photo hide more of it than a ring does, so they stay smaller; rings lie uppermost. */
function calloutsAt(callouts: readonly DrawnCallout[], box: Box, scale: number): Mark[] {
  const of = (...kinds: DrawnCallout['kind'][]) => callouts.filter(({ kind }) => kinds.includes(kind));
  return [
    ...drawnAt(of('outline', 'stroke', 'arrow'), box, Math.min(scale, MOST_WORDS_SCALE)),
    ...drawnAt(of('text'), box, Math.min(scale, MOST_WORDS_SCALE)),
    ...drawnAt(of('leader'), box, scale),
  ];
}

function drawnAt(callouts: readonly DrawnCallout[], { width, height }: Box, scale: number): Mark[] {
  const inside = callouts.map((callout) =>
    callout.kind === 'leader' ? ringInside(callout, { width, height, scale }) : callout,
  );
  return calloutMarks({ callouts: inside, widthPx: width, heightPx: height, scale }).marks;
}

/** On the card a ring is larger against its photo than on the phone: one near the edge is moved in. */
function ringInside(callout: DrawnCallout, { width, height, scale }: { width: number; height: number; scale: number }) {
  const [target, ring] = callout.points;
  if (target === undefined || ring === undefined) return callout;
  const within = (frac: number, length: number) => {
    const room = Math.min(0.5, (RING_ROOM * scale) / length);
    return Math.max(room, Math.min(1 - room, frac));
  };
  return { ...callout, points: [target, [within(ring[0], width), within(ring[1], height)] as [number, number]] };
}

/** Whether a text lies inside the photo and on no other one before it. */
function isFree({ width, height }: Box): (mark: Mark, place: number, all: Mark[]) => boolean {
  return (mark, place, all) => {
    if (mark.kind !== 'text') return true;
    const own = textBox(mark);
    const inside = own.x >= 0 && own.y >= 0 && own.x + own.width <= width && own.y + own.height <= height;
    const earlier = all.slice(0, place).filter((one): one is TextMark => one.kind === 'text');
    return inside && !earlier.some((one) => overlap(own, textBox(one)));
  };
}

function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}
