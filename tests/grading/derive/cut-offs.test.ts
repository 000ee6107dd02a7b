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
  const wentOn = (sensorDegC: number): Trial => ({ kind: 'coldCharge', acted: false, method: 'cup', sensorDegC });

  it.each([
    ['blocked at +1 °C', [blocked(1)], 'sound'],
    ['blocked at 0 °C', [blocked(0)], 'sound'],
    ['blocked at −5 °C', [blocked(-5)], 'passable'],
    ['blocked at −8 °C', [blocked(-8)], 'weak'],
    ['blocked at −15 °C', [blocked(-15)], 'failed'],
    // Common practice, no source: a sensor that lets charging through well below 0 °C fails.
    ['going on at −12 °C', [wentOn(-12)], 'failed'],
    ['going on at −10 °C', [wentOn(-10)], 'failed'],
    ['going on at −4 °C, where the trial ended', [wentOn(-4)], 'passable weak failed'],
    ['going on at +3 °C', [wentOn(3)], 'sound passable weak failed'],
    ['going on at −2, then blocked at −4 °C', [wentOn(-2), blocked(-4)], 'passable'],
    ['blocked at −4 once, going on at −11 °C another time', [blocked(-4), wentOn(-11)], 'failed'],
    // Common practice, no source: one that blocks only when an ice pack lies on it is passable, the temperature noted.
    ['blocked only with an ice pack on it, at −14 °C', [blocked(-14, { method: 'icePack' })], 'passable'],
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
    ...more,
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
  it.each([
    [50, true, 'sound'],
    [62.5, true, 'sound'],
    [75, true, 'passable'],
    [101, true, 'failed'],
    [90, false, 'weak failed'],
  ])('of a 50 A claim: %d A, cut %s, is %s', (currentA, acted, expected) => {
    const tests = cutOffs({ kind: 'chargeCurrent', acted, currentA });
    expect(gradedItem('charge-current-cutoff', { tests, nameplate: { chargeCurrentA: 50 } }).grades).toBe(expected);
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
