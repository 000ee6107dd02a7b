import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { codePasses } from '../../src/photos/code-passes.ts';

describe('codePasses', () => {
  it('looks at a photo of 2048 × 1536 px at 1600 px, then whole at 2048, then in two pieces of 1600', () => {
    const passes = codePasses({ widthPx: 2048, heightPx: 1536 });
    expect(passes.map((round) => round.map(({ leftPx, widthPx, scale }) => [leftPx, widthPx, scale]))).toEqual([
      [[0, 2048, 1600 / 2048]],
      [[0, 2048, 1]],
      [
        [0, 1600, 1],
        [448, 1600, 1],
      ],
    ]);
  });

  it('looks at one of 4096 × 3072 px at 1600, at 2400, then in nine pieces at full size', () => {
    const passes = codePasses({ widthPx: 4096, heightPx: 3072 });
    expect(passes.map((round) => round.length)).toEqual([1, 1, 9]);
    expect(passes.map((round) => round[0]?.scale)).toEqual([1600 / 4096, 2400 / 4096, 1]);
  });

  it('looks at a small one once, as it is', () => {
    expect(codePasses({ widthPx: 800, heightPx: 600 })).toEqual([
      [{ leftPx: 0, topPx: 0, widthPx: 800, heightPx: 600, scale: 1 }],
    ]);
  });

  it('leaves no spot out: every code up to 320 px lies whole in a piece, wherever it is', () => {
    const side = fc.integer({ min: 1700, max: 8200 });
    fc.assert(
      fc.property(side, side, fc.double({ min: 0, max: 1, noNaN: true }), (widthPx, heightPx, place) => {
        const tiles = codePasses({ widthPx, heightPx }).at(-1) ?? [];
        const code = { x: place * (widthPx - 320), y: (1 - place) * (heightPx - 320) };
        const whole = tiles.filter(
          ({ leftPx, topPx, widthPx: w, heightPx: h }) =>
            leftPx <= code.x + 1 && topPx <= code.y + 1 && leftPx + w >= code.x + 319 && topPx + h >= code.y + 319,
        );
        expect(whole.length).toBeGreaterThan(0);
      }),
    );
  });
});
