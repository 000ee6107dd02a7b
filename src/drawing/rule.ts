import type { Drawing, Mark } from './display-list.ts';
import { textWidth } from './text-width.ts';

export interface RuleInput {
  /** Scores 0–100; null draws the bare scale. */
  range: { low: number; high: number } | null;
  settled: boolean;
  /** The figures above the bar or tick, already formatted: "52.1–66.4" or "58.9". */
  figures: string;
  widthPx: number;
  alt: string;
}

const FIGURES = { size: 16, weight: 600, baseline: 14 } as const;
const SCALE = { size: 13, weight: 400, baseline: 58 } as const;
const BAR = { top: 20, height: 6 };
const BASE_Y = 42;
const TICK_LENGTHS = { every25: 11, every10: 8, every5: 5 };
/** So narrow a range that its bar could not be seen is drawn this wide about its middle. Our choice. */
const NARROWEST_BAR = 3;
export const RULE_HEIGHT = 62;

/** The straight scale of the score: ticks at 5, 10 and 25, a bar from low to high above it, one tick once settled. */
export function rule(input: RuleInput): Drawing {
  const place = rulePlace(input.widthPx);
  return {
    width: input.widthPx,
    height: RULE_HEIGHT,
    alt: input.alt,
    marks: [...scaleMarks(place), ...(input.range === null ? [] : rangeMarks(input, input.range, place))],
  };
}

/** Where a score stands across a rule of this width. The ends keep room for half of their figures. */
export function rulePlace(widthPx: number): (score: number) => number {
  const margin = Math.ceil(textWidth('100', SCALE) / 2) + 1;
  return (score) => margin + (score / 100) * (widthPx - 2 * margin);
}

function scaleMarks(place: (score: number) => number): Mark[] {
  const marks: Mark[] = [
    {
      kind: 'line',
      points: [
        [place(0), BASE_Y],
        [place(100), BASE_Y],
      ],
      stroke: { ink: 'ink', width: 1.6, cap: 'round' },
    },
  ];
  for (let score = 0; score <= 100; score += 5) {
    const long = score % 25 === 0;
    const length = long ? TICK_LENGTHS.every25 : score % 10 === 0 ? TICK_LENGTHS.every10 : TICK_LENGTHS.every5;
    const x = place(score);
    marks.push({
      kind: 'line',
      points: [
        [x, BASE_Y],
        [x, BASE_Y - length],
      ],
      stroke: { ink: long ? 'ink' : 'muted', width: long ? 1.6 : 1.2 },
    });
    if (long) {
      const text = String(score);
      marks.push({
        kind: 'text',
        x,
        y: SCALE.baseline,
        text,
        size: SCALE.size,
        weight: 400,
        anchor: 'middle',
        ink: 'muted',
      });
    }
  }
  return marks;
}

function rangeMarks(input: RuleInput, range: { low: number; high: number }, place: (score: number) => number): Mark[] {
  const left = place(range.low);
  const right = place(range.high);
  const middle = (left + right) / 2;
  const width = Math.max(right - left, NARROWEST_BAR);
  const pointer: Mark = input.settled
    ? {
        kind: 'line',
        points: [
          [middle, BAR.top],
          [middle, BASE_Y],
        ],
        stroke: { ink: 'ink', width: 3 },
      }
    : {
        kind: 'shape',
        shape: { form: 'box', x: middle - width / 2, y: BAR.top, width, height: BAR.height, radius: 1 },
        fill: 'ink',
      };
  const half = textWidth(input.figures, FIGURES) / 2;
  const x = Math.min(Math.max(middle, half + 1), input.widthPx - half - 1);
  return [
    pointer,
    {
      kind: 'text',
      x,
      y: FIGURES.baseline,
      text: input.figures,
      size: FIGURES.size,
      weight: 600,
      anchor: 'middle',
      ink: 'ink',
    },
  ];
}
