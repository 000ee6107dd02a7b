import type { Drawing, Mark } from '../../drawing/display-list.ts';
import { type FittedText, fitText, fittedMarks } from '../../drawing/fitted-text.ts';
import { placeMarks } from '../../drawing/place-marks.ts';
import { cardWords as say } from '../../text/card.ts';
import { findingPart } from './card-finding.ts';
import { footPart, marksPart, type Part, SCORE_HEIGHT, scorePart, tapePart, verdictPart } from './card-head.ts';
import type { CardModel } from './card-model.ts';
import type { Box } from './card-photo.ts';

export type CardShape = 'landscape' | 'portrait';

export const CARD_SIZES_PX: Readonly<Record<CardShape, { widthPx: number; heightPx: number }>> = {
  landscape: { widthPx: 1920, heightPx: 1080 },
  portrait: { widthPx: 1080, heightPx: 1350 },
};

/** Free at every edge, so that nothing lies under a player's controls or a rounded corner. */
const MARGIN = 72;
/** How far an opaque strip reaches beyond what stands on it. */
const STRIP = { x: 24, y: 15 };
const GAP_BETWEEN = 2 * STRIP.y + 12;

export interface CardDrawing {
  shape: CardShape;
  /** Opaque: the ground is painted. Else only strips under the words are, and the rest is see-through. */
  opaque: boolean;
}

/**
 * The picture card as marks. No text leaves its box whatever it says: sizes step down to 20 px of 1080, then words are
 * left out at the end.
 *
 * Check   tests/sheet/card/card-drawing.test.ts
 */
export function cardDrawing(model: CardModel, { shape, opaque }: CardDrawing): Drawing {
  const { widthPx: width, heightPx: height } = CARD_SIZES_PX[shape];
  const parts = shape === 'landscape' ? landscapeParts(model) : portraitParts(model);
  const ground: Mark[] = opaque
    ? [{ kind: 'shape', shape: { form: 'box', x: 0, y: 0, width, height }, fill: 'ground' }]
    : [];
  return {
    width,
    height,
    alt: say.alt(model.name, model.verdict.title, [model.score.label, model.score.figures].join(' ').trim()),
    marks: [
      ...ground,
      ...parts.flatMap(({ box, marks }) => [
        ...(opaque ? (box.y === MARGIN ? [] : [lineAbove(box)]) : [strip(box)]),
        ...marks,
      ]),
    ],
  };
}

interface Placed {
  /** What the part takes. */
  box: Box;
  marks: Mark[];
}

const LEFT_COLUMN = 600;
const COLUMN_GAP = 2 * STRIP.x + 40;

function landscapeParts(model: CardModel): Placed[] {
  const { widthPx, heightPx } = CARD_SIZES_PX.landscape;
  const foot = footPart(model, { x: MARGIN, y: 0, width: LEFT_COLUMN, height: 190 });
  // What the score leaves is the verdict's, however long the name is.
  const scoreTop = heightPx - MARGIN - foot.height - GAP_BETWEEN - SCORE_HEIGHT;
  const head = stacked({ x: MARGIN, y: MARGIN, width: LEFT_COLUMN }, [
    { gap: 0, make: (at) => tapePart(model.name, { ...at, height: 116 }) },
    { gap: 18, make: (at) => marksPart(model, at) },
    { gap: 34, make: (at) => verdictPart(model, { ...at, height: Math.min(290, scoreTop - 30 - at.y) }) },
    { gap: 30, make: (at) => scorePart(model, at) },
  ]);
  const left = MARGIN + LEFT_COLUMN + COLUMN_GAP;
  const room: Box = { x: left, y: MARGIN, width: widthPx - MARGIN - left, height: heightPx - 2 * MARGIN };
  return [
    head,
    atBottom(foot, { x: MARGIN, width: LEFT_COLUMN, bottom: heightPx - MARGIN }),
    ...findingParts(model, room),
  ];
}

function portraitParts(model: CardModel): Placed[] {
  const { widthPx, heightPx } = CARD_SIZES_PX.portrait;
  const width = widthPx - 2 * MARGIN;
  const scoreWidth = 390;
  const scoreX = MARGIN + width - scoreWidth;
  const head = stacked({ x: MARGIN, y: MARGIN, width }, [
    { gap: 0, make: (at) => tapePart(model.name, { ...at, height: 112 }) },
    { gap: 16, make: (at) => marksPart(model, at) },
    {
      gap: 28,
      make: (at) => {
        const verdict = verdictPart(model, { ...at, width: width - scoreWidth - 40, height: 226 });
        const score = scorePart(model, { ...at, x: scoreX, width: scoreWidth });
        return { marks: [...verdict.marks, ...score.marks], height: Math.max(verdict.height, score.height) };
      },
    },
  ]);
  const foot = footPart(model, { x: MARGIN, y: 0, width, height: 130 });
  const bottom = atBottom(foot, { x: MARGIN, width, bottom: heightPx - MARGIN + 16 });
  const top = head.box.y + head.box.height + GAP_BETWEEN;
  const room: Box = { x: MARGIN, y: top, width, height: bottom.box.y - GAP_BETWEEN - top };
  return [head, ...findingParts(model, room), bottom];
}

interface Step {
  gap: number;
  make: (at: Omit<Box, 'height'>) => Part;
}

/** Parts below one another, each with its gap above; one that takes no room takes no gap either. */
function stacked(at: Omit<Box, 'height'>, steps: readonly Step[]): Placed {
  let y = at.y;
  const marks: Mark[] = [];
  for (const { gap, make } of steps) {
    const part = make({ ...at, y: y + gap });
    if (part.height === 0) continue;
    marks.push(...part.marks);
    y += gap + part.height;
  }
  return { box: { ...at, height: y - at.y }, marks };
}

function atBottom(part: Part, { x, width, bottom }: { x: number; width: number; bottom: number }): Placed {
  const y = bottom - part.height;
  return { box: { x, y, width, height: part.height }, marks: placeMarks(part, { x: 0, y }) };
}

/** The findings shown, under how many there are: a card of three must not look like one of a pack with three. */
function findingParts({ findings, findingCount }: CardModel, room: Box): Placed[] {
  if (findings.length === 0) {
    const fitted = fitText({
      text: findingCount === 0 ? say.noFindings : say.noneShown(findingCount),
      width: room.width,
      height: room.height,
      weight: 500,
      sizes: [40, 34],
    });
    return [
      { box: { ...room, height: fitted.height }, marks: fittedMarks(fitted, { x: room.x, y: room.y, ink: 'ink' }) },
    ];
  }
  const count = fitText({ ...COUNT, text: say.shown(findings.length, findingCount), width: room.width });
  const countHeight = count.height + COUNT_GAP;
  const gaps = GAP_BETWEEN * (findings.length - 1) + countHeight;
  // One or two findings stand no taller than half the room, so that words and photo stay together.
  const height = Math.min((room.height - gaps) / findings.length, (room.height - GAP_BETWEEN) / 2);
  const boxes = findings.map((_, place) => ({
    ...room,
    y: room.y + countHeight + place * (height + GAP_BETWEEN),
    height,
  }));
  const all = (mostWordsSize?: number) =>
    findings.flatMap((finding, place) => {
      const box = boxes[place];
      return box === undefined ? [] : [{ box, part: findingPart(finding, box, mostWordsSize) }];
    });
  // One voice: what the longest needs, all take.
  const least = Math.min(...all().map(({ part }) => part.wordsSize));
  return all(least).map(({ box, part }, place) => {
    const placed = { box: { ...box, height: part.height }, marks: part.marks };
    return place === 0 ? underCount(placed, count) : placed;
  });
}

const COUNT_GAP = 10;
const COUNT = { height: 30, weight: 500, sizes: [22, 20] } as const;

/** The count shares the strip of the first finding. */
function underCount({ box, marks }: Placed, count: FittedText): Placed {
  const taken = count.height + COUNT_GAP;
  const above = { ...box, y: box.y - taken, height: box.height + taken };
  return { box: above, marks: [...fittedMarks(count, { x: above.x, y: above.y, ink: 'muted' }), ...marks] };
}

function strip({ x, y, width, height }: Box): Mark {
  return {
    kind: 'shape',
    shape: {
      form: 'box',
      x: x - STRIP.x,
      y: y - STRIP.y,
      width: width + 2 * STRIP.x,
      height: height + 2 * STRIP.y,
      radius: 8,
    },
    fill: 'ground',
    stroke: { ink: 'line', width: 2 },
  };
}

/** A thin line in the middle of the gap above a part. */
function lineAbove({ x, y, width }: Box): Mark {
  const at = y - GAP_BETWEEN / 2;
  return {
    kind: 'line',
    points: [
      [x, at],
      [x + width, at],
    ],
    stroke: { ink: 'line', width: 2 },
  };
}
