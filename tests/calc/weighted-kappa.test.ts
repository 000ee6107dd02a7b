import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linearWeight, sameOnly, weightedKappa } from '../../src/calc/weighted-kappa.ts';

// Expected: statsmodels 0.15.0,
//   from statsmodels.stats.inter_rater import cohens_kappa
//   k = cohens_kappa(numpy.array(table), wt='linear'); k.kappa, k.std_kappa, k.kappa_low, k.kappa_upp
// and wt=None for the same grade or not.
const LINEAR: [name: string, table: number[][], kappa: number, error: number, low: number, high: number][] = [
  [
    'even',
    [
      [10, 2, 0, 0],
      [1, 8, 2, 0],
      [0, 3, 6, 1],
      [0, 0, 1, 6],
    ],
    0.7888067581837381,
    0.06286080329221966,
    0.6656018476917307,
    0.9120116686757456,
  ],
  [
    'mostly sound',
    [
      [44, 5, 1, 0],
      [3, 2, 1, 0],
      [0, 1, 1, 1],
      [0, 0, 0, 2],
    ],
    0.626119754832626,
    0.11013394690007683,
    0.41026118543322865,
    0.8419783242320235,
  ],
  [
    'a row of noughts',
    [
      [12, 3, 0, 1],
      [0, 0, 0, 0],
      [2, 1, 4, 1],
      [0, 1, 0, 3],
    ],
    0.5983606557377048,
    0.12556932159282805,
    0.35224930785263403,
    0.8444720036227755,
  ],
  [
    'one step in fifteen',
    [
      [5, 0, 0, 0],
      [0, 4, 1, 0],
      [0, 0, 3, 0],
      [0, 0, 0, 2],
    ],
    0.9416342412451362,
    0.05793057663727927,
    0.8280923974324313,
    1.055176085057841,
  ],
  [
    'worse than chance',
    [
      [0, 1, 3, 6],
      [1, 2, 2, 3],
      [4, 2, 1, 0],
      [6, 2, 0, 1],
    ],
    -0.4609375,
    0.09012319808513075,
    -0.6375757224184255,
    -0.2842992775815745,
  ],
  [
    'very skewed',
    [
      [300, 20, 2, 1],
      [15, 4, 1, 0],
      [3, 1, 0, 1],
      [0, 0, 0, 0],
    ],
    0.18459983460442886,
    0.07695349562086705,
    0.03377375470306865,
    0.33542591450578907,
  ],
];
const UNWEIGHTED: [name: string, table: number[][], kappa: number, error: number][] = [
  [
    'even',
    [
      [10, 2, 0, 0],
      [1, 8, 2, 0],
      [0, 3, 6, 1],
      [0, 0, 1, 6],
    ],
    0.6627318718381113,
    0.09268527204112183,
  ],
  [
    'mostly sound',
    [
      [44, 5, 1, 0],
      [3, 2, 1, 0],
      [0, 1, 1, 1],
      [0, 0, 0, 2],
    ],
    0.4403669724770642,
    0.12036548838659047,
  ],
  [
    'two by two',
    [
      [20, 5],
      [10, 15],
    ],
    0.3999999999999999,
    0.12699606293110033,
  ],
];

describe('kappa with linear weights', () => {
  it.each(LINEAR)(
    '%s: kappa, standard error and limits of statsmodels 0.15.0 to 1e-12',
    (_, table, kappa, error, low, high) => {
      const found = weightedKappa(table);
      expect(found?.kappa).toBeCloseTo(kappa, 12);
      expect(found?.standardError).toBeCloseTo(error, 12);
      expect(found?.interval?.low).toBeCloseTo(low, 12);
      expect(found?.interval?.high).toBeCloseTo(Math.min(1, high), 12);
      expect(found?.interval?.isCut).toBe(high > 1);
    },
  );

  it.each(UNWEIGHTED)('the same grade or not, %s: statsmodels 0.15.0 to 1e-12', (_, table, kappa, error) => {
    const found = weightedKappa(table, sameOnly);
    expect(found?.kappa).toBeCloseTo(kappa, 12);
    expect(found?.standardError).toBeCloseTo(error, 12);
  });

  // By hand: observed 35/50, by chance 0.5·0.6 + 0.5·0.4 = 0.5.
  it('two by two, 35 of 50 alike where chance gives half: 0.4, weighted or not', () => {
    const table = [
      [20, 5],
      [10, 15],
    ];
    expect(weightedKappa(table)?.observedFrac).toBeCloseTo(0.7, 15);
    expect(weightedKappa(table)?.chanceFrac).toBeCloseTo(0.5, 15);
    expect(weightedKappa(table)?.kappa).toBeCloseTo(0.4, 14);
    expect(weightedKappa(table, sameOnly)?.kappa).toBeCloseTo(0.4, 14);
  });

  it('weighs four grades 1, 2/3, 1/3 and 0', () => {
    expect([0, 1, 2, 3].map((place) => linearWeight(0, place, 4))).toEqual([1, 1 - 1 / 3, 1 - 2 / 3, 0]);
  });
});

describe('what cannot be told', () => {
  const onlySound = (count: number) => [
    [count, 0, 0, 0],
    [0, 0, 0, 0],
    [0, 0, 0, 0],
    [0, 0, 0, 0],
  ];
  it.each([
    ['no item', onlySound(0)],
    [
      'one item',
      [
        [0, 0, 0, 0],
        [0, 0, 0, 0],
        [0, 0, 0, 1],
        [0, 0, 0, 0],
      ],
    ],
    ['thirty items, all sound to both', onlySound(30)],
    [
      'seven items, all passable to both',
      [
        [0, 0, 0, 0],
        [0, 7, 0, 0],
        [0, 0, 0, 0],
        [0, 0, 0, 0],
      ],
    ],
  ])('%s: null', (_, table) => {
    expect(weightedKappa(table)).toBeNull();
  });

  it('agreed on all fourteen of four grades: kappa 1, standard error 0, and no interval', () => {
    const found = weightedKappa([
      [5, 0, 0, 0],
      [0, 4, 0, 0],
      [0, 0, 3, 0],
      [0, 0, 0, 2],
    ]);
    expect(found).toMatchObject({ kappa: 1, standardError: 0, interval: null });
  });

  it('one reader found all of three sound, the other two of them: kappa 0, and no interval', () => {
    const found = weightedKappa([
      [2, 1, 0, 0],
      [0, 0, 0, 0],
      [0, 0, 0, 0],
      [0, 0, 0, 0],
    ]);
    expect(found?.kappa).toBeCloseTo(0, 14);
    expect(found?.interval).toBeNull();
  });

  it.each([
    ['no square', [[1, 2], [3]]],
    ['one grade', [[4]]],
    [
      'below nothing',
      [
        [1, -1],
        [0, 2],
      ],
    ],
    [
      'half an item',
      [
        [1, 0.5],
        [0, 2],
      ],
    ],
    [
      'no number',
      [
        [1, Number.NaN],
        [0, 2],
      ],
    ],
  ])('refuses bad input: %s', (_, table) => {
    expect(() => weightedKappa(table)).toThrow(RangeError);
  });
});

describe('for any table of four grades', () => {
  const tables = fc.array(fc.array(fc.nat(40), { minLength: 4, maxLength: 4 }), { minLength: 4, maxLength: 4 });
  const turned = (table: number[][]) => table.map((_, row) => table.map((line) => line[row] ?? 0));

  it('stays the same when the readers change places', () => {
    fc.assert(
      fc.property(tables, (table) => {
        const [one, other] = [weightedKappa(table), weightedKappa(turned(table))];
        expect(other === null).toBe(one === null);
        if (one === null || other === null) return;
        expect(other.kappa).toBeCloseTo(one.kappa, 10);
        expect(other.standardError).toBeCloseTo(one.standardError, 10);
      }),
    );
  });

  it('is at most 1, and 1 exactly where every count stands on the diagonal', () => {
    fc.assert(
      fc.property(tables, fc.boolean(), (table, diagonal) => {
        const given = diagonal ? table.map((row, place) => row.map((n, column) => (column === place ? n : 0))) : table;
        const found = weightedKappa(given);
        if (found === null) return;
        const alike = given.every((row, place) => row.every((n, column) => n === 0 || column === place));
        expect(found.kappa).toBeLessThanOrEqual(1 + 1e-12);
        expect(Math.abs(found.kappa - 1) < 1e-12).toBe(alike);
      }),
    );
  });
});
