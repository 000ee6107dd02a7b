import { describe, expect, it } from 'vitest';
import { checkEntry } from '../../../src/schema/check-entry.ts';
import { LIVE_TEST_SUBJECTS } from '../../../src/schema/live-tests/live-tests.ts';
import { entry } from '../../record/made-entries.ts';
import { FULL_VALUES, LOG_ID } from './full-values.ts';

type Value = Readonly<Record<string, unknown>>;
type Subject = 'run' | 'ruler' | 'sensorGate' | 'lead';

const log = { logId: LOG_ID, firstLine: 12, lastLine: 99, rowCount: 80, gapCount: 0, mapping: {} };
const curve = { timeS: [0, 1], voltageV: [26.6, 26.5], currentA: null, chargeAh: null };
const points = (count: number) => Array.from({ length: count }, (_, i) => i);

function verdictOn(subject: Subject, changes: Value): string {
  const { part, value } = FULL_VALUES[subject];
  const check = checkEntry(entry(subject, part, { ...value, ...changes }));
  return check.ok ? 'accepted' : check.reason;
}

describe('a run', () => {
  it('has a full value here that leaves out 0 fields of its log and of its curve', () => {
    const { log: fullLog, curve: fullCurve } = FULL_VALUES.run.value;
    const { log: logShape, curve: curveShape } = LIVE_TEST_SUBJECTS.run.value.entries;
    expect(Object.keys(fullLog as object).sort()).toEqual(Object.keys(logShape.wrapped.entries).sort());
    expect(Object.keys(fullCurve as object).sort()).toEqual(Object.keys(curveShape.wrapped.entries).sort());
  });

  it.each<[string, Value]>([
    ['a log of one line and no row', { log: { ...log, firstLine: 1, lastLine: 1, rowCount: 0 } }],
    [
      'a log with fields of a newer version, in the mapping too',
      { log: { ...log, zone: '+1', mapping: { decimal: ',' } } },
    ],
    ['a curve of 600 points', { curve: { ...curve, timeS: points(600), voltageV: points(600) } }],
    ['a curve of no point', { curve: { ...curve, timeS: [], voltageV: [] } }],
    ['a curve without temperatures', { curve }],
    ['a curve whose log had no temperature column', { curve: { ...curve, temperatureDegC: null } }],
    ['a current that turns', { curve: { ...curve, currentA: [20, -3.5] } }],
    ['evidence of any kind', { evidence: { kneeV: 22.1, rows: [1, 2] } }],
  ])('takes %s', (_, changes) => {
    expect(verdictOn('run', changes)).toBe('accepted');
  });

  it.each<[string, Value, string]>([
    ['a log id that is no hash', { log: { ...log, logId: 'gentle.csv' } }, 'log.logId: must be 64 hexadecimal digits'],
    ['a first line 0', { log: { ...log, firstLine: 0 } }, 'log.firstLine: Invalid value: Expected >=1 but received 0'],
    ['a last line 0', { log: { ...log, lastLine: 0 } }, 'log.lastLine: Invalid value: Expected >=1 but received 0'],
    ['half a line', { log: { ...log, lastLine: 9.5 } }, 'log.lastLine: Invalid integer: Received 9.5'],
    ['-1 rows', { log: { ...log, rowCount: -1 } }, 'log.rowCount: Invalid value: Expected >=0 but received -1'],
    ['-1 gaps', { log: { ...log, gapCount: -1 } }, 'log.gapCount: Invalid value: Expected >=0 but received -1'],
    ['a gap of -1 s', { log: { ...log, longestGapS: -1 } }, 'log.longestGapS: Invalid value: Expected >=0 but received -1'],
    ['a counter below zero', { log: { ...log, counterChargeAh: -1 } }, 'log.counterChargeAh: Invalid value: Expected >=0 but received -1'],
    ['a log without mapping', { log: { ...log, mapping: undefined } }, 'log.mapping: Invalid type: Expected Object but received undefined'],
    ['what the log said in words', { log: { ...log, said: 'stopped' } }, 'log.said: Invalid type: Expected Object but received "stopped"'],
    ['a log in words', { log: 'gentle.csv' }, 'log: Invalid type: Expected Object but received "gentle.csv"'],
    ['a curve of 601 points', { curve: { ...curve, timeS: points(601) } }, 'curve.timeS: Invalid length: Expected <=600 but received 601'],
    ['601 voltages', { curve: { ...curve, voltageV: points(601) } }, 'curve.voltageV: Invalid length: Expected <=600 but received 601'],
    ['601 temperatures', { curve: { ...curve, temperatureDegC: points(601) } }, 'curve.temperatureDegC: Invalid length: Expected <=600 but received 601'],
    ['a curve without times', { curve: { ...curve, timeS: null } }, 'curve.timeS: Invalid type: Expected Array but received null'],
    ['a curve that leaves its current out', { curve: { timeS: [], voltageV: null, chargeAh: null } }, 'curve.currentA: Invalid key: Expected "currentA" but received undefined'],
    ['a gap in a curve', { curve: { ...curve, voltageV: [26.6, null] } }, 'curve.voltageV.1: Invalid type: Expected number but received null'],
    ['a curve that never ends', { curve: { ...curve, voltageV: [26.6, Number.POSITIVE_INFINITY] } }, 'holds the number Infinity'],
    ['evidence in words', { evidence: 'seen' }, 'evidence: Invalid type: Expected Object but received "seen"'],
  ])('refuses %s, naming it', (_, changes, reason) => {
    expect(verdictOn('run', changes)).toBe(reason);
  }); // biome-ignore format: a table
});

describe('a lead by the photo ruler', () => {
  it('takes a size that is as sure as can be', () => {
    expect(verdictOn('lead', { byPhoto: { mm: 8.2, plusMinusMm: 0 } })).toBe('accepted');
  });

  it.each<[string, Value, string]>([
    ['a size of 0', { byPhoto: { mm: 0, plusMinusMm: 0.3 } }, 'byPhoto.mm: Invalid value: Expected >0 but received 0'],
    ['less than no uncertainty', { byPhoto: { mm: 8, plusMinusMm: -1 } }, 'byPhoto.plusMinusMm: Invalid value: Expected >=0 but received -1'],
    ['a size of which it is not said how sure', { byPhoto: { mm: 8 } }, 'byPhoto.plusMinusMm: Invalid key: Expected "plusMinusMm" but received undefined'],
  ])('refuses %s, naming it', (_, changes, reason) => {
    expect(verdictOn('lead', changes)).toBe(reason);
  }); // biome-ignore format: a table
});

describe('a ruler', () => {
  const corners = [[0, 0], [1, 0], [1, 1], [0, 1]]; // biome-ignore format: one line

  it('takes a card as large as the photo, and a distance from corner to corner', () => {
    expect(verdictOn('ruler', { corners, from: [0, 0], to: [1, 1] })).toBe('accepted');
  });

  it.each<[string, Value, string]>([
    ['3 corners', { corners: corners.slice(1) }, 'corners.3: Invalid type: Expected Array but received undefined'],
    ['5 corners', { corners: [...corners, [0, 0]] }, 'corners.4: Invalid type: Expected never but received Array'],
    ['a corner left of the photo', { corners: [[-0.01, 0], ...corners.slice(1)] }, 'corners.0.0: Invalid value: Expected >=0 but received -0.01'],
    ['a start below the photo', { from: [0.5, 1.01] }, 'from.1: Invalid value: Expected <=1 but received 1.01'],
    ['an end of one number', { to: [0.5] }, 'to.1: Invalid type: Expected number but received undefined'],
    ['an end of three numbers', { to: [0.5, 0.5, 0.5] }, 'to.2: Invalid type: Expected never but received 0.5'],
    ['an end in words', { to: ['0.5', 0.5] }, 'to.0: Invalid type: Expected number but received "0.5"'],
  ])('refuses %s, naming it', (_, changes, reason) => {
    expect(verdictOn('ruler', changes)).toBe(reason);
  }); // biome-ignore format: a table
});

describe('a passage of the sensor gate', () => {
  it.each<[number, string]>([
    [0, 'accepted'],
    [40, 'accepted'],
    [41, 'acknowledged: Invalid length: Expected <=40 but received 41'],
  ])('with %i cautions acknowledged is %s', (count, verdict) => {
    expect(verdictOn('sensorGate', { acknowledged: Array(count).fill('cells-stay-live') })).toBe(verdict);
  });

  it('names the caution that is no text', () => {
    const reason = 'acknowledged.1: Invalid type: Expected string but received 2';
    expect(verdictOn('sensorGate', { acknowledged: ['cells-stay-live', 2] })).toBe(reason);
  });
});
