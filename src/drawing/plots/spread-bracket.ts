import type { Mark, TextMark } from '../display-list.ts';
import { shortened } from '../text-shortened.ts';
import type { TextFace } from '../text-width.ts';
import { clampedAcross, textBox } from './label-room.ts';
import { FIGURE, NAME } from './plot-look.ts';

export interface SpreadBracketInput {
  /** Ends of the bracket, from left to right. */
  lowX: number;
  highX: number;
  width: number;
  lowText: string;
  highText: string;
  spreadText: string;
}

/** From the top of the drawing to the lower end of the words. */
export const BRACKET_HEIGHT = 44;
const BRACKET_Y = 21;
const LEG = 5;
const WORDS_BASELINE = 39;
const APART = 8;

/** A bracket over the spread with its figure above; lowest and highest named under its ends, never over each other. */
export function spreadBracket(input: SpreadBracketInput): Mark[] {
  const { lowX, highX, width } = input;
  const half = (width - APART) / 2;
  const spread = wordAt((lowX + highX) / 2, 14, { text: shortened(input.spreadText, NAME, width), face: NAME });
  const low = clampedAcross(
    wordAt(lowX, WORDS_BASELINE, { text: shortened(input.lowText, FIGURE, half), face: FIGURE }),
    0,
    width,
  );
  const high = clampedAcross(
    wordAt(highX, WORDS_BASELINE, { text: shortened(input.highText, FIGURE, half), face: FIGURE }),
    0,
    width,
  );
  const words = [clampedAcross(spread, 0, width), ...apart(low, high, width)];
  return [
    {
      kind: 'line',
      points: [
        [lowX, BRACKET_Y + LEG],
        [lowX, BRACKET_Y],
        [highX, BRACKET_Y],
        [highX, BRACKET_Y + LEG],
      ],
      stroke: { ink: 'ink', width: 1.2 },
    },
    ...words.filter((word) => word.text !== ''),
  ];
}

/** Moves two words on one line off each other, as little as the sides allow. */
function apart(left: TextMark, right: TextMark, width: number): [TextMark, TextMark] {
  const lacking = textBox(left).right + APART - textBox(right).left;
  if (lacking <= 0 || left.text === '' || right.text === '') return [left, right];
  const moved = clampedAcross({ ...left, x: left.x - lacking / 2 }, 0, width);
  const still = textBox(moved).right + APART - textBox(right).left;
  const other = clampedAcross({ ...right, x: right.x + Math.max(0, still) }, 0, width);
  const rest = textBox(moved).right + APART - textBox(other).left;
  return [{ ...moved, x: moved.x - Math.max(0, rest) }, other];
}

function wordAt(x: number, y: number, { text, face }: { text: string; face: TextFace }): TextMark {
  return { kind: 'text', x, y, text, ...face, anchor: 'middle', ink: 'ink' };
}
