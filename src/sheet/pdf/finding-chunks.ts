import { LID_GLYPH_HEIGHT, lidGlyph } from '../../drawing/lid-glyph.ts';
import type { FindingBlock, RemedyBlock } from '../model/sheet.ts';
import type { Desk } from './desk.ts';
import type { Chunk } from './flow.ts';
import { photosChunks } from './photo-chunks.ts';
import { quoteChunks } from './prose-chunks.ts';
import { rowChunk, textChunks } from './text-chunks.ts';
import { STYLES } from './text-style.ts';

const GLYPH = { x: 25, height: 17 };

/** Number, lid and grade in the margin; title, sentence, risk, evidence, harm, the tester's words and photos beside it. */
export function findingChunks(desk: Desk, block: FindingBlock): Chunk[] {
  const { left, textLeft: x, textWidth: width } = desk.frame;
  const small = { style: STYLES.small, x, width };
  const body = { style: STYLES.body, x, width };
  const head = rowChunk(
    desk,
    [
      { text: String(block.number), x: left, width: GLYPH.x, style: STYLES.number },
      {
        text: block.gradeWord,
        x: left + GLYPH.x + 22,
        width: x - left - GLYPH.x - 26,
        style: { ...STYLES.small, leading: 14 },
      },
      { text: block.title, x, width, style: STYLES.title },
    ],
    {
      space: 15,
      keepWithNext: true,
      beside: (page, top) =>
        page.drawing(lidGlyph(block.glyph, block.gradeWord), {
          x: left + GLYPH.x,
          y: top - 3,
          scale: GLYPH.height / LID_GLYPH_HEIGHT,
        }),
    },
  );
  return [
    { ...head, bookmark: { title: `${block.number} ${block.title}`, depth: 1 } },
    ...textChunks(desk, block.sentence, { ...body, space: 1, keepWithNext: true }).map(kept),
    ...textChunks(desk, block.line, { ...small, space: 2, keepWithNext: true }).map(kept),
    ...textChunks(desk, block.evidence, { ...small, space: 0 }),
    ...(block.harm === null ? [] : textChunks(desk, block.harm, { ...body, space: 4 })),
    ...(block.likelihoodReason === null ? [] : textChunks(desk, block.likelihoodReason, { ...small, space: 3 })),
    ...(block.note === null ? [] : quoteChunks(desk, block.note)),
    ...textChunks(desk, block.basis, { ...small, space: 4 }),
    ...photosChunks(desk, block.photos, { x, width, onlyHeight: 200 }),
  ];
}

function kept(chunk: Chunk): Chunk {
  return { ...chunk, keepWithNext: true };
}

const REMEDY = { number: 20, gain: 62, after: 92 };

/** Number in the margin, the work, what it clears; gain and the score then at the right. */
export function remedyChunks(desk: Desk, block: RemedyBlock): Chunk[] {
  const { left, right, textLeft: x } = desk.frame;
  const width = right - x - REMEDY.gain - REMEDY.after;
  const detail = [block.clears, block.open, ...block.takes].filter((part) => part !== null).join(' · ');
  return [
    rowChunk(
      desk,
      [
        { text: String(block.number), x: left, width: REMEDY.number, style: STYLES.number },
        {
          text: block.reachWord,
          x: left + GLYPH.x,
          width: x - left - GLYPH.x - 4,
          style: { ...STYLES.small, leading: 14 },
        },
        { text: block.text, x, width, style: STYLES.body },
        ...(block.gain === null
          ? []
          : [
              {
                text: block.gain,
                x: right - REMEDY.after - REMEDY.gain,
                width: REMEDY.gain - 4,
                style: STYLES.strong,
                anchor: 'end' as const,
              },
            ]),
        ...(block.after === null
          ? []
          : [
              {
                text: block.after,
                x: right - REMEDY.after,
                width: REMEDY.after,
                style: STYLES.body,
                anchor: 'end' as const,
              },
            ]),
      ],
      { space: 8, keepWithNext: detail !== '' },
    ),
    ...(detail === '' ? [] : textChunks(desk, detail, { style: STYLES.small, x, width, space: 0 })),
    ...(block.note === null ? [] : quoteChunks(desk, block.note)),
  ];
}
