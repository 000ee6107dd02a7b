import { describe, expect, it } from 'vitest';
import type { CutOff } from '../../../src/schema/live-tests/cut-off.ts';
import { cutOffs, gradedItem } from './tests-of.ts';

/** Limits of the built-in checklist; the cell limits 3.65 and 2.50 V, 0 °C and 60 °C are those of LFP cell data sheets. */
type Trial = Omit<CutOff, 'made'>;

describe('charging in the cold', () => {
  const item = 'low-temperature-charge-cutoff';
  const blocked = (sensorDegC: number, more: Partial<Trial> = {}): Trial => ({
    kind: 'coldCharge',
    acted: true,
    by: 'bms',
    method: 'cup',
    sensorDegC,
    ...more,
  });
  const WARMER = { recoveredAtDegC: 5 };
  const wentOn = (sensorDegC: number): Trial => ({ kind: 'coldCharge', acted: false, method: 'cup', sensorDegC });

  it.each([
    ['blocked at +1 °C until warmer', [blocked(1, WARMER)], 'sound'],
    ['blocked at 0 °C until warmer', [blocked(0, WARMER)], 'sound'],
    ['blocked at −5 °C until warmer', [blocked(-5, WARMER)], 'passable'],
    ['blocked at −8 °C until warmer', [blocked(-8, WARMER)], 'weak'],
    ['blocked at +1 °C, where it came back not noted', [blocked(1)], 'sound weak'],
    ['blocked at −5 °C, where it came back not noted', [blocked(-5)], 'passable weak'],
    ['blocked at −8 °C, where it came back not noted', [blocked(-8)], 'weak'],
    ['blocked at +1 °C twice, once seen until warmer', [blocked(1, WARMER), blocked(1)], 'sound'],
    ['blocked at +1 °C and did not come back', [blocked(1, { recovery: 'didNot' })], 'sound'],
    ['blocked at −15 °C', [blocked(-15)], 'failed'],
    // Common practice, no source: a sensor that lets charging through well below 0 °C fails.
    ['going on at −12 °C', [wentOn(-12)], 'failed'],
    ['going on at −10 °C', [wentOn(-10)], 'failed'],
    ['going on at −4 °C, where the trial ended', [wentOn(-4)], 'passable weak failed'],
    ['going on at +3 °C', [wentOn(3)], 'sound passable weak failed'],
    ['going on at −2, then blocked at −4 °C', [wentOn(-2), blocked(-4, WARMER)], 'passable'],
    ['blocked at −4 once, going on at −11 °C another time', [blocked(-4), wentOn(-11)], 'failed'],
    // Common practice, no source: one that blocks only when an ice pack lies on it is passable, the temperature noted.
    ['blocked only with an ice pack on it, at −14 °C', [blocked(-14, { method: 'icePack' })], 'passable'],
    [
      'blocked in the cup as well as under an ice pack',
      [blocked(1, WARMER), blocked(-14, { method: 'icePack' })],
      'sound',
    ],
    [
      'going on in the cup at −12 °C, blocked under an ice pack',
      [wentOn(-12), blocked(-14, { method: 'icePack' })],
      'failed',
    ],
    ['coming back at −1 °C', [blocked(1, { recoveredAtDegC: -1 })], 'weak'],
    ['coming back at +4 °C', [blocked(1, { recoveredAtDegC: 4 })], 'sound'],
  ])('%s', (_, trials, expected) => {
    expect(gradedItem(item, { tests: cutOffs(...trials) }).grades).toBe(expected);
  });

  it('keeps the temperature of an ice-pack block in the record while it grades passable', () => {
    const trial = blocked(-14, { method: 'icePack' });
    expect(gradedItem(item, { tests: cutOffs(trial) }).measured?.found.alternatives).toEqual([
      [{ case: 'icePackOnly' }],
    ]);
  });

  it('is no trial when it was a thermal switch that opened: all four grades stay', () => {
    expect(gradedItem(item, { tests: cutOffs(blocked(1, { by: 'thermalSwitch' })) })).toMatchObject({
      grades: 'sound passable weak failed',
      because: 'unanswered',
      measured: null,
    });
  });
});

describe('the high-temperature cut-off', () => {
  const item = 'high-temperature-cutoff';
  const trial = (kind: CutOff['kind'], acted: boolean, sensorDegC: number, more: Partial<Trial> = {}): Trial => ({
    kind,
    acted,
    sensorDegC,
    ...(acted ? { by: 'bms' as const } : {}),
    ...more,
  });

  it('cut at 60 and 64 °C by nobody said what may have been a thermal switch, unless there is none', () => {
    const both = [
      { kind: 'hotCharge' as const, acted: true, sensorDegC: 60 },
      { kind: 'hotDischarge' as const, acted: true, sensorDegC: 64 },
    ];
    expect(gradedItem(item, { tests: cutOffs(...both) }).grades).toBe('sound passable weak');
    const none = both.map((one) => ({ ...one, switchFitted: false }));
    expect(gradedItem(item, { tests: cutOffs(...none) }).grades).toBe('sound');
  });

  it.each([
    ['charge at 60, load at 64 °C', [trial('hotCharge', true, 60), trial('hotDischarge', true, 64)], 'sound'],
    [
      'charge at 60, load at 72 °C: the later counts',
      [trial('hotCharge', true, 60), trial('hotDischarge', true, 72)],
      'passable',
    ],
    ['charge alone, at 60 °C: load may be later', [trial('hotCharge', true, 60)], 'sound passable weak failed'],
    [
      'neither by 80 °C, no switch',
      [trial('hotCharge', false, 80, { switchFitted: false }), trial('hotDischarge', false, 80)],
      'failed',
    ],
    // Common practice, no source: a thermal switch standing in for the high limit is recorded as such, and weak.
    [
      'only a thermal switch, at 78 °C, both ways tried to 80 °C',
      [trial('hotCharge', true, 80, { by: 'thermalSwitch' }), trial('hotDischarge', false, 80)],
      'weak',
    ],
    [
      'at 60 and 64 °C, the sensor melted: what opened may have been the sensor',
      [trial('hotCharge', true, 60), trial('hotDischarge', true, 64, { sensorAfter: 'melted' })],
      'sound passable weak failed',
    ],
    [
      'neither by 80 °C, a switch noted once and denied once',
      [
        trial('hotCharge', false, 80, { switchFitted: false }),
        trial('hotDischarge', false, 80, { switchFitted: true }),
      ],
      'weak failed',
    ],
    [
      'neither by 80 °C, nobody looked for a switch',
      [trial('hotCharge', false, 80), trial('hotDischarge', false, 80)],
      'weak failed',
    ],
  ])('%s', (_, trials, expected) => {
    expect(gradedItem(item, { tests: cutOffs(...trials) }).grades).toBe(expected);
  });
});

describe('the voltage cut-offs', () => {
  const high = (acted: boolean, more: Partial<Trial>): Trial => ({ kind: 'highVoltage', acted, ...more });
  const low = (acted: boolean, more: Partial<Trial>): Trial => ({ kind: 'lowVoltage', acted, ...more });
  const nameplate = { cellsInSeries: 4 };

  it.each([
    ['cut at 3.65 V', [high(true, { worstCellVoltageV: 3.65 })], 'sound'],
    ['cut at 3.75 V', [high(true, { worstCellVoltageV: 3.75 })], 'passable'],
    ['cut at 3.79 V', [high(true, { worstCellVoltageV: 3.79 })], 'weak'],
    ['stopped by hand at 3.80 V', [high(false, { worstCellVoltageV: 3.8 })], 'failed'],
    ['stopped by hand at 3.70 V', [high(false, { worstCellVoltageV: 3.7 })], 'passable weak failed'],
    // The mean of four cells at 14.6 V is 3.65 V: the highest is there or above.
    ['cut at 14.6 V, cells not read', [high(true, { packVoltageV: 14.6 })], 'sound passable weak failed'],
    ['cut at 15.0 V, cells not read', [high(true, { packVoltageV: 15 })], 'passable weak failed'],
    ['cut at 15.2 V, cells not read', [high(true, { packVoltageV: 15.2 })], 'failed'],
  ])('high: %s', (_, trials, expected) => {
    expect(gradedItem('charge-voltage-cutoff', { tests: cutOffs(...trials), nameplate }).grades).toBe(expected);
  });

  it.each([
    ['cut at 2.50 V', [low(true, { worstCellVoltageV: 2.5 })], 'sound'],
    ['cut at 2.30 V', [low(true, { worstCellVoltageV: 2.3 })], 'passable'],
    ['cut at 2.01 V', [low(true, { worstCellVoltageV: 2.01 })], 'weak'],
    ['stopped by hand at 2.00 V', [low(false, { worstCellVoltageV: 2 })], 'failed'],
    ['cut at 10.0 V, cells not read: mean 2.50', [low(true, { packVoltageV: 10 })], 'sound passable weak failed'],
    ['cut at 9.6 V, cells not read: mean 2.40', [low(true, { packVoltageV: 9.6 })], 'passable weak failed'],
  ])('low: %s', (_, trials, expected) => {
    expect(gradedItem('low-voltage-cutoff', { tests: cutOffs(...trials), nameplate }).grades).toBe(expected);
  });

  it('tell nothing of the cells from the pack’s volts alone while their number is not known', () => {
    const tests = cutOffs(high(true, { packVoltageV: 15.2 }));
    expect(gradedItem('charge-voltage-cutoff', { tests }).measured).toBeNull();
  });
});

describe('charge current and waking', () => {
  /** A minute: as for over-current out of the pack, our choice (calc/charge-current-cut-off.ts). */
  it.each([
    [50, true, 5, 'sound'],
    [62.5, true, 60, 'sound'],
    [75, true, 60, 'passable'],
    [100, true, 60, 'weak'],
    [101, true, 5, 'failed'],
    // Cut, but only after more than a minute: heat may have done it. That much was carried for a minute.
    [60, true, 61, 'sound passable weak failed'],
    [75, true, 600, 'weak failed'],
    [90, false, 60, 'weak failed'],
    [100, false, 60, 'failed'],
  ])('of a 50 A claim: %d A, cut %s after %d s, is %s', (currentA, acted, afterS, expected) => {
    const tests = cutOffs({ kind: 'chargeCurrent', acted, currentA, afterS });
    expect(gradedItem('charge-current-cutoff', { tests, nameplate: { chargeCurrentA: 50 } }).grades).toBe(expected);
  });

  it.each([
    ['59 s', { afterS: 59 }],
    ['a time that was not noted', {}],
  ])('100 A of a 50 A claim let in for %s tells nothing', (_, time) => {
    const tests = cutOffs({ kind: 'chargeCurrent', acted: false, currentA: 100, ...time });
    expect(gradedItem('charge-current-cutoff', { tests, nameplate: { chargeCurrentA: 50 } }).measured).toBeNull();
  });

  it.each([
    [
      'charge-current-cutoff',
      { kind: 'chargeCurrent', currentA: 60, afterS: 20 },
      'sound passable weak failed doesNotApply',
    ],
    ['charge-voltage-cutoff', { kind: 'highVoltage', worstCellVoltageV: 3.7 }, 'passable weak failed'],
    ['low-voltage-cutoff', { kind: 'lowVoltage', worstCellVoltageV: 2.4 }, 'passable weak failed'],
  ] as const)('%s: what a thermal switch cut the BMS did not', (item, trial, expected) => {
    const tests = cutOffs({ ...trial, acted: true, by: 'thermalSwitch' });
    expect(gradedItem(item, { tests, nameplate: { chargeCurrentA: 50 } }).grades).toBe(expected);
  });

  it('needs the claim: without one nothing is derived', () => {
    const tests = cutOffs({ kind: 'chargeCurrent', acted: true, currentA: 50 });
    expect(gradedItem('charge-current-cutoff', { tests }).measured).toBeNull();
  });

  it.each([
    ['byItself', 'sound'],
    ['anyCharger', 'passable'],
    ['specialCharger', 'weak'],
    ['button', 'weak'],
    ['didNot', 'failed'],
  ] as const)('waking %s is %s', (wakeUp, expected) => {
    const tests = cutOffs({ kind: 'lowVoltage', acted: true, wakeUp });
    expect(gradedItem('wake-up', { tests }).grades).toBe(expected);
  });
});
