import { LID_GLYPH_HEIGHT, LID_GLYPH_WIDTH, lidGlyph } from '../../drawing/lid-glyph.ts';
import { gridWords } from '../../text/side-by-side.ts';
import type { GridBlock, GridRow } from '../model/sheet.ts';
import type { Desk } from './desk.ts';
import type { Chunk } from './flow.ts';
import { type Cell, rowChunk, stacked, textChunks } from './text-chunks.ts';
import { STYLES } from './text-style.ts';

/** More columns than this leave a name no room on A4. */
const MOST_COLUMNS = 4;
const LABEL_FRAC = 0.24;
const GAP = 8;
/** Bands side by side are as wide as two packs at least, so that one pack alone does not stand across the page. */
const LEAST_COLUMNS = 2;
const GLYPH_HEIGHT = 12;

/** Packs beside one another, at most four in a band; further ones in a band of their own below. */
export function gridChunks(desk: Desk, { columns, rows }: GridBlock): Chunk[] {
  const starts = columns.flatMap((_, place) => (place % MOST_COLUMNS === 0 ? [place] : []));
  const widest = Math.max(Math.min(columns.length, MOST_COLUMNS), LEAST_COLUMNS);
  return starts.flatMap((from) => {
    const to = Math.min(from + MOST_COLUMNS, columns.length);
    const places = columnPlaces(desk, { count: to - from, widest });
    const title = starts.length === 1 ? null : gridWords.band(from + 1, to, columns.length);
    return bandChunks(desk, {
      title,
      columns: columns.slice(from, to),
      rows: rows.map((row) => ({ ...row, cells: row.cells.slice(from, to) })),
      places,
    });
  });
}

interface Band {
  title: string | null;
  columns: GridBlock['columns'];
  rows: GridRow[];
  places: { x: number; width: number }[];
}

function columnPlaces({ frame }: Desk, { count, widest }: { count: number; widest: number }): Band['places'] {
  const left = frame.left + frame.fullWidth * LABEL_FRAC;
  const step = (frame.right - left) / widest;
  return Array.from({ length: count }, (_, place) => ({ x: left + place * step, width: step - GAP }));
}

function bandChunks(desk: Desk, band: Band): Chunk[] {
  const head = headChunk(desk, band);
  const { left: x, fullWidth: width } = desk.frame;
  const titled =
    band.title === null
      ? []
      : textChunks(desk, band.title, { style: STYLES.small, x, width, space: 20, keepWithNext: true });
  const rows = band.rows.flatMap((row, place) => {
    const opens = row.group !== null && row.group !== band.rows[place - 1]?.group;
    const heading = opens
      ? textChunks(desk, row.group ?? '', { style: STYLES.subhead, x, width, space: 11, keepWithNext: true })
      : [];
    return [...heading, rowOf(desk, row, band.places)].map((chunk) => ({ ...chunk, headAgain: head }));
  });
  return [...titled, head, ...rows];
}

function headChunk(desk: Desk, band: Band): Chunk {
  const { columns, places } = band;
  const { left: x, fullWidth: width } = desk.frame;
  const cells = columns.flatMap(({ title, mark }, place) =>
    cellsAt(desk, places[place], [
      { text: title, style: STYLES.total },
      ...(mark === null ? [] : [{ text: mark, style: STYLES.foot }]),
    ]),
  );
  return rowChunk(desk, cells, {
    space: band.title === null ? 18 : 4,
    keepWithNext: true,
    beside: (page, top, height) => page.rule({ x, y: top + height + 1.5, width, thickness: 0.9, ink: 'ink' }),
  });
}

function rowOf(desk: Desk, row: GridRow, places: Band['places']): Chunk {
  const { left: x, fullWidth: width } = desk.frame;
  const label: Cell = {
    text: row.label,
    x,
    width: width * LABEL_FRAC - GAP,
    style: { ...STYLES.small, leading: STYLES.body.leading },
  };
  const cells = row.cells.flatMap(({ text, note, glyph }, place) =>
    cellsAt(desk, glyph === null ? places[place] : besideGlyph(places[place]), [
      { text, style: STYLES.body },
      ...(note === null ? [] : [{ text: note, style: { ...STYLES.foot, leading: 9.4 } }]),
    ]),
  );
  return rowChunk(desk, [label, ...cells], {
    space: 4,
    beside(page, top, height) {
      page.rule({ x, y: top + height + 2, width, thickness: 0.4, ink: 'line' });
      row.cells.forEach(({ glyph }, place) => {
        const at = places[place];
        if (glyph === null || at === undefined) return;
        page.drawing(lidGlyph(glyph), { x: at.x, y: top, scale: GLYPH_HEIGHT / LID_GLYPH_HEIGHT });
      });
    },
  });
}

function besideGlyph(at: Band['places'][number] | undefined): Band['places'][number] | undefined {
  const taken = (GLYPH_HEIGHT / LID_GLYPH_HEIGHT) * LID_GLYPH_WIDTH + 4;
  return at && { x: at.x + taken, width: at.width - taken };
}

function cellsAt(
  desk: Desk,
  at: Band['places'][number] | undefined,
  texts: readonly Pick<Cell, 'text' | 'style'>[],
): Cell[] {
  return at === undefined
    ? []
    : stacked(
        desk,
        texts.map((text) => ({ ...text, ...at })),
      );
}
