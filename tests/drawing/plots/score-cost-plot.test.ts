import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../src/drawing/display-list.ts';
import { type ScoreCostPack, scoreCostPlot } from '../../../src/drawing/score-cost-plot.ts';

const words = {
  alt: 'alt',
  nothing: 'Nothing to draw',
  score: 'Score',
  cost: 'Cost, EUR',
  without: (labels: readonly string[]) => `Not drawn: ${labels.join(', ')}.`,
  tick: (value: number, decimals: number) => value.toFixed(decimals),
};
const draw = (packs: ScoreCostPack[]): Drawing => scoreCostPlot({ width: 358, height: 320, packs, words });
const wordsOf = ({ marks }: Drawing) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
const circles = ({ marks }: Drawing) =>
  marks.flatMap((mark) => (mark.kind === 'shape' && mark.shape.form === 'ellipse' ? [mark.shape] : []));
const settled = (label: string, costPerKwh: number, score: number): ScoreCostPack => ({
  label,
  sign: 0,
  costPerKwh,
  score: { low: score, high: score },
});

describe('scoreCostPlot', () => {
  it('stands a pack of twice the cost twice as far from the axis, and a better score higher', () => {
    const drawing = draw([settled('Wren', 200, 50), settled('Tarn', 400, 100)]);
    const axis = drawing.marks.find(
      (mark) => mark.kind === 'line' && mark.points[0]?.[0] === mark.points[1]?.[0] && mark.stroke.ink === 'ink',
    );
    const left = axis?.kind === 'line' ? (axis.points[0]?.[0] ?? Number.NaN) : Number.NaN;
    const [wren, tarn] = circles(drawing);
    expect((tarn?.cx ?? 0) - left).toBeCloseTo(2 * ((wren?.cx ?? 0) - left), 9);
    expect(tarn?.cy ?? 0).toBeLessThan(wren?.cy ?? 0);
  });

  it('spans an open score of 20 to 60 by an upright bar, its sign in the middle', () => {
    const drawing = draw([{ label: 'Wren', sign: 0, costPerKwh: 200, score: { low: 20, high: 60 } }]);
    const [sign] = circles(drawing);
    const bar = drawing.marks.find(
      (mark) => mark.kind === 'line' && mark.points.every(([x]) => x === sign?.cx) && mark.stroke.width === 1.2,
    );
    const ys = bar?.kind === 'line' ? bar.points.map(([, y]) => y) : [];
    expect(((ys[0] ?? 0) + (ys[1] ?? 0)) / 2).toBeCloseTo(sign?.cy ?? Number.NaN, 9);
    expect(ys[0] ?? 0).toBeGreaterThan(ys[1] ?? 0);
  });

  it('names beneath those without a cost or a score, and draws the others alone', () => {
    const drawing = draw([
      settled('Wren', 200, 50),
      { label: 'Tarn', sign: 1, costPerKwh: null, score: { low: 50, high: 50 } },
      { label: 'Fell', sign: 2, costPerKwh: 100, score: null },
    ]);
    expect(wordsOf(drawing)).toContain('Not drawn: Tarn, Fell.');
    expect(wordsOf(drawing).filter((text) => text === 'Wren')).toHaveLength(2);
    expect(wordsOf(drawing)).not.toContain('Tarn');
  });

  it('draws an empty frame that says so where no pack has both', () => {
    expect(wordsOf(draw([{ label: 'Wren', sign: 0, costPerKwh: null, score: null }]))).toEqual(['Nothing to draw']);
  });

  it('gives eight packs eight shapes', () => {
    const drawing = draw(
      Array.from({ length: 8 }, (_, sign) => ({ ...settled(`P${sign}`, 100 + 40 * sign, 10 * sign), sign })),
    );
    const keys = drawing.marks.slice(
      drawing.marks.findLastIndex((mark) => mark.kind === 'text' && mark.text === 'Cost, EUR'),
    );
    const outlines = keys.flatMap((mark) => {
      if (mark.kind === 'shape' && mark.shape.form === 'ellipse')
        return [`circle ${mark.stroke ? 'hollow' : 'filled'}`];
      if (mark.kind !== 'path') return [];
      const points = mark.steps.flatMap((step) => (step[0] === 'Z' ? [] : [[step[1], step[2]] as const]));
      const [x = 0, y = 0] = points[0] ?? [];
      const shape = points.map(([px, py]) => `${(px - x).toFixed(1)} ${(py - y).toFixed(1)}`);
      return [`${shape.join(', ')} ${mark.stroke ? 'hollow' : 'filled'}`];
    });
    expect(new Set(outlines).size).toBe(8);
  });

  it('refuses a cost that is not finite', () => {
    expect(() => draw([settled('Wren', Number.POSITIVE_INFINITY, 50)])).toThrow('scoreCostPlot: packs: must be finite');
  });
});
