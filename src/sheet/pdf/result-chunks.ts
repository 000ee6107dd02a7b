import { lidGlyph } from '../../drawing/lid-glyph.ts';
import { PAPER } from '../../drawing/palette.ts';
import { RULE_HEIGHT, rule } from '../../drawing/rule.ts';
import type { FiguresBlock, RuleBlock, VerdictBlock, ZoneRow, ZonesBlock } from '../model/sheet.ts';
import type { Desk } from './desk.ts';
import type { Chunk } from './flow.ts';
import { DASH_INDENT, dashedChunks } from './prose-chunks.ts';
import { type Cell, drawnChunk, rowChunk, stacked, textChunks } from './text-chunks.ts';
import { STYLES } from './text-style.ts';

/** The verdict in large letters; a stop sign has a heavy bar down its side. */
export function verdictChunks(desk: Desk, block: VerdictBlock): Chunk[] {
  const inset = block.stop ? 12 : 0;
  const x = desk.frame.left + inset;
  const width = desk.frame.fullWidth - inset;
  const bar = block.stop
    ? (page: Parameters<Chunk['paint']>[0], top: number, height: number) =>
        page.surface.box(
          { x: desk.frame.left, y: top, width: 4, height: height + 0.5, radius: 0 },
          { stroke: null, fill: PAPER.ink },
        )
    : undefined;
  const beside = bar === undefined ? {} : { beside: bar };
  return [
    ...textChunks(desk, block.title, { style: STYLES.verdict, x, width, space: 13, keepWithNext: true, ...beside }),
    ...textChunks(desk, block.line, { style: STYLES.overline, x, width, space: block.stop ? 0 : 1, ...beside }),
    ...block.advice.flatMap((advice) =>
      block.stop
        ? dashedChunks(desk, advice, { ...STOP_ADVICE, x: x + DASH_INDENT, width: width - DASH_INDENT, ...beside })
        : textChunks(desk, advice, { style: STYLES.body, x, width, space: 3 }),
    ),
  ];
}

const STOP_ADVICE = { style: { ...STYLES.body, leading: 15.5 }, space: 0 };

/** Points on paper for one unit of the rule's drawing. Our choice: its 13-unit figures become 8.8 points. */
const RULE_SCALE = 0.68;

export function ruleChunks({ frame }: Desk, block: RuleBlock): Chunk[] {
  const drawing = rule({ ...block, widthPx: frame.fullWidth / RULE_SCALE });
  return [
    drawnChunk(RULE_HEIGHT * RULE_SCALE, 12, (page, top) =>
      page.drawing(drawing, { x: frame.left, y: top, scale: RULE_SCALE }),
    ),
  ];
}

const FIGURE_GAP = 24;

/** Figures with their labels above, side by side; as many in a row as fit. */
export function figuresChunks(desk: Desk, { figures }: FiguresBlock, box: { x: number; width: number }): Chunk[] {
  const rows: Cell[][] = [[]];
  let x = box.x;
  for (const figure of figures) {
    const texts = [
      { text: figure.label, style: STYLES.small },
      { text: figure.value, style: STYLES.figure },
      ...(figure.note === undefined ? [] : [{ text: figure.note, style: STYLES.small }]),
    ];
    const natural = Math.max(
      ...texts.map(({ text, style }) => desk.typeface.widthOf(desk.typeface.printable(text), style)),
    );
    const width = Math.min(natural + 1, box.width);
    if (x > box.x && x + width > box.x + box.width) {
      rows.push([]);
      x = box.x;
    }
    rows.at(-1)?.push(
      ...stacked(
        desk,
        texts.map(({ text, style }) => ({ text, style, x, width })),
      ),
    );
    x += width + FIGURE_GAP;
  }
  return rows.map((cells) => rowChunk(desk, cells, { space: 10 }));
}

const ZONE = { glyphScale: 0.56, title: 24, bar: 214, shown: 52, height: 24.5 };

/** One row a zone: lid glyph, name, bar of the credit kept (hollow where open), figure. */
export function zonesChunks(desk: Desk, { rows }: ZonesBlock): Chunk[] {
  return rows.map((row, place) => ({
    ...zoneChunk(desk, row),
    space: place === 0 ? 12 : 0,
    keepWithNext: place < rows.length - 1,
  }));
}

function zoneChunk(desk: Desk, row: ZoneRow): Chunk {
  const { left, right } = desk.frame;
  const titleX = left + ZONE.title;
  const width = ZONE.bar - ZONE.title - 8;
  const cells = [
    ...stacked(desk, [
      { text: row.title, x: titleX, width, style: STYLES.strong },
      { text: row.detail, x: titleX, width, style: { ...STYLES.foot, leading: 9.4 } },
    ]),
    { text: row.shown, x: right - ZONE.shown, width: ZONE.shown, style: STYLES.strong, anchor: 'end' as const },
  ];
  return rowChunk(desk, cells, {
    space: 0,
    least: ZONE.height,
    beside(page, top) {
      page.drawing(lidGlyph(row.glyph, row.glyphWord), { x: left, y: top + 1.5, scale: ZONE.glyphScale });
      if (row.bar === null || row.bar.highFrac === 0) return;
      const x = left + ZONE.bar;
      const full = right - ZONE.shown - x;
      const box = { x, y: top + 3.6, height: 6, radius: 0 };
      const stroke = { colour: PAPER.ink, width: 0.7, dash: [], cap: 'butt', join: 'miter' } as const;
      page.surface.box(
        { ...box, width: full * row.bar.highFrac },
        { stroke: { ...stroke, dash: [] }, fill: PAPER.white },
      );
      page.surface.box({ ...box, width: full * row.bar.lowFrac }, { stroke: null, fill: PAPER.ink });
    },
  });
}
