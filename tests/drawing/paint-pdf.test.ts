import { describe, expect, it } from 'vitest';
import { type PdfSurface, paintPdf } from '../../src/drawing/paint-pdf.ts';
import { BENCH } from '../../src/drawing/palette.ts';
import { EVERY_MARK } from './every-mark.ts';

function recording(): { calls: unknown[][]; surface: PdfSurface } {
  const calls: unknown[][] = [];
  const take =
    (name: string) =>
    (...given: unknown[]) => {
      calls.push([name, ...given]);
    };
  return {
    calls,
    surface: {
      polyline: take('polyline'),
      path: take('path'),
      box: take('box'),
      ellipse: take('ellipse'),
      text: take('text'),
      image: take('image'),
    },
  };
}

describe('paintPdf', () => {
  it('paints all six marks at (100, 200), twice as large, in the inks of paper', () => {
    const { calls, surface } = recording();
    paintPdf(EVERY_MARK, surface, { x: 100, y: 200, scale: 2 });
    // Worked by hand: x' = 100 + 2x, y' = 200 + 2y, every length doubled; colours from look/LOOK.md.
    expect(calls).toEqual([
      [
        'polyline',
        [
          [100, 200],
          [120, 210],
          [140, 200],
        ],
        { colour: '#1B1E20', width: 4, dash: [6, 2], cap: 'round', join: 'round' },
      ],
      [
        'path',
        [['M', 102, 204], ['L', 106, 208], ['C', 110, 212, 114, 216, 118, 220], ['Z']],
        { stroke: { colour: '#CFC7B2', width: 2, dash: [], cap: 'butt', join: 'miter' }, fill: '#E69F00' },
      ],
      ['box', { x: 120, y: 240, width: 60, height: 20, radius: 8 }, { stroke: null, fill: '#FFFDF6' }],
      [
        'ellipse',
        { cx: 200, cy: 250, rx: 12, ry: 6 },
        { stroke: { colour: '#595648', width: 3, dash: [], cap: 'butt', join: 'miter' }, fill: null },
      ],
      [
        'text',
        {
          x: 110,
          y: 290,
          text: 'R < 5 mΩ',
          size: 32,
          weight: 600,
          anchor: 'middle',
          colour: '#000000',
          halo: { colour: '#FFFFFF', width: 8 },
        },
      ],
      ['image', 'ab', { x: 220, y: 200, width: 80, height: 60 }],
    ]);
  });

  it('takes another palette: ink is #F3EFE4 on the bench', () => {
    const { calls, surface } = recording();
    paintPdf({ ...EVERY_MARK, marks: EVERY_MARK.marks.slice(0, 1) }, surface, { x: 0, y: 0, scale: 1, palette: BENCH });
    expect(calls[0]![2]).toMatchObject({ colour: '#F3EFE4' });
  });

  it('leaves the drawing as it was', () => {
    const before = JSON.stringify(EVERY_MARK);
    paintPdf(EVERY_MARK, recording().surface, { x: 3, y: 4, scale: 5 });
    expect(JSON.stringify(EVERY_MARK)).toBe(before);
  });
});
