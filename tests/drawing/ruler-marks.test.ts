import { describe, expect, it } from 'vitest';
import { type DrawnRuler, rulerMarks } from '../../src/drawing/ruler-marks.ts';
import { textWidth } from '../../src/drawing/text-width.ts';
import type { ImagePoint } from '../../src/schema/callout.ts';

const CARD: ImagePoint[] = [
  [0.3, 0.3],
  [0.7, 0.3],
  [0.7, 0.6],
  [0.3, 0.6],
];
const draw = (change: Partial<DrawnRuler>) =>
  rulerMarks({
    rulers: [{ corners: CARD, ends: [], cardText: '85.6 mm', text: '', ...change }],
    widthPx: 400,
    heightPx: 300,
    scale: 1,
  });
const words = (change: Partial<DrawnRuler>) => draw(change).marks.filter((mark) => mark.kind === 'text');

describe('rulerMarks', () => {
  it('closes the card at its fourth corner and names its long side outside it', () => {
    const three = draw({ corners: CARD.slice(0, 3) }).marks;
    expect(three.every((mark) => mark.kind === 'line' && mark.points.length === 3)).toBe(true);
    const [outline, , label] = draw({}).marks;
    expect(outline?.kind === 'line' && outline.points.at(-1)).toEqual([120, 90]);
    expect(label).toMatchObject({ kind: 'text', text: '85.6 mm', x: 200, anchor: 'middle' });
    expect(label?.kind === 'text' && label.y).toBeLessThan(90);
  });

  it.each([
    ['level', [0.4, 0.7], [0.6, 0.7]],
    ['upright', [0.8, 0.2], [0.8, 0.5]],
    ['slanting', [0.2, 0.65], [0.5, 0.9]],
    ['upright at the very edge', [0.99, 0.2], [0.99, 0.5]],
  ] as [string, ImagePoint, ImagePoint][])('keeps the words of a %s distance inside the photo', (_, from, to) => {
    const text = '8.01 mm ± 0.36 mm';
    const mark = words({ ends: [from, to], text }).find((one) => one.text === text);
    const half = textWidth(text, { size: 16, weight: 600 }) / 2;
    expect(mark?.x).toBeGreaterThanOrEqual(half);
    expect(mark?.x).toBeLessThanOrEqual(400 - half);
  });

  it('puts the words on the side away from the card', () => {
    expect(
      words({
        ends: [
          [0.4, 0.7],
          [0.6, 0.7],
        ],
        text: '1',
      }).at(-1)?.y,
    ).toBeGreaterThan(210);
    expect(
      words({
        ends: [
          [0.4, 0.2],
          [0.6, 0.2],
        ],
        text: '1',
      }).at(-1)?.y,
    ).toBeLessThan(60);
    expect(
      words({
        ends: [
          [0.8, 0.3],
          [0.8, 0.5],
        ],
        text: '1',
      }).at(-1)?.x,
    ).toBeGreaterThan(320);
  });

  it('draws nothing of a distance without length, and is black and white only', () => {
    expect(
      draw({
        ends: [
          [0.5, 0.5],
          [0.5, 0.5],
        ],
        text: '0',
      }),
    ).toEqual(draw({}));
    const inks = JSON.stringify(
      draw({
        ends: [
          [0.4, 0.7],
          [0.6, 0.7],
        ],
        text: '1',
      }),
    ).match(/"ink":"(\w+)"/g);
    expect([...new Set(inks)].sort()).toEqual(['"ink":"black"', '"ink":"white"']);
  });
});
