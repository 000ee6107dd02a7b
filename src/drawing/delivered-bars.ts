import type { Drawing, Mark, TextMark } from './display-list.ts';
import { emptyFrame } from './plots/empty-frame.ts';
import { FIGURE, NAME } from './plots/plot-look.ts';
import { requireFinite, requirePositive } from './plots/require-finite.ts';
import { shortened } from './text-shortened.ts';
import { type TextFace, textWidth } from './text-width.ts';

export interface DeliveredRow {
  label: string;
  promised: number | null;
  promisedText: string;
  delivered: number | null;
  deliveredText: string;
  /** The run did not end by low voltage: at least so much, perhaps more. */
  atLeast: boolean;
  shareText: string;
}

export interface DeliveredBarsInput {
  width: number;
  rows: readonly DeliveredRow[];
  /** Without it the drawing has no words of its own: the text beside it says it. */
  words?: { alt: string; nothing: string };
}

const ROW = { height: 64, labelBaseline: 13, boxTop: 20, boxHeight: 15, figuresBaseline: 48 };
const ROW_GAP = 10;
const SHARE: TextFace = { size: 14, weight: 600 };
const INSET = 3;
const GAP = 10;
/** Room right of a filled part that stands open, and for half of the outline. */
const OPEN_ROOM = 13;
const EDGE_ROOM = 1;
/** Where the right edge is open: strips that run out, each with its distance from the filled part. */
const RUNNING_OUT = [
  { at: 2.5, width: 2.6 },
  { at: 7, width: 1.8 },
  { at: 11, width: 1 },
];

/**
 * Promised as an outline, delivered as the filled part of it, at a glance. Rows have units of their own, so in each the
 * promise has the same width. "At least" has no right edge. Without a promise the outline is dashed and nothing is
 * filled: there is nothing to hold it against.
 */
export function deliveredBars({ width, rows, words }: DeliveredBarsInput): Drawing {
  requireFinite('deliveredBars: width', [width]);
  requirePositive(
    'deliveredBars: promised',
    rows.flatMap((row) => row.promised ?? []),
  );
  const delivered = rows.flatMap((row) => row.delivered ?? []);
  requireFinite('deliveredBars: delivered', delivered);
  if (delivered.some((value) => value < 0)) throw new RangeError('deliveredBars: delivered must not be below 0');
  const alt = words?.alt ?? '';
  if (rows.length === 0) return emptyFrame({ width, height: 60, alt, nothing: words?.nothing ?? '' });
  const promisedWidth = Math.min(width - EDGE_ROOM, ...rows.map((row) => promisedWidthFor(row, width)));
  return {
    width,
    height: rows.length * ROW.height - ROW_GAP,
    alt,
    marks: rows.flatMap((row, place) => rowMarks(row, { width, promisedWidth, top: place * ROW.height })),
  };
}

function deliveredFrac({ promised, delivered }: DeliveredRow): number | null {
  return promised === null || delivered === null ? null : delivered / promised;
}

/** How wide a promise may be drawn so that what was delivered stays inside the drawing. */
function promisedWidthFor(row: DeliveredRow, width: number): number {
  const frac = deliveredFrac(row) ?? 0;
  return frac === 0 ? Infinity : (width - (row.atLeast ? OPEN_ROOM : 0)) / frac;
}

interface RowFrame {
  width: number;
  promisedWidth: number;
  top: number;
}

function rowMarks(row: DeliveredRow, { width, promisedWidth, top }: RowFrame): Mark[] {
  const share = shortened(row.shareText, SHARE, width * 0.4);
  const label = shortened(row.label, NAME, width - GAP - textWidth(share, SHARE));
  const promised = shortened(row.promisedText, FIGURE, (width - GAP) / 2);
  const promisedX = Math.max(promisedWidth, textWidth(promised, FIGURE));
  const words = [
    wordAt({ x: 0, y: top + ROW.labelBaseline, text: label, anchor: 'start', ...NAME, ink: 'ink' }),
    wordAt({ x: width, y: top + ROW.labelBaseline, text: share, anchor: 'end', ...SHARE, ink: 'ink' }),
    wordAt({ x: promisedX, y: top + ROW.figuresBaseline, text: promised, anchor: 'end', ...FIGURE, ink: 'muted' }),
    ...deliveredWords(row, { promisedX, promised, width, y: top + ROW.figuresBaseline }),
  ];
  return [...boxMarks(row, { width, promisedWidth, top }), ...words.filter((word) => word.text !== '')];
}

/** Left of the promise's figure if there is room, else right of it. */
function deliveredWords(
  { deliveredText }: DeliveredRow,
  { promisedX, promised, width, y }: { promisedX: number; promised: string; width: number; y: number },
): TextMark[] {
  const before = promisedX - textWidth(promised, FIGURE) - GAP;
  const after = width - promisedX - GAP;
  const isBefore = before >= Math.min(textWidth(deliveredText, FIGURE), after);
  const text = shortened(deliveredText, FIGURE, isBefore ? before : after);
  return [wordAt({ x: isBefore ? 0 : width, y, text, anchor: isBefore ? 'start' : 'end', ...FIGURE, ink: 'ink' })];
}

function boxMarks(row: DeliveredRow, { promisedWidth, top }: RowFrame): Mark[] {
  const [boxTop, height] = [top + ROW.boxTop, ROW.boxHeight];
  const outline: Mark = {
    kind: 'shape',
    shape: { form: 'box', x: 0.7, y: boxTop, width: promisedWidth - 0.7, height },
    stroke: row.promised === null ? { ink: 'muted', width: 1, dash: [4, 3] } : { ink: 'ink', width: 1.3 },
  };
  const frac = deliveredFrac(row);
  if (frac === null) return [outline];
  const end = frac * promisedWidth;
  const strip = (x: number, width: number): Mark => ({
    kind: 'shape',
    shape: { form: 'box', x, y: boxTop + INSET, width, height: height - 2 * INSET },
    fill: 'ink',
  });
  const left = Math.min(INSET, end);
  const open = row.atLeast ? RUNNING_OUT.map(({ at, width }) => strip(end + at, width)) : [];
  return [outline, strip(left, end - left), ...open];
}

function wordAt(word: Omit<TextMark, 'kind'>): TextMark {
  return { kind: 'text', ...word };
}
