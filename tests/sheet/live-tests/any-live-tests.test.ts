import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LiveContext } from '../../../src/sheet/model/live-tests/live-context.ts';
import { liveTestsBlocks } from '../../../src/sheet/model/live-tests/live-tests-blocks.ts';
import type { Block } from '../../../src/sheet/model/sheet.ts';
import { deepFreeze } from '../../grading/deep-freeze.ts';
import { arbitraryContext } from './arbitrary-context.ts';
import { numbersOf, plots, results, said, textsOf } from './texts-of.ts';

/** Figures as they are met at a bench, and figures as far out as a number can be. */
const BENCH = { least: 0.01, most: 5000 };
const FAR_OUT = { least: Number.MIN_VALUE, most: Number.MAX_VALUE };
/** A figure that was not there, or was none, printed as a word. */
const BROKEN = /undefined|\bnull\b|NaN|Infinity|\[object/;

/** Texts that are broken; what a tester typed may read so. */
function brokenTexts(blocks: readonly Block[], context: LiveContext): string[] {
  const typed = textsOf([context.tests, context.nameplate]).filter((text) => BROKEN.test(text));
  return textsOf(blocks).filter((text) => BROKEN.test(text) && !typed.some((own) => text.includes(own.trim())));
}

describe('any live tests at all', () => {
  it.each([
    ['met at a bench', BENCH],
    ['as far out as numbers go', FAR_OUT],
  ])(
    'print no broken figure, draw only finite marks and share no id or label, of figures %s, in 100 trials',
    (_, reach) => {
      fc.assert(
        fc.property(arbitraryContext(reach), (context) => {
          const blocks = liveTestsBlocks(deepFreeze(context));
          expect(brokenTexts(blocks, context)).toEqual([]);
          for (const { drawing, caption } of plots(blocks)) {
            expect(numbersOf(drawing).filter((value) => !Number.isFinite(value))).toEqual([]);
            expect(drawing.alt.length).toBeGreaterThan(10);
            expect(caption.length).toBeGreaterThan(10);
          }
          expect(twice(results(blocks).map(({ id }) => id))).toEqual([]);
          for (const { rows, working } of results(blocks)) {
            expect(twice(rows.map(({ label }) => label))).toEqual([]);
            expect(twice(working?.inputs.map(({ label }) => label) ?? [])).toEqual([]);
            expect(working?.sources.length ?? 1).toBeGreaterThan(0);
          }
        }),
        { numRuns: 100 },
      );
    },
  );

  it('are worked out in every matter where the figures are met at a bench, and come to the same twice, in 60 trials', () => {
    fc.assert(
      fc.property(arbitraryContext(BENCH), (context) => {
        const blocks = liveTestsBlocks(context);
        expect(said(blocks).filter((text) => text.includes('out of all reach'))).toEqual([]);
        expect(liveTestsBlocks(structuredClone(context))).toEqual(blocks);
      }),
      { numRuns: 60 },
    );
  });
});

function twice(names: readonly string[]): string[] {
  return names.filter((name, place) => names.indexOf(name) !== place);
}
