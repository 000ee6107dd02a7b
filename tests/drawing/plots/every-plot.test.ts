import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inside, overlap, textBox } from '../../../src/drawing/plots/label-room.ts';
import { ARBITRARY_PLOTS } from './arbitrary-plots.ts';
import { reachOf, textsOf } from './read-drawing.ts';

/** Smallest letters on a phone (LOOK.md asks for 13 px beside text; inside plots 11 units). */
const SMALLEST = 11;
const ALLOWED_INKS = ['ink', 'muted', 'line', 'face', 'ground'];

describe.each(ARBITRARY_PLOTS)('%s, for 100 generated inputs', (_, drawings) => {
  it('keeps every word inside the drawing, at 11 units or more, and no word over another', () => {
    fc.assert(
      fc.property(drawings, (drawing) => {
        const box = { left: 0, top: 0, right: drawing.width, bottom: drawing.height };
        const words = textsOf(drawing);
        for (const [place, word] of words.entries()) {
          expect(word.size).toBeGreaterThanOrEqual(SMALLEST);
          expect(inside(textBox(word), box), `"${word.text}" inside`).toBe(true);
          for (const other of words.slice(place + 1)) {
            expect(overlap(textBox(word), textBox(other)), `"${word.text}" over "${other.text}"`).toBe(false);
          }
        }
      }),
      { numRuns: 100 },
    );
  });

  it('keeps every mark inside the drawing, within 1 unit of its edge, and every number finite', () => {
    fc.assert(
      fc.property(drawings, (drawing) => {
        const box = { left: -1, top: -1, right: drawing.width + 1, bottom: drawing.height + 1 };
        for (const mark of drawing.marks) {
          const reach = reachOf(mark);
          expect(Object.values(reach).every(Number.isFinite)).toBe(true);
          expect(inside(reach, box), JSON.stringify(mark)).toBe(true);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('uses the inks of paper alone: no grade’s colour, and tape is for names of packs', () => {
    fc.assert(
      fc.property(drawings, ({ marks }) => {
        for (const mark of marks) {
          const inks = mark.kind === 'text' ? [mark.ink] : mark.kind === 'picture' ? [] : [mark.stroke?.ink];
          const fill = mark.kind === 'path' || mark.kind === 'shape' ? [mark.fill] : [];
          for (const ink of [...inks, ...fill]) if (ink !== undefined) expect(ALLOWED_INKS).toContain(ink);
        }
      }),
      { numRuns: 30 },
    );
  });
});
