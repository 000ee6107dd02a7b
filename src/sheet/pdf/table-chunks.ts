import { LID_GLYPH_HEIGHT, lidGlyph } from '../../drawing/lid-glyph.ts';
import type { AnswersBlock, LedgerBlock, TableBlock } from '../model/sheet.ts';
import type { Desk } from './desk.ts';
import type { Chunk } from './flow.ts';
import { quoteChunks } from './prose-chunks.ts';
import { rowChunk, stacked, textChunks } from './text-chunks.ts';
import { STYLES } from './text-style.ts';

const LABEL_FRAC = 0.4;

/** Labels left, values right, a thin line between rows. */
export function tableChunks(desk: Desk, { rows }: TableBlock): Chunk[] {
  const { textLeft: x, textWidth } = desk.frame;
  const labelWidth = textWidth * LABEL_FRAC - 8;
  const valueX = x + textWidth * LABEL_FRAC;
  const width = textWidth - textWidth * LABEL_FRAC;
  return rows.map((row, place) =>
    rowChunk(
      desk,
      [
        { text: row.label, x, width: labelWidth, style: { ...STYLES.small, leading: STYLES.body.leading } },
        ...stacked(desk, [
          { text: row.value, x: valueX, width, style: STYLES.body },
          ...(row.note === undefined ? [] : [{ text: row.note, x: valueX, width, style: STYLES.small }]),
        ]),
      ],
      {
        space: place === 0 ? 5 : 4,
        beside: (page, top, height) =>
          page.rule({ x, y: top + height + 2, width: textWidth, thickness: 0.4, ink: 'line' }),
      },
    ),
  );
}

const POINTS = 56;

/** Points right aligned; a strong line over each sum. */
export function ledgerChunks(desk: Desk, { rows }: LedgerBlock): Chunk[] {
  const { textLeft: x, textWidth, right } = desk.frame;
  const width = textWidth - POINTS;
  return rows.map((row, place) => {
    const total = row.kind === 'total';
    const style = total ? STYLES.total : STYLES.body;
    return rowChunk(
      desk,
      [
        ...stacked(desk, [
          { text: row.text, x, width, style },
          ...(row.detail === null ? [] : [{ text: row.detail, x, width, style: STYLES.small }]),
        ]),
        { text: row.points, x: right - POINTS, width: POINTS, style, anchor: 'end' },
      ],
      {
        space: total && place > 0 ? 8 : 3,
        // A sum never stands alone at the top of a page, its last line never alone at the foot of one.
        // The first few lines and the last two never stand alone at the edge of a page.
        keepWithNext: place < 3 || place === rows.length - 2 || rows[place + 1]?.kind === 'total',
        beside: (page, top) => {
          if (total && place > 0) page.rule({ x, y: top - 3, width: textWidth, thickness: 0.7, ink: 'ink' });
        },
      },
    );
  });
}

const ANSWER = { glyph: 13, title: 20, titleFrac: 0.46 };

/** Every asked item of a zone: lid, title, what became of it; notes under their row. */
export function answersChunks(desk: Desk, { zoneTitle, rows }: AnswersBlock): Chunk[] {
  const { left, right, fullWidth } = desk.frame;
  const titleX = left + ANSWER.title;
  const outcomeX = left + fullWidth * ANSWER.titleFrac;
  const titleWidth = outcomeX - titleX - 8;
  const noteDesk = { ...desk, frame: { ...desk.frame, textLeft: outcomeX, textWidth: right - outcomeX } };
  const heading = { style: STYLES.subhead, x: left, width: fullWidth, space: 11, keepWithNext: true };
  return [
    ...textChunks(desk, zoneTitle, heading),
    ...rows.flatMap((row, place) => {
      const width = right - outcomeX;
      const chunk = rowChunk(
        desk,
        [
          { text: row.title, x: titleX, width: titleWidth, style: STYLES.body },
          ...stacked(desk, [
            { text: row.outcome, x: outcomeX, width, style: STYLES.body },
            ...(row.marks.length === 0
              ? []
              : [{ text: row.marks.join(' · '), x: outcomeX, width, style: { ...STYLES.small, leading: 10 } }]),
          ]),
        ],
        {
          space: 3,
          least: 15,
          keepWithNext: row.note !== null,
          beside(page, top) {
            page.drawing(lidGlyph(row.glyph), { x: left, y: top - 0.5, scale: ANSWER.glyph / LID_GLYPH_HEIGHT });
            if (place > 0) page.rule({ x: left, y: top - 1.5, width: fullWidth, thickness: 0.4, ink: 'line' });
          },
        },
      );
      return [chunk, ...(row.note === null ? [] : quoteChunks(noteDesk, row.note))];
    }),
  ];
}
