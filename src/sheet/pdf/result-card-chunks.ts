import { resultWords } from '../../text/live-tests/result.ts';
import type { PlotBlock, ResultBlock } from '../model/sheet.ts';
import type { Desk } from './desk.ts';
import type { Chunk } from './flow.ts';
import { subheadChunks } from './prose-chunks.ts';
import { tableChunks } from './table-chunks.ts';
import { drawnChunk, textChunks } from './text-chunks.ts';
import { STYLES } from './text-style.ts';

/** A result with its rows, and how it was worked out in small print: paper has no tap to open it. */
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
    ...subheadChunks(desk, `${title}: ${[value, ...marks].join(' · ')}`),
    ...tableChunks(desk, { kind: 'table', rows }),
    ...printed.flatMap((line, place) =>
      textChunks(desk, line, { style: STYLES.small, x, width, space: place === 0 ? 5 : 0 }),
    ),
  ];
}

/** A plot as wide as the text column, its caption kept with it. */
export function plotChunks(desk: Desk, { drawing, caption }: PlotBlock): Chunk[] {
  const { textLeft: x, textWidth: width } = desk.frame;
  const scale = width / drawing.width;
  return [
    {
      ...drawnChunk(drawing.height * scale, 8, (page, y) => page.drawing(drawing, { x, y, scale })),
      keepWithNext: true,
    },
    ...textChunks(desk, caption, { style: STYLES.small, x, width, space: 2 }),
  ];
}
