import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Chunk, flow } from '../../src/sheet/pdf/flow.ts';

const PAGE = { top: 0, bottom: 100 };
const chunk = (height: number, given: Partial<Chunk> = {}): Chunk => ({
  height,
  space: 0,
  keepWithNext: false,
  photoIds: [],
  paint: () => undefined,
  ...given,
});
const tops = (chunks: Chunk[]) => flow(chunks, PAGE).map((placed) => placed.map(({ top }) => top));

it('fills a page of 100 to the last point and turns it for one point more', () => {
  expect(tops([chunk(60), chunk(40), chunk(1)])).toEqual([[0, 60], [0]]);
  expect(tops([chunk(60), chunk(41)])).toEqual([[0], [0]]);
});

it('leaves out the room above a chunk at the top of a page', () => {
  expect(tops([chunk(50, { space: 20 }), chunk(20, { space: 20 }), chunk(20, { space: 20 })])).toEqual([[0, 70], [0]]);
});

it('moves a heading to the next page with what it heads', () => {
  expect(tops([chunk(70), chunk(10, { keepWithNext: true }), chunk(40)])).toEqual([[0], [0, 10]]);
});

it('cuts a run that is longer than a page, and never loses a part of it', () => {
  const run = Array.from({ length: 12 }, () => chunk(10, { keepWithNext: true }));
  expect(tops([chunk(30), ...run]).map((page) => page.length)).toEqual([8, 5]);
});

it('refuses a chunk higher than a page', () => {
  expect(() => tops([chunk(101)])).toThrow(RangeError);
});

describe('for any chunks', () => {
  const chunks = fc.array(
    fc.record({ height: fc.integer({ min: 0, max: 100 }), space: fc.integer({ min: 0, max: 30 }), keep: fc.boolean() }),
    { maxLength: 40 },
  );

  it('places each once, in order, inside the page, none over another; a kept pair is parted only if its run is too long', () => {
    fc.assert(
      fc.property(chunks, (given) => {
        const made = given.map(({ height, space, keep }) => chunk(height, { space, keepWithNext: keep }));
        const pages = flow(made, PAGE);
        expect(pages.flat().map((placed) => placed.chunk)).toEqual(made);
        for (const page of pages) {
          page.forEach(({ top, chunk: { height } }, place) => {
            const before = page[place - 1];
            expect(top).toBeGreaterThanOrEqual(before === undefined ? 0 : before.top + before.chunk.height);
            expect(top + height).toBeLessThanOrEqual(100);
          });
        }
        const lastKept = pages.slice(0, -1).filter((page) => page.at(-1)?.chunk.keepWithNext);
        for (const page of lastKept) {
          const end = made.indexOf(page.at(-1)?.chunk ?? chunk(0));
          expect(runHeight(made, end)).toBeGreaterThan(100);
        }
      }),
      { numRuns: 400, seed: 7 },
    );
  });
});

/** Height of the kept run that the chunk at `place` belongs to. */
function runHeight(chunks: Chunk[], place: number): number {
  let first = place;
  while (chunks[first - 1]?.keepWithNext) first -= 1;
  let last = place;
  while (chunks[last]?.keepWithNext && last < chunks.length - 1) last += 1;
  return chunks.slice(first, last + 1).reduce((sum, { height, space }, at) => sum + height + (at === 0 ? 0 : space), 0);
}

it('sets the head of a table of 10 again on its second page, and not on its first', () => {
  const head = chunk(10, { keepWithNext: true });
  const rows = [
    chunk(40, { headAgain: head }),
    chunk(40, { headAgain: head }),
    chunk(40, { headAgain: head, space: 5 }),
  ];
  expect(tops([head, ...rows])).toEqual([
    [0, 10, 50],
    [0, 15],
  ]);
  expect(flow([head, ...rows], PAGE)[1]?.[0]?.chunk).toBe(head);
});

it('leaves the head out where a row would not fit under it', () => {
  const head = chunk(10);
  expect(tops([chunk(60), chunk(95, { headAgain: head })])).toEqual([[0], [0]]);
});
