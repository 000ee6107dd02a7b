import { describe, expect, it } from 'vitest';
import { cellSet, gradedItem } from './tests-of.ts';

const nameplate = { cellsInSeries: 4 };

/** Limits 2.5 and 3.65 V: LFP cell data sheet. Spread 10/30/50 and 50/100/200 mV: our choice (DESIGN §4). */
describe('cell voltages', () => {
  it.each([
    ['rested 3.28–3.30 V', cellSet('rested', [3.28, 3.29, 3.3, 3.29]), 'sound'],
    ['one rested at 3.10 V', cellSet('rested', [3.28, 3.1, 3.3, 3.29]), 'passable'],
    ['one rested at 2.60 V', cellSet('rested', [3.28, 2.6, 3.3, 3.29]), 'weak'],
    ['one just emptied at 2.60 V', cellSet('justEmptied', [3.05, 2.6, 3.0, 3.02]), 'passable'],
    ['one at 2.49 V', cellSet('justEmptied', [3.05, 2.49, 3.0, 3.02]), 'failed'],
    ['near full at 3.48 V', cellSet('nearFull', [3.45, 3.48, 3.46, 3.47]), 'sound'],
    ['one near full at 3.66 V', cellSet('nearFull', [3.45, 3.66, 3.46, 3.47]), 'failed'],
    ['two of four read, 3.29 V', cellSet('rested', [3.29, null, 3.29, null]), 'sound passable weak failed'],
    ['two of four read, one 2.60 V', cellSet('rested', [3.29, null, 2.6, null]), 'weak failed'],
  ])('%s', (_, set, expected) => {
    expect(gradedItem('cell-voltages', { tests: { cellSets: [set] }, nameplate }).grades).toBe(expected);
  });

  it('are not graded under load', () => {
    const tests = { cellSets: [cellSet('underLoad', [2.4, 3, 3, 3])] };
    expect(gradedItem('cell-voltages', { tests, nameplate }).measured).toBeNull();
    expect(gradedItem('dead-cell', { tests, nameplate }).measured).toBeNull();
  });

  it('count by the worst of several whole rounds, and a part round does not reopen what a whole one settled', () => {
    const whole = cellSet('rested', [3.29, 3.29, 3.29, 3.29]);
    const part = { ...cellSet('rested', [3.29, null, null, null]), id: '2'.repeat(32) };
    const low = { ...cellSet('rested', [3.29, 3.05, 3.29, 3.29]), id: '3'.repeat(32) };
    expect(gradedItem('cell-voltages', { tests: { cellSets: [whole, part] }, nameplate }).grades).toBe('sound');
    expect(gradedItem('cell-voltages', { tests: { cellSets: [whole, low] }, nameplate }).grades).toBe('passable');
  });
});

/** Three cells at 3.29 V, read on the first day; the fourth as given. A whole round later finds nothing. */
describe('what a part round found stays, whatever a whole round finds later', () => {
  const round = (set: ReturnType<typeof cellSet>, place: number) => ({ ...set, id: String(place).repeat(32) });
  const whole = round(cellSet('rested', [3.29, 3.29, 3.29, 3.29]), 1);

  it.each([
    ['dead-cell', cellSet('rested', [null, 1.5, null, null]), 'failed'],
    ['dead-cell', cellSet('rested', [null, 2.5, null, null]), 'sound'],
    ['cell-voltages', cellSet('rested', [null, 2.4, null, null]), 'failed'],
    ['cell-voltages', cellSet('nearFull', [3.7, null, null, null]), 'failed'],
    ['cell-spread', cellSet('rested', [3.29, 3.23, null, null]), 'failed'],
    ['cell-spread', cellSet('rested', [3.29, 3.28, null, null]), 'sound'],
  ])('%s', (item, part, expected) => {
    for (const cellSets of [
      [round(part, 2), whole],
      [whole, round(part, 2)],
    ]) {
      expect(gradedItem(item, { tests: { cellSets }, nameplate }).grades).toBe(expected);
    }
  });

  it('bms-voltage-reading, one cell 40 mV off', () => {
    const agreeing = { voltageV: 3.3, bmsVoltageV: 3.3 };
    const cellSets = [
      round(cellSet('rested', [{ voltageV: 3.3, bmsVoltageV: 3.34 }, null, null, null]), 2),
      round(cellSet('rested', [agreeing, agreeing, agreeing, agreeing]), 1),
    ];
    const facts = { 'data-port': 'yes' };
    expect(gradedItem('bms-voltage-reading', { tests: { cellSets }, nameplate, facts }).grades).toBe('failed');
  });

  // Whatever the others read: (0.4 − 0.2) ÷ the mean is at least (0.4 − 0.2) ÷ 0.4 = 50 %.
  it('cell-resistances: 0.2 and 0.4 mΩ in a part round are 50 % apart at least', () => {
    const mohm = (...list: (number | null)[]) =>
      cellSet(
        'rested',
        list.map((resistanceMohm) => (resistanceMohm === null ? null : { resistanceMohm })),
      );
    const part = round(mohm(0.2, 0.4, null, null), 2);
    const whole = round(mohm(0.2, 0.2, 0.2, 0.2), 1);
    const gradesOf = (...cellSets: (typeof part)[]) =>
      gradedItem('cell-resistances', { tests: { cellSets }, nameplate }).grades;
    expect(gradesOf(part)).toBe('weak failed');
    expect(gradesOf(part, whole)).toBe('weak');
    expect(gradesOf(round(mohm(0.2, 0.21, null, null), 2), whole)).toBe('sound');
  });
});

it('a round without cell 4 of 4 is not whole, though a cell 5 was read', () => {
  const cellSets = [cellSet('rested', [3.29, 3.29, 3.29, null, 3.29])];
  expect(gradedItem('dead-cell', { tests: { cellSets }, nameplate }).grades).toBe('sound failed');
});

describe('a dead or reversed cell', () => {
  it.each([
    ['2.00 V', 2, 'sound'],
    ['1.99 V', 1.99, 'failed'],
    ['reversed, −0.4 V', -0.4, 'failed'],
    ['0 V', 0, 'failed'],
  ])('at %s: %s', (_, value, expected) => {
    const tests = { cellSets: [cellSet('justEmptied', [3, value, 3, 3])] };
    expect(gradedItem('dead-cell', { tests, nameplate }).grades).toBe(expected);
  });

  it('stops the pack: a derived failure of a stop item counts like an answered one', () => {
    const tests = { cellSets: [cellSet('rested', [3.3, 1.2, 3.3, 3.3])] };
    expect(gradedItem('dead-cell', { tests, nameplate })).toMatchObject({
      settled: true,
      grade: 'failed',
      because: 'measured',
    });
  });
});

describe('the spread of cell voltages', () => {
  it.each([
    ['10 mV on the plateau', cellSet('rested', [3.29, 3.3, 3.295, 3.3]), 'sound'],
    ['30 mV on the plateau', cellSet('rested', [3.27, 3.3, 3.29, 3.3]), 'passable'],
    ['51 mV on the plateau', cellSet('rested', [3.249, 3.3, 3.29, 3.3]), 'failed'],
    ['51 mV, every cell above 3.40 V', cellSet('rested', [3.45, 3.501, 3.46, 3.47]), 'passable'],
    ['210 mV near full', cellSet('nearFull', [3.41, 3.62, 3.46, 3.47]), 'failed'],
    ['60 mV called near full, but one cell at 3.40 V', cellSet('nearFull', [3.4, 3.46, 3.45, 3.45]), 'passable failed'],
    ['three of four read, 20 mV so far', cellSet('rested', [3.28, 3.3, null, 3.29]), 'passable weak failed'],
  ])('%s', (_, set, expected) => {
    expect(gradedItem('cell-spread', { tests: { cellSets: [set] }, nameplate }).grades).toBe(expected);
  });

  it('says nothing just emptied', () => {
    const tests = { cellSets: [cellSet('justEmptied', [3.0, 2.6, 3.0, 3.0])] };
    expect(gradedItem('cell-spread', { tests, nameplate }).measured).toBeNull();
  });
});

describe('resistances and the BMS’s own voltages', () => {
  it('0.20, 0.21, 0.22, 0.21 mΩ spread by 9.5 % of their mean: sound', () => {
    const set = cellSet(
      'rested',
      [0.2, 0.21, 0.22, 0.21].map((resistanceMohm) => ({ resistanceMohm })),
    );
    const result = gradedItem('cell-resistances', { tests: { cellSets: [set] }, nameplate });
    expect(result.grades).toBe('sound');
    // (0.22 − 0.20) / 0.21 = 9.5238 %
    expect(result.measured?.found.alternatives[0]?.[0]?.figure?.low).toBeCloseTo(9.523809523809524, 9);
  });

  it('the worst cell 16 mV off the meter is weak', () => {
    const set = cellSet('rested', [
      { voltageV: 3.3, bmsVoltageV: 3.301 },
      { voltageV: 3.3, bmsVoltageV: 3.284 },
      { voltageV: 3.3, bmsVoltageV: 3.3 },
      { voltageV: 3.3, bmsVoltageV: 3.3 },
    ]);
    const facts = { 'data-port': 'yes' };
    expect(gradedItem('bms-voltage-reading', { tests: { cellSets: [set] }, nameplate, facts }).grades).toBe('weak');
  });
});
