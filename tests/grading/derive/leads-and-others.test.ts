import { describe, expect, it } from 'vitest';
import type { LiveTests } from '../../../src/schema/live-tests/live-tests.ts';
import { gradedItem, named } from './tests-of.ts';

type Kind = 'leads' | 'joints' | 'drains' | 'readOuts';
type Given<K extends Kind> = Omit<LiveTests[K][number], 'id' | 'made'>;

function some<K extends Kind>(kind: K, ...list: Given<K>[]): Partial<LiveTests> {
  return { [kind]: list.map((one, place) => ({ ...one, ...named(place) })) };
}

/** Allowable currents: 33 CFR 183.425 Table 5, 105 °C, 30 °C air: AWG 2 (33.6 mm²) 210 A, AWG 4 (21.2 mm²) 160 A. */
describe('the section of the main leads', () => {
  const nameplate = { continuousCurrentA: 200 };
  const cable = { place: 'main', form: 'cable', way: 'printed', insulationDegC: 105, metal: 'copper' } as const;

  it.each([
    ['AWG 2, 210 A, is sound for 200 A', [{ ...cable, printedAwg: '2' }], 'sound'],
    ['AWG 4, 160 A, is passable for 200 A (80 %)', [{ ...cable, printedAwg: '4' }], 'passable'],
    [
      'over its insulation says nothing',
      [{ ...cable, way: 'overInsulation' as const, diameterMm: 9 }],
      'sound passable weak failed',
    ],
  ])('%s', (_, leads, expected) => {
    expect(gradedItem('main-lead-section', { tests: some('leads', ...leads), nameplate }).grades).toBe(expected);
  });

  it('needs the continuous claim: without it nothing is derived', () => {
    const tests = some('leads', { ...cable, printedAwg: '2' });
    expect(gradedItem('main-lead-section', { tests }).measured).toBeNull();
  });
});

describe('the section of the cell links', () => {
  const nameplate = { continuousCurrentA: 100 };
  const link = { place: 'link', form: 'bar', widthMm: 20, thicknessMm: 1 } as const;

  it.each([
    // 100 A ÷ (20 mm × 1 mm) = 5 A/mm².
    ['5 A/mm² in copper is sound', [{ ...link, metal: 'copper' as const }], 'sound'],
    ['5 A/mm² in aluminium is passable', [{ ...link, metal: 'aluminium' as const }], 'passable'],
    ['two layers halve it', [{ ...link, metal: 'aluminium' as const, layers: 2 }], 'sound'],
    ['nickel is failed whatever its section', [{ ...link, metal: 'nickel' as const }], 'failed'],
  ])('%s', (_, leads, expected) => {
    expect(gradedItem('link-section', { tests: some('leads', ...leads), nameplate }).grades).toBe(expected);
  });
});

describe('terminals, standby and read-out', () => {
  it('scales a rise of 10 K at 50 A to 40 K at 100 A by the square: weak', () => {
    const tests = some('joints', { place: 'terminal', currentA: 50, jointDegC: 35, aroundDegC: 25 });
    const result = gradedItem('terminal-rise', { tests, nameplate: { continuousCurrentA: 100 } });
    expect(result.grades).toBe('weak');
    expect(result.measured?.found.alternatives[0]?.[0]?.figure).toEqual({ low: 40, high: 40 });
  });

  it.each([
    // 100 Ah ÷ 10 mA ÷ 24 = 416.7 days; ÷ 20 mA = 208.3; ÷ 50 mA = 83.3; ÷ 100 mA = 41.7.
    [10, 'sound'],
    [20, 'passable'],
    [50, 'weak'],
    [100, 'failed'],
    [0, 'sound'],
  ])('%d mA out of 100 Ah is %s', (currentMa, expected) => {
    const tests = some('drains', { currentMa });
    expect(gradedItem('standby-drain', { tests, nameplate: { ratedCapacityAh: 100 } }).grades).toBe(expected);
  });

  it('counts what it draws asleep, not awake, where both were measured: sound', () => {
    const tests = some('drains', { currentMa: 100, mode: 'awake' }, { currentMa: 10, mode: 'asleep' });
    expect(gradedItem('standby-drain', { tests, nameplate: { ratedCapacityAh: 100 } }).grades).toBe('sound');
  });

  it.each([
    ['8 m, no account', { way: 'wireless', connected: true, accountNeeded: false, rangeM: 8 }, 'sound'],
    ['3 m, no account', { way: 'wireless', connected: true, accountNeeded: false, rangeM: 3 }, 'passable'],
    ['an account', { way: 'wireless', connected: true, accountNeeded: true, rangeM: 8 }, 'weak'],
    ['no answer', { way: 'wireless', connected: false }, 'failed'],
    ['8 m, account not said', { way: 'wireless', connected: true, rangeM: 8 }, 'sound weak'],
    ['a cable', { way: 'cable', connected: true }, 'sound passable weak failed doesNotApply'],
  ] as const)('read-out: %s', (_, readOut, expected) => {
    expect(gradedItem('read-out', { tests: some('readOuts', readOut) }).grades).toBe(expected);
  });
});
