import type { TextMark } from '../display-list.ts';
import { textWidth } from '../text-width.ts';

export interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/** Keeps words apart: what is taken stays inside the bounds and off everything taken before. */
export interface LabelRoom {
  fits: (box: Box) => boolean;
  /** The mark if its box fits, else null; once taken its place is gone. */
  take: (mark: TextMark) => TextMark | null;
  /** Takes a place that is not a word's. */
  keepOff: (box: Box) => void;
}

/** Above and below the baseline, of the size: accents on capitals, descenders of the face. */
const ASCENT_FRAC = 0.78;
const DESCENT_FRAC = 0.22;
/** Least distance between two words, in units. */
const APART = 1;

export function labelRoom(bounds: Box): LabelRoom {
  const taken: Box[] = [];
  const fits = (box: Box): boolean => inside(box, bounds) && taken.every((other) => !overlap(box, other, APART));
  return {
    fits,
    take(mark) {
      const box = textBox(mark);
      if (!fits(box)) return null;
      taken.push(box);
      return mark;
    },
    keepOff(box) {
      taken.push(box);
    },
  };
}

/** The box a line of words stands in. */
export function textBox(mark: TextMark): Box {
  const width = textWidth(mark.text, mark);
  const left = mark.anchor === 'start' ? mark.x : mark.anchor === 'middle' ? mark.x - width / 2 : mark.x - width;
  return {
    left,
    right: left + width,
    top: mark.y - ASCENT_FRAC * mark.size,
    bottom: mark.y + DESCENT_FRAC * mark.size,
  };
}

/** Moved sideways, if need be, so that it stands between the two sides. */
export function clampedAcross(mark: TextMark, left: number, right: number): TextMark {
  const box = textBox(mark);
  const shift = box.left < left ? left - box.left : Math.min(0, right - box.right);
  return shift === 0 ? mark : { ...mark, x: mark.x + shift };
}

/** Noise of sums: a box that touches its bounds is inside. */
const NOISE = 1e-6;

export function inside(box: Box, bounds: Box): boolean {
  return (
    box.left >= bounds.left - NOISE &&
    box.right <= bounds.right + NOISE &&
    box.top >= bounds.top - NOISE &&
    box.bottom <= bounds.bottom + NOISE
  );
}

export function overlap(one: Box, other: Box, apart = 0): boolean {
  return (
    one.left < other.right + apart - NOISE &&
    other.left < one.right + apart - NOISE &&
    one.top < other.bottom + apart - NOISE &&
    other.top < one.bottom + apart - NOISE
  );
}
