import { describe, expect, it } from 'vitest';
import { BENCH, CSS_INKS, INKS, PAPER } from '../../src/drawing/palette.ts';

/** Contrast ratio of WCAG 2.2 (relative luminance, sRGB). */
function contrast(one: string, other: string): number {
  const luminance = (hex: string) => {
    const [r, g, b] = [1, 3, 5].map((at) => {
      const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
  };
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light! + 0.05) / (dark! + 0.05);
}

describe('palettes', () => {
  it('know black on white as 21 : 1', () => {
    expect(contrast('#000000', '#FFFFFF')).toBeCloseTo(21, 9);
  });

  it.each([
    ['bench', BENCH],
    ['paper', PAPER],
  ])('keep words at 7 : 1 or more on ground and face, muted ones at 6 : 1: %s', (_, palette) => {
    for (const under of [palette.ground, palette.face]) {
      expect(contrast(palette.ink, under)).toBeGreaterThanOrEqual(7);
      expect(contrast(palette.muted, under)).toBeGreaterThanOrEqual(6);
    }
    expect(contrast(palette.tapeInk, palette.tape)).toBeGreaterThanOrEqual(7);
  });

  it('share the four Okabe–Ito grade colours', () => {
    // Okabe & Ito (2008): bluish green, sky blue, orange, vermillion.
    for (const { sound, passable, weak, failed } of [BENCH, PAPER]) {
      expect([sound, passable, weak, failed]).toEqual(['#009E73', '#56B4E9', '#E69F00', '#D55E00']);
    }
  });

  it('name 13 inks, each with a CSS variable but white and black', () => {
    expect(INKS).toHaveLength(13);
    expect(INKS.filter((ink) => !CSS_INKS[ink].startsWith('var(--'))).toEqual(['white', 'black']);
  });
});
