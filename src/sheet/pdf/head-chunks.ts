import { PAPER } from '../../drawing/palette.ts';
import type { SheetHead } from '../model/sheet.ts';
import type { Desk } from './desk.ts';
import type { Chunk } from './flow.ts';
import { drawnChunk, textChunks } from './text-chunks.ts';
import { STYLES } from './text-style.ts';

const MARK = STYLES.small;
const MARK_PAD = 5;
const MARK_GAP = 8;

/** Name, rating and marks at the top of the first page, with a strong line under them. */
export function headChunks(desk: Desk, head: SheetHead): Chunk[] {
  const { left: x, fullWidth: width } = desk.frame;
  return [
    ...textChunks(desk, head.overline, { style: STYLES.overline, x, width, space: 0, keepWithNext: true }),
    ...textChunks(desk, head.name, { style: STYLES.name, x, width, space: 2, keepWithNext: true }),
    ...(head.line === ''
      ? []
      : textChunks(desk, head.line, { style: STYLES.overline, x, width, space: 1, keepWithNext: true })),
    ...(head.marks.length === 0 ? [] : [{ ...marksChunk(desk, head.marks), keepWithNext: true }]),
    ...textChunks(desk, head.caution, { style: STYLES.small, x, width, space: 6, keepWithNext: true }),
    {
      ...drawnChunk(1.4, 7, (page, top) => page.rule({ x, y: top + 0.7, width, thickness: 1.4, ink: 'ink' })),
      keepWithNext: true,
    },
  ];
}

/** Framed words in a row: what must not be missed. */
function marksChunk({ frame, typeface }: Desk, marks: readonly string[]): Chunk {
  const height = MARK.leading + 5;
  return drawnChunk(height, 6, (page, top) => {
    let x = frame.left;
    for (const mark of marks) {
      const text = typeface.printable(mark);
      const width = typeface.widthOf(text, MARK) + 2 * MARK_PAD;
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
