import { resultWords } from '../../text/live-tests/result.ts';
import type { PlotBlock, ResultBlock } from '../model/sheet.ts';
import type { Desk } from './desk.ts';
import type { Chunk } from './flow.ts';
import { tableChunks } from './table-chunks.ts';
import { drawnChunk, type TextPlace, textChunks } from './text-chunks.ts';
import { STYLES } from './text-style.ts';

/** What it is small above its figure; rows; and how it was worked out in small print: paper has no tap to open it. */
export function resultCardChunks(desk: Desk, { title, value, marks, rows, working }: ResultBlock): Chunk[] {
  const { textLeft: x, textWidth: width } = desk.frame;
  const printed =
    working === null
      ? []
      : [
          working.formula,
          working.inputs.map((input) => `${input.label} ${input.value}`).join(' · '),
          working.uncertainty === undefined ? '' : `${resultWords.uncertainty} ${working.uncertainty}`,
          `${resultWords.source} ${resultWords.sources(working.sources)}`,
        ].filter(Boolean);
  return [
    ...headChunks(desk, title, { style: STYLES.small, space: 11 }),
    ...headChunks(desk, [value, ...marks].join(' · '), { style: STYLES.title, space: 0 }),
    ...tableChunks(desk, { kind: 'table', rows }),
    ...printed.flatMap((line, place) =>
      textChunks(desk, line, { style: STYLES.foot, x, width, space: place === 0 ? 6 : 0 }),
    ),
  ];
}

/** Lines that are never the last of a page. */
function headChunks(desk: Desk, text: string, place: Pick<TextPlace, 'style' | 'space'>): Chunk[] {
  const { textLeft: x, textWidth: width } = desk.frame;
  return textChunks(desk, text, { ...place, x, width }).map((chunk) => ({ ...chunk, keepWithNext: true }));
}

/** A plot's words are then about as large as the text around it. Our choice. */
const LARGEST_PLOT_SCALE = 0.8;
/** Kept free on a page for the caption of a plot as high as the page. */
const CAPTION_ROOM = 60;

/** A plot within the text column, its caption kept with it. */
export function plotChunks(desk: Desk, { drawing, caption }: PlotBlock): Chunk[] {
  const { textLeft: x, textWidth: width, top, bottom } = desk.frame;
  const most = bottom - top - CAPTION_ROOM;
  const scale = Math.min(LARGEST_PLOT_SCALE, width / drawing.width, most / drawing.height);
  return [
    {
      ...drawnChunk(drawing.height * scale, 8, (page, y) => page.drawing(drawing, { x, y, scale })),
      keepWithNext: true,
    },
    ...textChunks(desk, caption, { style: STYLES.small, x, width, space: 2 }),
  ];
}
