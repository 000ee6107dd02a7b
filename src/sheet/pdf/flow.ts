import type { Page } from './page.ts';

/** A piece of the sheet that is never cut: a line of text, a row, a photo with its title. */
export interface Chunk {
  height: number;
  /** Room above it; dropped at the top of a page. */
  space: number;
  /** Never the last of a page: what follows must stand on the same one. */
  keepWithNext: boolean;
  /** Photos whose bytes `paint` needs. */
  photoIds: readonly string[];
  bookmark?: Bookmark;
  /** Set above it once more where it comes first on a page: the head of its table. */
  headAgain?: Chunk;
  /** Belongs to the head of the sheet, which stands on a ruled ground. */
  onGround?: boolean;
  paint(page: Page, top: number): void;
}

export interface Bookmark {
  title: string;
  /** 0 for a section, 1 for a finding within it. */
  depth: 0 | 1;
}

export interface Placed {
  chunk: Chunk;
  top: number;
}

/**
 * Sets chunks down the pages. A run of chunks that keep together moves to the next page as a whole if it does not fit;
 * a run longer than a page is cut where it must be.
 *
 * Throws  RangeError if one chunk is higher than a page.
 * Check   tests/sheet/flow.test.ts
 */
export function flow(chunks: readonly Chunk[], { top, bottom }: { top: number; bottom: number }): Placed[][] {
  const pages: Placed[][] = [[]];
  let y = top;
  const turn = () => {
    pages.push([]);
    y = top;
  };
  const put = (chunk: Chunk) => {
    if (chunk.height > bottom - top) {
      throw new RangeError(`flow: a chunk must fit on a page of ${bottom - top}, got ${chunk.height}`);
    }
    if (y > top && y + chunk.space + chunk.height > bottom) turn();
    const again = chunk.headAgain;
    if (y === top && again !== undefined && again.height + chunk.space + chunk.height <= bottom - top) {
      pages.at(-1)?.push({ chunk: again, top });
      y = top + again.height;
    }
    const at = y === top ? top : y + chunk.space;
    pages.at(-1)?.push({ chunk, top: at });
    y = at + chunk.height;
  };
  for (const run of runsOf(chunks)) {
    const height = run.reduce((sum, chunk, place) => sum + chunk.height + (place === 0 ? 0 : chunk.space), 0);
    const room = bottom - (y === top ? top : y + (run[0]?.space ?? 0));
    if (y > top && height > room && height <= bottom - top) turn();
    run.forEach(put);
  }
  return pages;
}

function runsOf(chunks: readonly Chunk[]): Chunk[][] {
  const runs: Chunk[][] = [];
  let run: Chunk[] = [];
  for (const chunk of chunks) {
    run.push(chunk);
    if (chunk.keepWithNext) continue;
    runs.push(run);
    run = [];
  }
  return run.length === 0 ? runs : [...runs, run];
}
