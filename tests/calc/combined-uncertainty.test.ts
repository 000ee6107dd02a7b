import { describe, expect, it } from 'vitest';
import {
  type Correlation,
  combinedUncertainty,
  type UncertaintyComponent,
} from '../../src/calc/combined-uncertainty.ts';

// JCGM 100 (GUM) H.1 as coded in MSLNZ/GTC (docs/API/GUM_H1.rst, examples/GUM_H1.py): result 50 000 838(32) nm.
it('gives the 32 nm of GUM H.1 from its six components in nm', () => {
  const components = [25, 5.8, 3.9, 6.7, 16.599, 2.88679].map((uncertainty) => ({ sensitivity: 1, uncertainty }));
  expect(Math.round(combinedUncertainty(Object.freeze(components)))).toBe(32);
});

// MSLNZ/GTC README: R = V/I with 0.1(0.001) V and 0.015(0.0005) A is 6.67(23) Ω.
it('gives 0.23 Ω for 0.1 V ± 1 mV over 15 mA ± 0.5 mA', () => {
  const components = [
    { sensitivity: 1 / 0.015, uncertainty: 0.001 },
    { sensitivity: -0.1 / 0.015 ** 2, uncertainty: 0.0005 },
  ];
  expect(combinedUncertainty(components)).toBeCloseTo(0.23, 2);
});

// JCGM 100 (GUM) H.2 as coded in MSLNZ/GTC (docs/API/GUM_H2.rst): R = V/I·cos φ, X = V/I·sin φ, Z = V/I.
describe('GUM H.2, three correlated inputs', () => {
  const [V, I, phi] = [4.999, 0.019661, 1.04446];
  const uncertainties = [0.0032, 9.5e-6, 0.00075];
  const correlations: Correlation[] = [
    { between: [0, 1], r: -0.36 },
    { between: [0, 2], r: 0.86 },
    { between: [1, 2], r: -0.65 },
  ];
  const R = (V / I) * Math.cos(phi);
  const X = (V / I) * Math.sin(phi);
  const Z = V / I;
  // Partial derivatives with respect to V, I and φ, by hand.
  const ofR = [R / V, -R / I, -X];
  const ofX = [X / V, -X / I, R];
  const ofZ = [Z / V, -Z / I, 0];
  const componentsOf = (sensitivities: number[]): UncertaintyComponent[] =>
    sensitivities.map((sensitivity, place) => ({ sensitivity, uncertainty: uncertainties[place]! }));
  const uncertaintyOf = (sensitivities: number[]) => combinedUncertainty(componentsOf(sensitivities), correlations);
  /** From u²(A + B) = u²(A) + u²(B) + 2·r·u(A)·u(B). */
  const correlationOf = (one: number[], other: number[]) => {
    const sum = one.map((value, place) => value + other[place]!);
    const [uOne, uOther] = [uncertaintyOf(one), uncertaintyOf(other)];
    return (uncertaintyOf(sum) ** 2 - uOne ** 2 - uOther ** 2) / (2 * uOne * uOther);
  };

  it('starts from R 127.732 Ω, X 219.85 Ω, Z 254.26 Ω', () => {
    expect(R).toBeCloseTo(127.732, 3);
    expect(X).toBeCloseTo(219.85, 2);
    expect(Z).toBeCloseTo(254.26, 2);
  });

  it('gives u(R) 0.07, u(X) 0.30, u(Z) 0.24 Ω', () => {
    expect(uncertaintyOf(ofR)).toBeCloseTo(0.07, 2);
    expect(uncertaintyOf(ofX)).toBeCloseTo(0.3, 2);
    expect(uncertaintyOf(ofZ)).toBeCloseTo(0.24, 2);
  });

  it('gives the correlations R–X −0.59, R–Z −0.49, X–Z 0.99', () => {
    expect(correlationOf(ofR, ofX)).toBeCloseTo(-0.59, 2);
    expect(correlationOf(ofR, ofZ)).toBeCloseTo(-0.49, 2);
    expect(correlationOf(ofX, ofZ)).toBeCloseTo(0.99, 2);
  });

  it('would give 0.19 Ω for u(R) without them (by hand, root of the squares of 0.0818, 0.0617 and 0.1649)', () => {
    expect(combinedUncertainty(componentsOf(ofR))).toBeCloseTo(Math.hypot(0.0818, 0.0617, 0.1649), 3);
  });
});

describe('closed forms', () => {
  const pair = [
    { sensitivity: 1, uncertainty: 3 },
    { sensitivity: -2, uncertainty: 2 },
  ];
  it('adds 3 and 4 to 5 when independent', () => expect(combinedUncertainty(pair)).toBe(5));
  it('leaves 1 of 3 and −4 when fully correlated', () =>
    expect(combinedUncertainty(pair, [{ between: [0, 1], r: 1 }])).toBe(1));
  it('makes 7 of them when fully anticorrelated', () =>
    expect(combinedUncertainty(pair, [{ between: [1, 0], r: -1 }])).toBe(7));
  it('cancels 0.1 and 0.6 against 0.7 to 0, where the rounded sum of squares comes out at −1e-16', () => {
    const cancelling = [0.1, 0.6, 0.7].map((uncertainty) => ({ sensitivity: 1, uncertainty }));
    const fully: Correlation[] = [
      { between: [0, 1], r: 1 },
      { between: [0, 2], r: -1 },
      { between: [1, 2], r: -1 },
    ];
    expect(combinedUncertainty(cancelling, fully)).toBe(0);
  });
  it('is 0 of no component', () => expect(combinedUncertainty([])).toBe(0));
});

describe('bad input', () => {
  const three = [1, 1, 1].map((uncertainty) => ({ sensitivity: 1, uncertainty }));
  it.each<[string, UncertaintyComponent[], Correlation[]]>([
    ['sensitivity must be finite, got NaN', [{ sensitivity: Number.NaN, uncertainty: 1 }], []],
    ['uncertainty must be 0 or more, got -1', [{ sensitivity: 1, uncertainty: -1 }], []],
    ['r must be within ±1, got 1.1', three, [{ between: [0, 1], r: 1.1 }]],
    ['a pair must be two places, named once, got 0, 3', three, [{ between: [0, 3], r: 0 }]],
    ['a pair must be two places, named once, got 1, 1', three, [{ between: [1, 1], r: 1 }]],
    [
      'a pair must be two places, named once, got 1, 0',
      three,
      [
        { between: [0, 1], r: 0.5 },
        { between: [1, 0], r: 0.5 },
      ],
    ],
    [
      // Three things cannot each be the opposite of both others: 3 − 6 = −3.
      'correlations must agree, got a variance of -3',
      three,
      [
        { between: [0, 1], r: -1 },
        { between: [0, 2], r: -1 },
        { between: [1, 2], r: -1 },
      ],
    ],
  ])('is refused: %s', (message, components, correlations) => {
    expect(() => combinedUncertainty(components, correlations)).toThrow(
      new RangeError(`combinedUncertainty: ${message}`),
    );
  });
});
