import type { SheetPhoto } from '../model/sheet.ts';
import type { Desk } from './desk.ts';
import type { Chunk } from './flow.ts';
import { paintPhoto } from './paint-photo.ts';
import { drawnChunk, rowChunk, textChunks } from './text-chunks.ts';
import { STYLES } from './text-style.ts';

export interface PhotosPlace {
  x: number;
  width: number;
  /** Greatest height of a photo that stands alone. */
  onlyHeight: number;
}

const GAP = 14;
const ROW_HEIGHT = 178;
/** Captions narrower than this are hard to read. Our choice. */
const LEAST_WIDTH = 140;
const WORDS_GAP = 4;
const NUMBER_WIDTH = 14;
const TITLE = { ...STYLES.small, weight: 500, ink: 'ink' } as const;
/** A photo whose words would make it higher than this share of a page is set alone and may turn the page. Our choice. */
const TALLEST_FRAC = 0.6;

/**
 * A photo alone stands large; several stand side by side, upright ones three in a row where there is room. Each has its
 * number, its caption and the legend of its callouts.
 */
export function photosChunks(desk: Desk, photos: readonly SheetPhoto[], place: PhotosPlace): Chunk[] {
  const large = { x: place.x, width: place.width, height: place.onlyHeight };
  const [only] = photos;
  if (only !== undefined && photos.length === 1) return runOf(photoChunks(desk, only, large));
  const cellOf = (photo: SheetPhoto, column: number, columns: number) => {
    const width = (place.width - GAP * (columns - 1)) / columns;
    return stack(photoChunks(desk, photo, { x: place.x + column * (width + GAP), width, height: ROW_HEIGHT }));
  };
  const upright = place.width >= 3 * LEAST_WIDTH ? 3 : 2;
  const columnsOf = (photo: SheetPhoto) => (photo.heightPx > photo.widthPx ? upright : 2);
  const tallest = TALLEST_FRAC * (desk.frame.bottom - desk.frame.top);
  const isTall = (photo: SheetPhoto) => cellOf(photo, 0, columnsOf(photo)).height > tallest;
  return rowsOf(photos, { isTall, columnsOf }).flatMap((row) => {
    const [first] = row;
    if (first === undefined) return [];
    if (isTall(first)) return runOf(photoChunks(desk, first, large));
    const columns = Math.min(...row.map(columnsOf));
    return [sideBySide(row.map((photo, column) => cellOf(photo, column, columns)))];
  });
}

/** Rows in order, each as long as its least upright photo allows; a tall one by itself. */
function rowsOf(
  photos: readonly SheetPhoto[],
  { isTall, columnsOf }: { isTall: (photo: SheetPhoto) => boolean; columnsOf: (photo: SheetPhoto) => number },
): SheetPhoto[][] {
  const rows: SheetPhoto[][] = [];
  let open: SheetPhoto[] = [];
  for (const photo of photos) {
    const tall = isTall(photo);
    const longer = [...open, photo];
    if (open.length === 0 || tall || longer.length > Math.min(...longer.map(columnsOf))) {
      open = [photo];
      rows.push(open);
    } else {
      open.push(photo);
    }
    if (tall) open = [];
  }
  return rows;
}

/** The picture, then its words line by line. */
function photoChunks(desk: Desk, photo: SheetPhoto, box: { x: number; width: number; height: number }): Chunk[] {
  const scale = Math.min(box.width / photo.widthPx, box.height / photo.heightPx);
  const size = { width: photo.widthPx * scale, height: photo.heightPx * scale };
  const picture = drawnChunk(size.height, 10, (page, top) => paintPhoto(page, photo, { x: box.x, y: top, ...size }));
  return [
    { ...picture, photoIds: [photo.photoId], keepWithNext: true },
    ...textChunks(desk, photo.title, { ...box, style: TITLE, space: WORDS_GAP }),
    ...(photo.caption === null ? [] : textChunks(desk, photo.caption, { ...box, style: STYLES.small, space: 0 })),
    ...photo.legend.map((line) => legendRow(desk, line, box)),
  ];
}

/** One leader's number and what it points at. */
function legendRow(desk: Desk, line: SheetPhoto['legend'][number], { x, width }: { x: number; width: number }): Chunk {
  const style = { ...STYLES.small, ink: 'ink' } as const;
  return rowChunk(
    desk,
    [
      { text: String(line.number), x, width: NUMBER_WIDTH, style: { ...style, weight: 600 } },
      { text: line.text, x: x + NUMBER_WIDTH, width: width - NUMBER_WIDTH, style },
    ],
    { space: 0 },
  );
}

/** A few lines of words never leave their picture; many may. */
function runOf(chunks: Chunk[]): Chunk[] {
  const few = 8;
  return chunks.map((chunk, place) =>
    place < Math.min(few, chunks.length - 1) ? { ...chunk, keepWithNext: true } : chunk,
  );
}

/** Chunks one under the other as one. */
function stack(chunks: readonly Chunk[]): Chunk {
  const tops: number[] = [];
  let height = 0;
  chunks.forEach((chunk, place) => {
    height += place === 0 ? 0 : chunk.space;
    tops.push(height);
    height += chunk.height;
  });
  return {
    height,
    space: chunks[0]?.space ?? 0,
    keepWithNext: false,
    photoIds: chunks.flatMap(({ photoIds }) => photoIds),
    paint(page, top) {
      chunks.forEach((chunk, place) => {
        chunk.paint(page, top + (tops[place] ?? 0));
      });
    },
  };
}

function sideBySide(cells: readonly Chunk[]): Chunk {
  return {
    height: Math.max(...cells.map(({ height }) => height)),
    space: Math.max(...cells.map(({ space }) => space)),
    keepWithNext: false,
    photoIds: cells.flatMap(({ photoIds }) => photoIds),
    paint(page, top) {
      for (const cell of cells) cell.paint(page, top);
    },
  };
}
