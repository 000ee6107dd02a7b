import type { HashBlock } from '../model/sheet.ts';
import type { Desk } from './desk.ts';
import type { Chunk } from './flow.ts';
import type { Page } from './page.ts';
import { drawnChunk, textChunks } from './text-chunks.ts';
import { STYLES } from './text-style.ts';

const STYLE = { ...STYLES.strong, leading: 15 };
const GROUPS_A_ROW = 8;
/** Between groups, in digits. */
const GAP = 0.9;

/**
 * A SHA-256 with its digits one under the other, as in a typeface of one width. A group is drawn as one text, so that it
 * can be copied and searched; the room that a narrow digit leaves stands behind it.
 */
export function hashChunks(desk: Desk, { label, groups }: HashBlock): Chunk[] {
  const { textLeft: x, textWidth: width } = desk.frame;
  const digit = Math.max(...[...'0123456789abcdef'].map((one) => desk.typeface.widthOf(one, STYLE)));
  const groupWidth = (Math.max(...groups.map(({ length }) => length)) + GAP) * digit;
  const rows = Array.from({ length: Math.ceil(groups.length / GROUPS_A_ROW) }, (_, row) =>
    groups.slice(row * GROUPS_A_ROW, (row + 1) * GROUPS_A_ROW),
  );
  const paintRow = (row: readonly string[]) => (page: Page, top: number) => {
    for (const [place, group] of row.entries()) page.line(group, { x: x + place * groupWidth, top, style: STYLE });
  };
  const last = rows.length - 1;
  return [
    ...textChunks(desk, label, { style: STYLES.small, x, width, space: 7, keepWithNext: true }),
    ...rows.map((row, place) => ({ ...drawnChunk(STYLE.leading, 1, paintRow(row)), keepWithNext: place < last })),
  ];
}
