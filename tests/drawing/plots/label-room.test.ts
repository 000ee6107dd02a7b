import { describe, expect, it } from 'vitest';
import type { TextMark } from '../../../src/drawing/display-list.ts';
import { clampedAcross, labelRoom, textBox } from '../../../src/drawing/plots/label-room.ts';

/** Four figures at size 10 are 24 units wide: 0.6 of the size each. */
const word = (x: number, y: number): TextMark => ({
  kind: 'text',
  x,
  y,
  text: '2048',
  size: 10,
  weight: 400,
  anchor: 'start',
  ink: 'ink',
});

describe('labelRoom', () => {
  it('takes a word once: a second one must stand 1 unit off', () => {
    const room = labelRoom({ left: 0, top: 0, right: 100, bottom: 40 });
    expect(room.take(word(10, 20))).not.toBeNull();
    expect(room.take(word(10, 20))).toBeNull();
    expect(room.fits(textBox(word(34.5, 20)))).toBe(false);
    expect(room.fits(textBox(word(35, 20)))).toBe(true);
    expect(room.fits(textBox(word(10, 31)))).toBe(true);
  });

  it('refuses a word that reaches over the side, and keeps off a place that is not a word’s', () => {
    const room = labelRoom({ left: 0, top: 0, right: 100, bottom: 40 });
    expect(room.fits(textBox(word(77, 20)))).toBe(false);
    expect(room.fits(textBox(word(76, 20)))).toBe(true);
    room.keepOff({ left: 90, top: 0, right: 100, bottom: 40 });
    expect(room.fits(textBox(word(76, 20)))).toBe(false);
  });
});

describe('clampedAcross', () => {
  it('moves a word of 24 units that begins at 90 back to 76 in a drawing of 100', () => {
    expect(clampedAcross(word(90, 20), 0, 100).x).toBeCloseTo(76, 9);
    expect(clampedAcross({ ...word(2, 20), anchor: 'middle' }, 0, 100).x).toBeCloseTo(12, 9);
  });
});

describe('textBox', () => {
  it('reaches from 24 units before the end of a word that ends at 50', () => {
    expect(textBox({ ...word(50, 20), anchor: 'end' })).toMatchObject({ left: 26, right: 50 });
  });
});
