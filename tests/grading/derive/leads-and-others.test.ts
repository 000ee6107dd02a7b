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
      'AWG 4 beside one that is not measured may be worse',
      [
        { ...cable, printedAwg: '4' },
        { place: 'main' as const, form: 'cable' as const },
      ],
      'passable weak failed',
    ],
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
    // The sentences name copper, aluminium, nickel and steel: of brass they say nothing.
    ['brass is not graded', [{ ...link, metal: 'brass' as const }], 'sound passable weak failed'],
    [
      'one link of brass may be worse than a sound one',
      [
        { ...link, metal: 'copper' as const },
        { ...link, metal: 'brass' as const },
      ],
      'sound passable weak failed',
    ],
    [
      'a link not measured may be worse than a sound one',
      [
        { ...link, metal: 'copper' as const },
        { place: 'link' as const, form: 'bar' as const, metal: 'copper' as const },
      ],
      'sound passable weak failed',
    ],
    [
      'a link of unknown metal may be worse than a passable one',
      [{ ...link, thicknessMm: 0.7, metal: 'copper' as const }, { ...link }],
      'passable weak failed',
    ],
    // 20 ± 1 mm by photo: 100 ÷ 21 = 4.8 to 100 ÷ 19 = 5.3 A/mm², on both sides of 5.
    [
      'a width of 20 ± 1 mm by photo leaves two grades',
      [{ ...link, metal: 'copper' as const, byPhoto: { mm: 20, plusMinusMm: 1 } }],
      'sound passable',
    ],
  ])('%s', (_, leads, expected) => {
    expect(gradedItem('link-section', { tests: some('leads', ...leads), nameplate }).grades).toBe(expected);
  });
});

describe('terminals, standby and read-out', () => {
  it('scales a rise of 10 K at 50 A to 40 K at 100 A by the square: weak', () => {
    const tests = some('joints', { place: 'terminal', currentA: 50, afterMin: 30, jointDegC: 35, aroundDegC: 25 });
    const result = gradedItem('terminal-rise', { tests, nameplate: { continuousCurrentA: 100 } });
    expect(result.grades).toBe('weak');
    expect(result.measured?.found.alternatives[0]?.[0]?.figure).toEqual({ low: 40, high: 40 });
  });

  // The checklist asks for half an hour, and for a quarter of the printed current or more.
  it.each([
    [
      '5 K after 29 min: it may still rise',
      { currentA: 100, afterMin: 29, jointDegC: 30 },
      'sound passable weak failed',
    ],
    ['40 K after 2 min', { currentA: 100, afterMin: 2, jointDegC: 65 }, 'weak failed'],
    ['5 K after a time that was not noted', { currentA: 100, jointDegC: 30 }, 'sound passable weak failed'],
    ['5 K after 30 min', { currentA: 100, afterMin: 30, jointDegC: 30 }, 'sound'],
    // 1 K at 25 A is 16 K at 100 A; at 24 A it is too little to be brought over, and at least 1 K.
    ['1 K at 25 A', { currentA: 25, afterMin: 30, jointDegC: 26 }, 'sound'],
    ['1 K at 24 A', { currentA: 24, afterMin: 30, jointDegC: 26 }, 'sound passable weak failed'],
    ['21 K at 24 A', { currentA: 24, afterMin: 30, jointDegC: 46 }, 'passable weak failed'],
  ])('a terminal of a 100 A pack: %s', (_, joint, expected) => {
    const tests = some('joints', { place: 'terminal', aroundDegC: 25, ...joint });
    expect(gradedItem('terminal-rise', { tests, nameplate: { continuousCurrentA: 100 } }).grades).toBe(expected);
  });

  it('a terminal that was measured applies, although somebody said that no load was at hand: failed', () => {
    const tests = some('joints', { place: 'terminal', currentA: 100, afterMin: 30, jointDegC: 90, aroundDegC: 25 });
    const answer = { kind: 'doesNotApply', reason: 'No load of a quarter of the printed current was at hand' } as const;
    expect(gradedItem('terminal-rise', { tests, nameplate: { continuousCurrentA: 100 }, answer })).toMatchObject({
      grades: 'failed',
      because: 'measured',
    });
  });

  it.each([
    // Asleep it draws no more than awake: 100 Ah ÷ 100 mA is 41.7 days at least.
    ['awake alone', [{ currentMa: 100, mode: 'awake' as const }], 'sound passable weak failed'],
    ['awake alone, 10 mA', [{ currentMa: 10, mode: 'awake' as const }], 'sound'],
    ['asleep and once more, mode not noted', [{ currentMa: 10, mode: 'asleep' as const }, { currentMa: 50 }], 'weak'],
  ])('standby: %s', (_, drains, expected) => {
    expect(
      gradedItem('standby-drain', { tests: some('drains', ...drains), nameplate: { ratedCapacityAh: 100 } }).grades,
    ).toBe(expected);
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
