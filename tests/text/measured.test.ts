import { describe, expect, it } from 'vitest';
import { DERIVATIONS, type DerivationName } from '../../src/schema/figures.ts';
import { derivedWords, figureWords } from '../../src/text/measured.ts';

const plain = (words: string) => words.replaceAll('\u00a0', ' ');

describe('a figure in words', () => {
  it.each([
    [{ low: 3.65, high: 3.65 }, 'V', '3.65 V'],
    [{ low: 3.7, high: Infinity }, 'V', '3.7 V or more'],
    [{ low: -Infinity, high: 2.5 }, 'V', '2.5 V or less'],
    [{ low: -Infinity, high: Infinity }, 'V', 'a figure that was not read'],
    [{ low: Infinity, high: Infinity }, 'days', 'no end in sight'],
    [{ low: 1.5, high: 1.5 }, '×', '1.5 times'],
  ])('%o %s is %s', (figure, unit, expected) => {
    expect(plain(figureWords(figure, unit))).toBe(expected);
  });
});

it('says of a read-out that answered, its distance not noted, just that', () => {
  const any = { low: 0, high: Infinity };
  expect(derivedWords('readOut', { case: 'free', figure: any }, 'm')).toBe(
    'answers, from how far is not noted, no account',
  );
  expect(plain(derivedWords('readOut', { case: 'free', figure: { low: 8, high: Infinity } }, 'm'))).toBe(
    'answers at 8 m or more, no account',
  );
});

describe('a trial that ended before anything acted is not told as a cut', () => {
  it.each([
    ['coldCharge', 'blocked', { low: -Infinity, high: -10, open: 'high' }, 'charging still on at −10 °C'],
    ['hot', 'withoutSwitch', { low: 80, high: Infinity, open: 'low' }, 'BMS had not cut at 80 °C, no thermal switch'],
    ['highVoltage', 'any', { low: 3.8, high: Infinity, open: 'low' }, 'highest cell 3.8 V, not cut'],
    ['lowVoltage', 'any', { low: -Infinity, high: 2, open: 'high' }, 'lowest cell 2 V, not cut'],
    [
      'chargeCurrent',
      'any',
      { low: 2, high: Infinity, open: 'low' },
      '2 times the printed charge current let in for a minute',
    ],
    ['overCurrent', 'opened', { low: 30, high: Infinity, open: 'low' }, 'carried for 30 s without opening'],
    ['coldCharge', 'blocked', { low: -4, high: -4 }, 'charging blocked at −4 °C'],
  ] as const)('%s %s %o: %s', (from, name, figure, expected) => {
    expect(plain(derivedWords(from, { case: name, figure }, DERIVATIONS[from].unit))).toBe(expected);
  });
});

it('has words for every case of every derivation, and refuses any other', () => {
  for (const from of Object.keys(DERIVATIONS) as DerivationName[]) {
    for (const name of DERIVATIONS[from].cases) {
      expect(derivedWords(from, { case: name, figure: { low: 1, high: 1 } }, '').length).toBeGreaterThan(0);
    }
    expect(() => derivedWords(from, { case: 'toString' }, '')).toThrow(RangeError);
  }
});
