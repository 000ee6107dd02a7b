import type { jsPDF } from 'jspdf';
import type { Drawing } from '../../drawing/display-list.ts';
import { type PdfSurface, paintPdf } from '../../drawing/paint-pdf.ts';
import { PAPER } from '../../drawing/palette.ts';
import { documentSurface } from './document-surface.ts';
import type { TextStyle } from './text-style.ts';
import type { Typeface } from './typeface.ts';

/** The page being painted: our drawings and our lines of text on it. Texts are printable already. */
export interface Page {
  surface: PdfSurface;
  /** What was found of the photos that the chunk at hand needs. */
  pictures: Pictures;
  line(text: string, at: LinePlace): void;
  drawing(drawing: Drawing, at: { x: number; y: number; scale: number }): void;
  rule(at: { x: number; y: number; width: number; thickness: number; ink: 'ink' | 'line' | 'muted' }): void;
}

export type Pictures = ReadonlyMap<string, Uint8Array | 'missing' | 'unreadable'>;

export interface LinePlace {
  x: number;
  /** Top of the line; the baseline lies below it by what the style asks. */
  top: number;
  style: TextStyle;
  anchor?: 'start' | 'middle' | 'end';
}

export function pageOf(doc: jsPDF, typeface: Typeface, pictures: Pictures): Page {
  const surface = documentSurface(doc, typeface, pictures);
  return {
    surface,
    pictures,
    line(text, { x, top, style, anchor = 'start' }) {
      if (text === '') return;
      surface.text({
        x,
        y: baselineOf(top, style),
        text,
        size: style.size,
        weight: style.weight,
        anchor,
        colour: PAPER[style.ink],
        halo: null,
      });
    },
    drawing(drawing, { x, y, scale }) {
      paintPdf(drawing, surface, { x, y, scale, palette: PAPER });
    },
    rule({ x, y, width, thickness, ink }) {
      surface.polyline(
        [
          [x, y],
          [x + width, y],
        ],
        { colour: PAPER[ink], width: thickness, dash: [], cap: 'butt', join: 'miter' },
      );
    },
  };
}

/** Capitals of the typeface are 0.698 of its size high (OS/2 sCapHeight): they are set in the middle of the line. */
export function baselineOf(top: number, { size, leading }: Pick<TextStyle, 'size' | 'leading'>): number {
  return top + (leading + 0.698 * size) / 2;
}
