import { PAPER } from '../../drawing/palette.ts';
import type { ListBlock, ParagraphBlock, QuoteBlock } from '../model/sheet.ts';
import type { Desk } from './desk.ts';
import type { Chunk } from './flow.ts';
import { drawnChunk, rowChunk, type TextPlace, textChunks } from './text-chunks.ts';
import { STYLES, type TextStyle } from './text-style.ts';

/** A section's heading over the full width with a line under it. Never the last of a page. */
export function sectionHeadChunks(desk: Desk, title: string): Chunk[] {
  const { left: x, fullWidth: width } = desk.frame;
  const lines = textChunks(desk, title, { style: STYLES.section, x, width, space: 26, keepWithNext: true });
  const under = drawnChunk(1, 2, (page, top) => page.rule({ x, y: top + 0.5, width, thickness: 0.9, ink: 'ink' }));
  return [
    ...lines.map((chunk, place) => (place === 0 ? { ...chunk, bookmark: { title, depth: 0 as const } } : chunk)),
    { ...under, keepWithNext: true },
  ];
}

export function subheadChunks(desk: Desk, text: string): Chunk[] {
  const { textLeft: x, textWidth: width } = desk.frame;
  return textChunks(desk, text, { style: STYLES.subhead, x, width, space: 11, keepWithNext: true }).map((chunk) => ({
    ...chunk,
    keepWithNext: true,
  }));
}

/** A caution has a bar down its side, like the words of a person, but heavier. */
export function paragraphChunks(desk: Desk, { text, tone }: ParagraphBlock): Chunk[] {
  const { textLeft: x, textWidth: width } = desk.frame;
  if (tone !== 'caution') {
    return textChunks(desk, text, { style: tone === 'muted' ? STYLES.small : STYLES.body, x, width, space: 7 });
  }
  return textChunks(desk, text, {
    style: STYLES.strong,
    x: x + 10,
    width: width - 10,
    space: 8,
    beside: (page, top, height) =>
      page.surface.box({ x, y: top, width: 3, height: height + 0.3, radius: 0 }, { stroke: null, fill: PAPER.ink }),
  });
}

/** Words of a person: a thin bar down the side, and whose words they are above. */
export function quoteChunks(desk: Desk, { label, text }: Pick<QuoteBlock, 'label' | 'text'>): Chunk[] {
  const { textLeft, textWidth } = desk.frame;
  const x = textLeft + 10;
  const width = textWidth - 10;
  const beside = (page: Parameters<Chunk['paint']>[0], top: number, height: number) =>
    page.surface.box(
      { x: textLeft, y: top, width: 1.2, height: height + 0.3, radius: 0 },
      { stroke: null, fill: PAPER.line },
    );
  return [
    ...textChunks(desk, label, { style: STYLES.small, x, width, space: 6, keepWithNext: true, beside }),
    ...textChunks(desk, text, { style: STYLES.body, x, width, space: 0, beside }),
  ];
}

/** A short detail stands beside its text, a longer one under it. */
export function listChunks(desk: Desk, { items }: ListBlock, space = 4): Chunk[] {
  const x = desk.frame.textLeft + DASH_INDENT;
  const width = desk.frame.textWidth - DASH_INDENT;
  const textWidth = width * BESIDE_FRAC;
  const fits = (text: string, style: TextStyle, room: number) =>
    desk.typeface.widthOf(desk.typeface.printable(text), style) <= room;
  return items.flatMap(({ text, detail }) => {
    const place = { x, width, style: STYLES.body, space };
    if (detail === undefined) return dashedChunks(desk, text, place);
    if (fits(text, STYLES.body, textWidth - 8) && fits(detail, DETAIL, width - textWidth)) {
      const beside = { text: detail, x: x + textWidth, width: width - textWidth, style: DETAIL };
      return [dashed(rowChunk(desk, [{ text, ...place }, beside], { space }), place)];
    }
    return [
      ...dashedChunks(desk, text, { ...place, keepWithNext: true }),
      ...textChunks(desk, detail, { x, width, style: STYLES.small, space: 0 }),
    ];
  });
}

const BESIDE_FRAC = 0.5;
const DETAIL = { ...STYLES.small, leading: STYLES.body.leading };
export const DASH_INDENT = 10;

/** A text with a short dash before its first line. */
export function dashedChunks(desk: Desk, text: string, place: TextPlace): Chunk[] {
  return textChunks(desk, text, place).map((chunk, at) => (at === 0 ? dashed(chunk, place) : chunk));
}

function dashed(chunk: Chunk, { x, style }: Pick<TextPlace, 'x' | 'style'>): Chunk {
  return {
    ...chunk,
    paint(page, top) {
      page.rule({ x: x - DASH_INDENT, y: top + style.leading / 2, width: 5, thickness: 0.8, ink: 'muted' });
      chunk.paint(page, top);
    },
  };
}
