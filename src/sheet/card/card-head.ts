import type { Mark } from '../../drawing/display-list.ts';
import { fitText, fittedMarks } from '../../drawing/fitted-text.ts';
import { placeMarks } from '../../drawing/place-marks.ts';
import { RULE_HEIGHT, rule } from '../../drawing/rule.ts';
import { shortened } from '../../drawing/text-shortened.ts';
import { textWidth } from '../../drawing/text-width.ts';
import type { CardModel } from './card-model.ts';
import type { Box } from './card-photo.ts';

/** Marks with the height they take. */
export interface Part {
  marks: Mark[];
  height: number;
}

const TAPE_PAD = { x: 26, y: 10 };

/** The strip of masking tape with the name, torn at both ends. */
export function tapePart(name: string, { x, y, width, height }: Box): Part {
  const fitted = fitText({
    text: name,
    width: width - 2 * TAPE_PAD.x,
    height: height - 2 * TAPE_PAD.y,
    weight: 600,
    sizes: [52, 46, 40, 34, 28, 24],
  });
  const longest = Math.max(...fitted.lines.map((line) => textWidth(line, fitted.face)));
  const right = x + longest + 2 * TAPE_PAD.x;
  const tall = fitted.height + 2 * TAPE_PAD.y;
  const at = (fromLeft: number, frac: number): [number, number] => [x + fromLeft, y + frac * tall];
  const end = (fromRight: number, frac: number): [number, number] => [right - fromRight, y + frac * tall];
  return {
    height: tall,
    marks: [
      {
        kind: 'path',
        fill: 'tape',
        steps: [
          ['M', ...at(7, 0.03)],
          ['L', ...end(6, 0)],
          ['L', ...end(0, 0.32)],
          ['L', ...end(8, 0.54)],
          ['L', ...end(2, 0.97)],
          ['L', ...at(4, 1)],
          ['L', ...at(10, 0.66)],
          ['L', ...at(0, 0.38)],
          ['Z'],
        ],
      },
      ...fittedMarks(fitted, { x: x + TAPE_PAD.x, y: y + TAPE_PAD.y, ink: 'tapeInk' }),
    ],
  };
}

const MARK_FACE = { size: 24, weight: 500 } as const;
const MARK_PAD = 12;
const MARK_HEIGHT = 40;

const ROW_GAP = 8;
/** What the sample's name may take of a row that all of them do not fit in. Our choice: enough for "sample 12". */
const SAMPLE_FRAC = 0.4;

/** "sample 1" and the framed marks, in as few rows as they fit in; the sample's name gives way. Nothing takes no room. */
export function marksPart({ sample, marks }: CardModel, { x, y, width }: Omit<Box, 'height'>): Part {
  if (sample === '' && marks.length === 0) return { marks: [], height: 0 };
  const frames = marks.map((text) => ({ text, framed: true, width: textWidth(text, MARK_FACE) + 2 * MARK_PAD }));
  const besides = width - frames.reduce((sum, frame) => sum + frame.width + MARK_PAD, MARK_PAD);
  const said = sample === '' ? '' : shortened(sample, MARK_FACE, Math.max(width * SAMPLE_FRAC, besides));
  const first = { text: said, framed: false, width: textWidth(said, MARK_FACE) + MARK_PAD };
  const placed: { one: typeof first; left: number; row: number }[] = [];
  let left = 0;
  let row = 0;
  for (const one of said === '' ? frames : [first, ...frames]) {
    if (left > 0 && left + one.width > width) {
      left = 0;
      row++;
    }
    placed.push({ one, left, row });
    left += one.width + MARK_PAD;
  }
  const drawn = placed.flatMap((at) => markAt(at.one, x + at.left, y + at.row * (MARK_HEIGHT + ROW_GAP)));
  return { marks: drawn, height: (row + 1) * (MARK_HEIGHT + ROW_GAP) - ROW_GAP };
}

function markAt(
  { text, framed, width }: { text: string; framed: boolean; width: number },
  x: number,
  y: number,
): Mark[] {
  const said = { kind: 'text', y: y + 28, text, ...MARK_FACE, anchor: 'start' } as const;
  if (!framed) return [{ ...said, x, ink: 'muted' }];
  return [
    {
      kind: 'shape',
      shape: { form: 'box', x, y: y + 1, width, height: MARK_HEIGHT - 2, radius: 5 },
      stroke: { ink: 'ink', width: 2, dash: [7, 5] },
    },
    { ...said, x: x + MARK_PAD, ink: 'ink' },
  ];
}

/** The verdict and what it means. */
export function verdictPart({ verdict }: CardModel, { x, y, width, height }: Box): Part {
  const title = fitText({
    text: verdict.title,
    width,
    height: height * 0.55,
    weight: 600,
    sizes: [66, 60, 54, 48, 42, 36],
  });
  const top = y + title.height + 8;
  const line = fitText({
    text: verdict.line,
    width,
    height: height - title.height - 8,
    weight: 400,
    sizes: [30, 28, 26, 24, 22],
  });
  return {
    marks: [...fittedMarks(title, { x, y, ink: 'ink' }), ...fittedMarks(line, { x, y: top, ink: 'muted' })],
    height: title.height + 8 + line.height,
  };
}

const RULE_SCALE = 1.75;
/** The rule's own figures are set larger above it; this much of its top stays empty without them. */
const RULE_EMPTY_TOP = 16;
export const SCORE_HEIGHT = 34 + 96 + (RULE_HEIGHT - RULE_EMPTY_TOP) * RULE_SCALE;

/** The score in large figures over the straight rule; a sentence where there is none. */
export function scorePart({ score }: CardModel, { x, y, width }: Omit<Box, 'height'>): Part {
  const label = fitText({ text: score.label, width, height: 40, weight: 500, sizes: [26, 24, 22] });
  if (score.range === null) {
    const said = fitText({ text: score.label, width, height: 60, weight: 500, sizes: [34, 30, 26] });
    return { marks: fittedMarks(said, { x, y, ink: 'ink' }), height: said.height };
  }
  const figures = fitText({ text: score.figures, width, height: 96, weight: 600, sizes: [84, 72, 60, 48] });
  const scale = rule({ range: score.range, settled: score.settled, figures: '', widthPx: width / RULE_SCALE, alt: '' });
  return {
    marks: [
      ...fittedMarks(label, { x, y, ink: 'muted' }),
      ...fittedMarks(figures, { x: x - 3, y: y + 26, ink: 'ink' }),
      ...placeMarks(scale, { x, y: y + 34 + 96 - RULE_EMPTY_TOP * RULE_SCALE, scale: RULE_SCALE }),
    ],
    height: SCORE_HEIGHT,
  };
}

/** Two lines. */
const LAST_HEIGHT = 57;

/** What has to stand on everything published, and where it was made. */
export function footPart({ disclosure, caution, madeWith }: CardModel, { x, y, width, height }: Box): Part {
  const marks: Mark[] = [];
  let top = y;
  const add = (text: string, ink: 'ink' | 'muted', most: number) => {
    const fitted = fitText({ text, width, height: most, weight: 400, sizes: [22, 20] });
    marks.push(...fittedMarks(fitted, { x, y: top, ink }));
    top += fitted.height + 6;
  };
  add(disclosure, 'ink', height - 6 - LAST_HEIGHT);
  add([caution, madeWith].join(' '), 'muted', LAST_HEIGHT);
  return { marks, height: top - 6 - y };
}
