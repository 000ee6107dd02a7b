import { describe, expect, it } from 'vitest';
import { cutOffResults } from '../../../src/grading/live-tests/cut-off-results.ts';
import { CUT_OFF_KINDS, type CutOffKind } from '../../../src/schema/live-tests/cut-off.ts';
import type { Nameplate } from '../../../src/schema/nameplate.ts';
import { packOf, test } from './tested-pack.ts';

function resultOf(kind: CutOffKind, trials: readonly object[], plate: Nameplate = {}) {
  const entries = trials.map((trial, at) => test('cutOff', at + 1, { kind, ...trial }));
  const result = cutOffResults(packOf(plate, ...entries)).find((one) => one.kind === kind);
  if (result === undefined) throw new Error('no such kind');
  return { ...result, verdicts: result.trials.map(({ verdict }) => verdict) };
}

const verdictOf = (kind: CutOffKind, trial: object, plate: Nameplate = {}) =>
  resultOf(kind, [trial], plate).verdicts[0];

it('lists all seven kinds, each of them still to be tried', () => {
  const results = cutOffResults(packOf({}));
  expect(results).toEqual(CUT_OFF_KINDS.map((kind) => ({ kind, trials: [], remains: ['trial'] })));
});

describe('cold charge, on, under and past 0 and −10 °C', () => {
  it.each([
    ['blocked at 1 °C', { acted: true, sensorDegC: 1 }, 'acted'],
    ['blocked at 0 °C', { acted: true, sensorDegC: 0 }, 'acted'],
    ['blocked at −4 °C under an ice pack', { acted: true, sensorDegC: -4, method: 'icePack' }, 'actedLate'],
    ['blocked at −10 °C', { acted: true, sensorDegC: -10 }, 'actedLate'],
    ['blocked at −12 °C', { acted: true, sensorDegC: -12 }, 'didNot'],
    ['went on at −5 °C', { acted: false, sensorDegC: -5 }, 'notTested'],
    ['went on at −10 °C', { acted: false, sensorDegC: -10 }, 'didNot'],
    ['blocked at nobody knows what', { acted: true }, null],
  ])('%s', (_name, trial, verdict) => {
    expect(verdictOf('coldCharge', trial)).toBe(verdict);
  });
});

describe('hot', () => {
  it('is settled by the BMS alone: what a thermal switch opened at 70 °C is not tested, at 82 °C it did not', () => {
    expect(verdictOf('hotDischarge', { acted: true, by: 'bms', sensorDegC: 64 })).toBe('acted');
    expect(verdictOf('hotDischarge', { acted: true, by: 'bms', sensorDegC: 70 })).toBe('actedLate');
    expect(verdictOf('hotDischarge', { acted: true, by: 'thermalSwitch', sensorDegC: 70 })).toBe('notTested');
    expect(verdictOf('hotDischarge', { acted: true, by: 'thermalSwitch', sensorDegC: 82 })).toBe('didNot');
  });
});

describe('volts', () => {
  it('count by the worst cell before the pack: 3.66 V late although 14.4 V of four would do', () => {
    const trial = { acted: true, worstCellVoltageV: 3.66, packVoltageV: 14.4 };
    const { trials } = resultOf('highVoltage', [trial], { cellsInSeries: 4 });
    expect(trials[0]).toMatchObject({ verdict: 'actedLate', limit: { of: 'cell', limitV: 3.65, lateV: 3.8 } });
  });

  it('of a pack of four are held against 14.6 and 15.2 V', () => {
    const { trials } = resultOf('highVoltage', [{ acted: false, packVoltageV: 15.3 }], { cellsInSeries: 4 });
    expect(trials[0]).toMatchObject({ verdict: 'didNot', limit: { of: 'pack', from: 'cell' } });
    const limit = trials[0]?.limit;
    expect(limit?.of === 'pack' ? limit.limitV : null).toBeCloseTo(14.6, 12);
    expect(limit?.of === 'pack' ? limit.lateV : null).toBeCloseTo(15.2, 12);
  });

  it('of a pack of unknown cells have no limit', () => {
    const result = resultOf('highVoltage', [{ acted: true, packVoltageV: 14.5, recovery: 'loadOff' }]);
    expect(result).toMatchObject({ verdicts: [null], remains: ['limit'] });
  });

  it('end a run in time at 2.50 V, late at 2.30 V and not at all at 1.9 V', () => {
    const at = (worstCellVoltageV: number) => verdictOf('lowVoltage', { acted: true, worstCellVoltageV });
    expect([at(2.5), at(2.3), at(1.9)]).toEqual(['acted', 'actedLate', 'didNot']);
  });
});

describe('charge current, claimed 100 A', () => {
  const PLATE = { chargeCurrentA: 100 };

  it('acts in time up to 125 A within a minute, late after two or at 150 A, and did not when 200 A were carried', () => {
    const at = (trial: object) => verdictOf('chargeCurrent', trial, PLATE);
    expect(at({ acted: true, currentA: 125, afterS: 5 })).toBe('acted');
    expect(at({ acted: true, currentA: 120, afterS: 120 })).toBe('actedLate');
    expect(at({ acted: true, currentA: 150, afterS: 5 })).toBe('actedLate');
    expect(at({ acted: false, currentA: 200, afterS: 60 })).toBe('didNot');
    expect(at({ acted: false, currentA: 200 })).toBe('notTested');
  });

  it('cannot be told without the claim', () => {
    expect(resultOf('chargeCurrent', [{ acted: false, currentA: 200, afterS: 60 }])).toMatchObject({
      verdicts: [null],
      remains: ['limit'],
    });
  });
});

it('holds cold load against the claim alone: −20 °C, late down to −30 °C', () => {
  const trial = { acted: true, sensorDegC: -25 };
  expect(verdictOf('coldDischarge', trial, { dischargeLowestDegC: -20 })).toBe('actedLate');
  expect(verdictOf('coldDischarge', trial)).toBeNull();
});

describe('what remains', () => {
  it('is the figure where none was noted, and to go further where none went far enough', () => {
    expect(resultOf('coldCharge', [{ acted: false }]).remains).toEqual(['figure']);
    expect(resultOf('coldCharge', [{ acted: false, sensorDegC: -5 }]).remains).toEqual(['further']);
  });

  it('is how it came back, and of low voltage what it needs to wake', () => {
    expect(resultOf('coldCharge', [{ acted: true, sensorDegC: 1 }]).remains).toEqual(['recovery']);
    const low = { acted: true, worstCellVoltageV: 2.6 };
    expect(resultOf('lowVoltage', [low]).remains).toEqual(['recovery', 'wakeUp']);
  });

  it('is the cells where 20.5 V of the pack is all that was read when it acted, and not once 2.6 V of the worst cell was', () => {
    const byPack = { acted: true, packVoltageV: 20.5, recovery: 'chargerOn', wakeUp: 'anyCharger' };
    const eight = { cellsInSeries: 8 };
    expect(resultOf('lowVoltage', [byPack], eight).remains).toEqual(['cells']);
    expect(resultOf('lowVoltage', [byPack, { acted: true, worstCellVoltageV: 2.6 }], eight).remains).toEqual([]);
  });

  it('is nothing where one trial settled it and another noted how it came back', () => {
    const trials = [
      { acted: false, worstCellVoltageV: 2.7 },
      { acted: true, worstCellVoltageV: 2.6 },
      { acted: true, recovery: 'chargerOn', wakeUp: 'anyCharger' },
    ];
    expect(resultOf('lowVoltage', trials)).toMatchObject({ verdicts: ['notTested', 'acted', null], remains: [] });
  });
});
