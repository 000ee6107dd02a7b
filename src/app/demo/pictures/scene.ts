import type { Drawing, Mark } from '../../../drawing/display-list.ts';
import { textWidth } from '../../../drawing/text-width.ts';
import { demoWords } from '../../../text/demo.ts';
import { box, FINE, HEIGHT, line, print, WIDTH } from './marks.ts';

const CORNER_SIZE = 30;

/** A picture on the bench top, marked in its corner as an invented drawing. */
export function scene(alt: string, marks: readonly Mark[]): Drawing {
  return { width: WIDTH, height: HEIGHT, alt, marks: [...benchTop(), ...marks, ...cornerMark()] };
}

/** Planks: a few joints across the picture. */
function benchTop(): Mark[] {
  const joint = (y: number) => line([0, y, WIDTH, y], { ink: 'black', width: 3 });
  return [box([0, 0, WIDTH, HEIGHT], { fill: 'ground' }), ...[170, 560, 905].map(joint)];
}

function cornerMark(): Mark[] {
  const text = demoWords.corner;
  const width = textWidth(text, { size: CORNER_SIZE, weight: 500 }) + 40;
  const [x, y] = [WIDTH - width - 20, HEIGHT - 70];
  return [
    box([x, y, width, 50], { fill: 'white', stroke: { ...FINE, dash: [10, 7] } }, 4),
    print([x + width / 2, y + 35], text, { size: CORNER_SIZE }),
  ];
}
