import { PAPER } from '../../drawing/palette.ts';
import type { SheetHead } from '../model/sheet.ts';
import type { Desk } from './desk.ts';
import type { Chunk } from './flow.ts';
import { paragraphChunks } from './prose-chunks.ts';
import { drawnChunk, textChunks } from './text-chunks.ts';
import { STYLES } from './text-style.ts';

const MARK = STYLES.small;
const MARK_PAD = 5;
const MARK_GAP = 8;

/** Name, rating and marks at the top of the first page, with a strong line under them. */
export function headChunks(desk: Desk, head: SheetHead): Chunk[] {
  const { left: x, fullWidth: width } = desk.frame;
  const wide = { ...desk, frame: { ...desk.frame, textLeft: x, textWidth: width } };
  const standing =
    head.standing === null
      ? []
      : paragraphChunks(wide, head.standing).map((chunk) => ({ ...chunk, keepWithNext: true }));
  // That another sheet counts, or more has come in, is said before anything else.
  const warns = head.standing?.tone === 'caution';
  return [
    ...(warns ? standing : []),
    ...textChunks(desk, head.overline, { style: STYLES.overline, x, width, space: warns ? 10 : 0, keepWithNext: true }),
    ...textChunks(desk, head.name, { style: STYLES.name, x, width, space: 2, keepWithNext: true }),
    ...(head.line === ''
      ? []
      : textChunks(desk, head.line, { style: STYLES.overline, x, width, space: 1, keepWithNext: true })),
    ...marksChunks(desk, head.marks).map((chunk) => ({ ...chunk, keepWithNext: true })),
    ...(warns ? [] : standing.map((chunk, place) => (place === 0 ? { ...chunk, space: 6 } : chunk))),
    ...textChunks(desk, head.caution, { style: STYLES.small, x, width, space: warns ? 6 : 1, keepWithNext: true }),
    {
      ...drawnChunk(1.4, 7, (page, top) => page.rule({ x, y: top + 0.7, width, thickness: 1.4, ink: 'ink' })),
      keepWithNext: true,
    },
  ];
}

/** Framed words, in as many rows as they need: what must not be missed. */
function marksChunks({ frame, typeface }: Desk, marks: readonly string[]): Chunk[] {
  const framed = marks.map((mark) => {
    const text = typeface.printable(mark);
    return { text, width: typeface.widthOf(text, MARK) + 2 * MARK_PAD };
  });
  return rowsOf(framed, frame.fullWidth).map((row, place) => markRowChunk(row, frame.left, place === 0 ? 6 : 3));
}

interface Framed {
  text: string;
  width: number;
}

function rowsOf(framed: readonly Framed[], room: number): Framed[][] {
  const rows: Framed[][] = [];
  let used = Number.POSITIVE_INFINITY;
  for (const mark of framed) {
    const row = rows.at(-1);
    if (row === undefined || used + mark.width > room) {
      rows.push([mark]);
      used = mark.width + MARK_GAP;
    } else {
      row.push(mark);
      used += mark.width + MARK_GAP;
    }
  }
  return rows;
}

function markRowChunk(row: readonly Framed[], left: number, space: number): Chunk {
  const height = MARK.leading + 5;
  return drawnChunk(height, space, (page, top) => {
    let x = left;
    for (const { text, width } of row) {
      const stroke = { colour: PAPER.ink, width: 0.8, dash: [2.4, 1.8], cap: 'butt', join: 'miter' } as const;
      page.surface.box(
        { x, y: top, width, height, radius: 2 },
        { stroke: { ...stroke, dash: [...stroke.dash] }, fill: null },
      );
      page.line(text, { x: x + MARK_PAD, top: top + 2.5, style: { ...MARK, ink: 'ink' } });
      x += width + MARK_GAP;
    }
  });
}
