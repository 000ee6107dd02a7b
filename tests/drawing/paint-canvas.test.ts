import { describe, expect, it } from 'vitest';
import { type CanvasSurface, paintCanvas } from '../../src/drawing/paint-canvas.ts';
import { PAPER } from '../../src/drawing/palette.ts';
import { EVERY_MARK } from './every-mark.ts';

const METHODS = [
  'save',
  'restore',
  'scale',
  'beginPath',
  'moveTo',
  'lineTo',
  'bezierCurveTo',
  'closePath',
  'ellipse',
  'setLineDash',
  'stroke',
  'fill',
  'strokeText',
  'fillText',
] as const;

/** Writes down every call, and every property as it is set. */
function recording(): { calls: string[]; surface: CanvasSurface } {
  const calls: string[] = [];
  const methods = Object.fromEntries(
    METHODS.map((name) => [name, (...given: unknown[]) => calls.push(`${name}(${given.join(' ')})`)]),
  );
  const surface = new Proxy(methods, {
    set(_, name, value) {
      calls.push(`${String(name)}=${value}`);
      return true;
    },
  }) as unknown as CanvasSurface;
  return { calls, surface };
}

describe('paintCanvas', () => {
  it('paints line, path, ellipse, haloed text and picture in order at scale 3, and restores the state', () => {
    const { calls, surface } = recording();
    const drawPicture = (mark: { photoId: string; x: number }) => calls.push(`picture ${mark.photoId} ${mark.x}`);
    const marks = EVERY_MARK.marks.filter((mark) => !(mark.kind === 'shape' && mark.shape.form === 'box'));
    paintCanvas({ ...EVERY_MARK, marks }, surface, { palette: PAPER, scale: 3, drawPicture });
    expect(calls).toEqual([
      'save()',
      'scale(3 3)',
      'beginPath()',
      'moveTo(0 0)',
      'lineTo(10 5)',
      'lineTo(20 0)',
      'strokeStyle=#1B1E20',
      'lineWidth=2',
      'lineCap=round',
      'lineJoin=round',
      'setLineDash(3,1)',
      'stroke()',
      'beginPath()',
      'moveTo(1 2)',
      'lineTo(3 4)',
      'bezierCurveTo(5 6 7 8 9 10)',
      'closePath()',
      'fillStyle=#E69F00',
      'fill()',
      'strokeStyle=#CFC7B2',
      'lineWidth=1',
      'lineCap=butt',
      'lineJoin=miter',
      'setLineDash()',
      'stroke()',
      'beginPath()',
      `ellipse(50 25 6 3 0 0 ${2 * Math.PI})`,
      'strokeStyle=#595648',
      'lineWidth=1.5',
      'lineCap=butt',
      'lineJoin=miter',
      'setLineDash()',
      'stroke()',
      "font=600 16px 'Underlid Sans', sans-serif",
      'textAlign=center',
      'textBaseline=alphabetic',
      'strokeStyle=#FFFFFF',
      'lineWidth=4',
      'lineJoin=round',
      'setLineDash()',
      'strokeText(R < 5 mΩ 5 45)',
      'fillStyle=#000000',
      'fillText(R < 5 mΩ 5 45)',
      'picture ab 60',
      'restore()',
    ]);
  });

  it('rounds a box’s corners with cubics whose handles stand 0.5523 of the radius from the side', () => {
    const { calls, surface } = recording();
    paintCanvas({ ...EVERY_MARK, marks: [EVERY_MARK.marks[2]!] }, surface, {
      palette: PAPER,
      scale: 1,
      drawPicture: () => {},
    });
    const [first] = calls.filter((call) => call.startsWith('bezierCurveTo'));
    // Box 10 … 40 by 20 … 30, radius 4: from (36, 20) to (40, 24), handles at 4·(1 − 0.5522847) = 1.790861 from the corner.
    const numbers = first!.slice('bezierCurveTo('.length, -1).split(' ').map(Number);
    [38.209139, 20, 40, 21.790861, 40, 24].forEach((value, place) => {
      expect(numbers[place]).toBeCloseTo(value, 5);
    });
    expect(calls.filter((call) => call.startsWith('bezierCurveTo'))).toHaveLength(4);
  });
});
