import fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { firmness } from '../../../src/grading/side-by-side/firmness.ts';
import type { FirmnessInput } from '../../../src/grading/side-by-side/side-by-side.ts';
import { VERDICTS } from '../../../src/schema/verdict.ts';
import { deepFreeze } from '../deep-freeze.ts';
import { firmInput } from './firm-packs.ts';

const DRAWS = 20_000;
/** Deviation of the count of what happens with probability p, DESIGN's draws being independent. */
const deviation = (p: number, draws = DRAWS) => Math.sqrt(draws * p * (1 - p));

function countAt(table: readonly (readonly number[])[], x: number, y: number): number {
  const count = table[x]?.[y];
  if (count === undefined) throw new Error(`no count at ${x}, ${y}`);
  return count;
}

describe('two packs and two zones without hazards', () => {
  // X stands above Y where the first weight w is over w* = b/(a + b), X being better by a in the first zone and worse by
  // b in the second. w ~ Beta(60·W1, 60·W2), W normalised: P = 1 − I(w*; 60·W1, 60·W2), by jstat 1.9.
  it.each([
    { weights: [1, 1], x: [0.8, 0.6], y: [0.7, 0.68] },
    { weights: [30, 70], x: [0.9, 0.5], y: [0.5, 0.7] },
    { weights: [3, 1], x: [0.75, 0.2], y: [0.65, 0.55] },
    { weights: [10, 90], x: [1, 0.4], y: [0.1, 0.45] },
  ])(
    'stands above as often as the beta distribution says, within 4 deviations: $weights, $x, $y',
    ({ weights, x, y }) => {
      const [w1 = 0, w2 = 0] = weights.map((weight) => weight / ((weights[0] ?? 0) + (weights[1] ?? 0)));
      const better = (x[0] ?? 0) - (y[0] ?? 0);
      const worse = (y[1] ?? 0) - (x[1] ?? 0);
      const p = 1 - jstat.jStat.beta.cdf(worse / (better + worse), 60 * w1, 60 * w2);
      expect(p).toBeGreaterThan(0.02);
      expect(p).toBeLessThan(0.98);
      const found = firmness(firmInput(weights, { x: { q: x }, y: { q: y } }), { draws: DRAWS, seed: 5 });
      expect(Math.abs(countAt(found.above, 0, 1) - DRAWS * p)).toBeLessThan(4 * deviation(p));
      // No draw ties: the other stands above in all the rest, and either leads where it does.
      expect(countAt(found.above, 1, 0)).toBe(DRAWS - countAt(found.above, 0, 1));
      expect(found.leads).toEqual([countAt(found.above, 0, 1), countAt(found.above, 1, 0)]);
      expect(found.orderHolds).toBe(found.leads[w1 > worse / (better + worse) ? 0 : 1]);
    },
  );
});

describe('four packs and six zones with hazards', () => {
  const input = firmInput([10, 20, 20, 10, 22, 18], {
    wren: { q: [0.9, 0.5, 0.8, 0.7, 0.6, 0.9], risks: { high: 0, serious: 1, medium: 2 } },
    dipper: { q: [0.7, 0.8, 0.6, 0.9, 0.5, 0.8], risks: { high: 0, serious: 1, medium: 1 } },
    siskin: { q: [0.95, 0.9, 0.9, null, 0.9, 0.85], risks: { high: 1, serious: 0, medium: 0 } },
    merlin: { q: [0.8, 0.6, 0.75, 0.6, 0.65, 0.85], risks: { high: 0, serious: 1, medium: 2 } },
  });

  // numpy 2.4.6, 4,000,000 draws: python3 -m pip install numpy==2.4.6, then
  //   n = 4_000_000; r = np.random.default_rng(20261125); W = np.array([10, 20, 20, 10, 22, 18.0])
  //   w = r.dirichlet(60 * W / W.sum(), n); k = [r.uniform(a, b, n) for a, b in ((.3, .5), (.6, .8), (.9, .99))]
  //   for q, c in packs: live = ~np.isnan(q); build = 100 * (w[:, live] @ q[live]) / w[:, live].sum(axis=1)
  //     scores.append(build * k[0] ** c[0] * k[1] ** c[1] * k[2] ** c[2])
  //   above = s[:, None, :] > s[None, :, :]; print(above.mean(axis=2))
  //   leads: above in all three; order holds: all pairs as at W and 0.40, 0.70, 0.95 (scores 45.11 46.15 35.82 44.60)
  const ABOVE = [
    [0, 0.270482, 0.890955, 0.8015925],
    [0.729518, 0, 0.93094225, 0.82443975],
    [0.109045, 0.06905775, 0, 0.1210515],
    [0.1984075, 0.17556025, 0.8789485, 0],
  ];
  const LEADS = [0.242554, 0.67213075, 0.0635, 0.02181525];
  const ORDER_HOLDS = 0.469679;
  const found = firmness(input, { draws: DRAWS, seed: 1 });

  // The reference has an error too, which 4 million draws make √200 times smaller: 4.02 deviations leave room for it.
  const expectNear = (count: number, p: number) =>
    expect(Math.abs(count - DRAWS * p)).toBeLessThanOrEqual(4.02 * deviation(p));

  it('has the scores 45.10695, 46.151, 35.82222 and 44.60155 at the definition’s own weights', () => {
    const scores = [45.10695, 46.151, 35.8222222222, 44.60155];
    expect(input.packs.map(({ score }) => score.low)).toEqual(scores.map((score) => expect.closeTo(score, 9)));
  });

  it('agrees with numpy on how often each stands above each, such as Dipper above Wren in 73 of 100', () => {
    for (const [x, row] of ABOVE.entries())
      for (const [y, p] of row.entries()) expectNear(countAt(found.above, x, y), p);
  });

  it('agrees with numpy on who leads: Dipper in 67 of 100; and that the whole order holds in 47', () => {
    for (const [place, p] of LEADS.entries()) expectNear(found.leads[place] ?? Number.NaN, p);
    expectNear(found.orderHolds, ORDER_HOLDS);
    expect(found.noneLeads).toBe(0);
    expect(found.leads.reduce((sum, count) => sum + count, 0)).toBe(DRAWS);
  });
});

describe('verdicts', () => {
  it('do not move: the better one stands above in all 1000 draws, whatever the scores', () => {
    const input = firmInput([1, 2], {
      poor: { q: [1, 1], verdict: 'keepOut' },
      good: { q: [0.1, 0.1], verdict: 'notAsItComes' },
    });
    expect(firmness(input, { draws: 1000, seed: 3 })).toEqual({
      draws: 1000,
      seed: 3,
      packIds: ['poor', 'good'],
      leads: [0, 1000],
      noneLeads: 0,
      above: [
        [0, 0],
        [1000, 0],
      ],
      orderHolds: 1000,
    });
  });

  it('that are not settled let no score decide: a tie in all 1000 draws, and none leads', () => {
    const { zoneWeights, packs } = firmInput([1, 2], { x: { q: [1, 1] }, y: { q: [0.1, 0.1] } });
    const unsettled = packs.map((pack) => ({
      ...pack,
      verdict: { low: 'keepOut' as const, high: 'noFinding' as const, settled: false },
    }));
    const found = firmness({ zoneWeights, packs: unsettled }, { draws: 1000, seed: 3 });
    expect(found).toMatchObject({ leads: [0, 0], noneLeads: 1000, orderHolds: 1000 });
    expect(found.above.flat()).toEqual([0, 0, 0, 0]);
  });

  it('settled alike, ranges that overlap tie: 0.5–0.7 and 0.6–0.9 in both zones', () => {
    const { zoneWeights, packs } = firmInput([1, 2], { x: { q: [0.5, 0.5] }, y: { q: [0.9, 0.9] } });
    const wide = packs.map((pack, place) => {
      const q = place === 0 ? { low: 0.5, high: 0.7 } : { low: 0.6, high: 0.9 };
      return { ...pack, zones: [q, q], score: { low: 100 * q.low, high: 100 * q.high } };
    });
    expect(firmness({ zoneWeights, packs: wide }, { draws: 500, seed: 3 })).toMatchObject({
      noneLeads: 500,
      orderHolds: 500,
    });
  });
});

describe('any packs', () => {
  const range = fc
    .tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }))
    .map(([a, b]) => ({ low: Math.min(a, b), high: Math.max(a, b) }));
  const counts = fc.record({ high: fc.nat(3), serious: fc.nat(3), medium: fc.nat(3) });
  /** The low end has every hazard of the high one, and more. */
  const risksArb = fc.tuple(counts, counts).map(([high, more]) => ({
    high,
    low: { high: high.high + more.high, serious: high.serious + more.serious, medium: high.medium + more.medium },
  }));
  const verdict = fc.constantFrom(...VERDICTS.slice(1, 4));
  const packArb = (zoneCount: number) =>
    fc.record({
      verdict: fc.tuple(verdict, verdict).map(([a, b]) => {
        const [low, high] = VERDICTS.indexOf(a) < VERDICTS.indexOf(b) ? [a, b] : [b, a];
        return { low, high, settled: low === high };
      }),
      score: range.map(({ low, high }) => ({ low: 100 * low, high: 100 * high })),
      zones: fc.array(fc.option(range), { minLength: zoneCount, maxLength: zoneCount }),
      risks: risksArb,
    });
  const inputArb: fc.Arbitrary<FirmnessInput> = fc.integer({ min: 1, max: 6 }).chain((zoneCount) =>
    fc
      .record({
        zoneWeights: fc.array(fc.double({ min: 0.01, max: 30, noNaN: true }), {
          minLength: zoneCount,
          maxLength: zoneCount,
        }),
        packs: fc
          .array(packArb(zoneCount), { minLength: 2, maxLength: 8 })
          .map((packs) => packs.map((pack, place) => ({ packId: `pack-${place}`, ...pack }))),
      })
      .map(deepFreeze),
  );
  const RUNS = { numRuns: 150 };
  const DRAW = { draws: 40, seed: 17 };

  it('give the same counts for the same seed, and never more than the draws for a pair and its reverse', () => {
    fc.assert(
      fc.property(inputArb, (input) => {
        const found = firmness(input, DRAW);
        expect(firmness(input, DRAW)).toEqual(found);
        for (const x of input.packs.keys()) {
          for (const y of input.packs.keys()) {
            expect(countAt(found.above, x, y) + countAt(found.above, y, x)).toBeLessThanOrEqual(DRAW.draws);
          }
        }
        expect(found.leads.reduce((sum, count) => sum + count, found.noneLeads)).toBe(DRAW.draws);
      }),
      RUNS,
    );
  });

  it('give the same counts in any order', () => {
    fc.assert(
      fc.property(inputArb, (input) => {
        const found = firmness(input, DRAW);
        const turned = firmness({ ...input, packs: input.packs.toReversed() }, DRAW);
        expect(turned).toEqual({
          ...found,
          packIds: found.packIds.toReversed(),
          leads: found.leads.toReversed(),
          above: found.above.toReversed().map((row) => row.toReversed()),
        });
      }),
      RUNS,
    );
  });

  it('tie always with a pack that is the same', () => {
    fc.assert(
      fc.property(inputArb, (input) => {
        const [first] = input.packs;
        if (first === undefined) throw new Error('there is a first');
        const packs = [first, { ...first, packId: 'twin' }];
        const found = firmness({ ...input, packs }, DRAW);
        expect(found).toMatchObject({ leads: [0, 0], noneLeads: DRAW.draws, orderHolds: DRAW.draws });
        expect(found.above.flat()).toEqual([0, 0, 0, 0]);
      }),
      RUNS,
    );
  });
});

it('gives other counts for another seed', () => {
  const input = firmInput([1, 1], { x: { q: [0.8, 0.6] }, y: { q: [0.7, 0.7] } });
  const leads = [1, 2, 3, 4].map((seed) => firmness(input, { draws: 1000, seed }).leads[0]);
  expect(new Set(leads).size).toBeGreaterThan(1);
});

describe('refuses', () => {
  const input = firmInput([1, 1], { x: { q: [0.8, 0.6] }, y: { q: [0.7, 0.7] } });
  it.each([
    ['one pack', { ...input, packs: input.packs.slice(1) }, { draws: 10, seed: 1 }],
    ['no draw', input, { draws: 0, seed: 1 }],
    ['half a draw', input, { draws: 1.5, seed: 1 }],
    ['half a seed', input, { draws: 10, seed: 0.5 }],
    ['a pack with a zone too few', { ...input, zoneWeights: [1, 1, 1] }, { draws: 10, seed: 1 }],
    ['a zone without weight', { ...input, zoneWeights: [1, 0] }, { draws: 10, seed: 1 }],
  ])('%s', (_name, wrong, draws) => {
    expect(() => firmness(wrong, draws)).toThrow(RangeError);
  });
});
