import { describe, expect, it } from 'vitest';
import { cellBars } from '../../../src/drawing/cell-bars.ts';
import { deliveredBars } from '../../../src/drawing/delivered-bars.ts';
import type { Drawing } from '../../../src/drawing/display-list.ts';
import { logOverview } from '../../../src/drawing/log-overview.ts';
import { type CanvasSurface, paintCanvas } from '../../../src/drawing/paint-canvas.ts';
import { type PdfSurface, paintPdf } from '../../../src/drawing/paint-pdf.ts';
import { svgMarkup, svgNodes } from '../../../src/drawing/paint-svg.ts';
import { BENCH, PAPER } from '../../../src/drawing/palette.ts';
import { runPlot } from '../../../src/drawing/run-plot.ts';
import { sharingBars } from '../../../src/drawing/sharing-bars.ts';
import { tripPlot } from '../../../src/drawing/trip-plot.ts';
import { RUN_END_CHOICES } from '../../../src/schema/live-tests/run.ts';
import { alt, cellInput, overviewInput, runInput, sharingInput, steadyRun, tripInput } from './plot-samples.ts';

const cells = cellInput([3.3, null, 3.26, 3.31]);
const PLOTS: [name: string, drawing: Drawing][] = [
  ['runPlot', runPlot(runInput({ runs: RUN_END_CHOICES.map((end, at) => steadyRun(end, 20, 100 - 9 * at, { end })) }))],
  ['tripPlot', tripPlot(tripInput())],
  ['cellBars', cellBars({ ...cells, cells: cells.cells.map((cell, place) => ({ ...cell, flagged: place === 2 })) })],
  ['logOverview', logOverview(overviewInput())],
  ['sharingBars', sharingBars(sharingInput([0.5, 0.3, null]))],
  [
    'deliveredBars',
    deliveredBars({
      width: 358,
      words: { alt, nothing: '' },
      rows: [
        {
          label: 'Charge',
          promised: 100,
          promisedText: '100 Ah',
          delivered: 80,
          deliveredText: '80 Ah',
          atLeast: true,
          shareText: '80 %',
        },
      ],
    }),
  ],
];

describe.each(PLOTS)('%s', (_, drawing) => {
  it('paints each of its marks as one SVG element, named, in both palettes and without a colour beyond them', () => {
    expect(drawing.marks.length).toBeGreaterThan(5);
    const tree = svgNodes(drawing);
    expect(tree.children).toHaveLength(drawing.marks.length);
    expect(tree.attrs['aria-label']).toBe(alt);
    for (const palette of [BENCH, PAPER]) {
      const markup = svgMarkup(drawing, { palette });
      expect(markup).not.toMatch(/NaN|undefined|Infinity/);
      const colours = new Set(markup.match(/#[0-9A-F]{6}\b/gi));
      for (const colour of colours) {
        expect([palette.ink, palette.muted, palette.line, palette.face, palette.ground]).toContain(colour);
      }
    }
  });

  it('paints each of its marks with one call to a PDF page, all numbers finite', () => {
    const given: unknown[] = [];
    const take = (...call: unknown[]) => {
      given.push(call);
    };
    const surface: PdfSurface = { polyline: take, path: take, box: take, ellipse: take, text: take, image: take };
    paintPdf(drawing, surface, { x: 10, y: 20, scale: 0.26 });
    expect(given).toHaveLength(drawing.marks.length);
    // JSON writes a number that is not finite as null; a style without stroke or fill, or a text without halo, is null too.
    const numbers = given.flatMap(numbersIn);
    expect(numbers.length).toBeGreaterThan(drawing.marks.length);
    expect(numbers.every(Number.isFinite)).toBe(true);
  });

  it('paints each of its marks on a canvas: so many beginnings of a path and so many texts', () => {
    const calls: string[] = [];
    const surface = new Proxy(
      {},
      {
        get:
          (_target, name) =>
          (...numbers: unknown[]) => {
            calls.push(String(name));
            expect(numbersIn(numbers).every(Number.isFinite)).toBe(true);
          },
        set: () => true,
      },
    ) as unknown as CanvasSurface;
    paintCanvas(drawing, surface, { palette: PAPER, scale: 2, drawPicture: () => calls.push('picture') });
    const texts = drawing.marks.filter((mark) => mark.kind === 'text').length;
    expect(calls.filter((name) => name === 'fillText')).toHaveLength(texts);
    expect(calls.filter((name) => name === 'beginPath')).toHaveLength(drawing.marks.length - texts);
  });
});

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}
