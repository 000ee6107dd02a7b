import { describe, expect, it } from 'vitest';
import { ICON_NAMES, icon } from '../../src/drawing/icons.ts';
import { svgMarkup } from '../../src/drawing/paint-svg.ts';

describe('icon', () => {
  it.each(ICON_NAMES)('draws %s in one ink inside 24 × 24, a line’s half width from the edge', (name) => {
    const drawing = icon(name);
    const numbers: number[] = [];
    JSON.stringify(drawing.marks, (key, value) => {
      if (typeof value === 'number' && !['width', 'height', 'radius', 'rx', 'ry'].includes(key)) numbers.push(value);
      return value;
    });
    expect(numbers.length).toBeGreaterThan(3);
    expect(Math.min(...numbers)).toBeGreaterThanOrEqual(0.85);
    expect(Math.max(...numbers)).toBeLessThanOrEqual(24 - 0.85);
    expect(new Set(svgMarkup(drawing).match(/var\(--[a-z-]+\)/g))).toEqual(new Set(['var(--ink)']));
  });

  it('draws each of them differently', () => {
    expect(new Set(ICON_NAMES.map((name) => JSON.stringify(icon(name).marks))).size).toBe(ICON_NAMES.length);
  });
});
