import { describe, expect, it } from 'vitest';
import { keptMapping } from '../../../src/app/logs/kept-mapping.ts';
import { matchedRuns, readAgain } from '../../../src/app/logs/read-again.ts';
import { guessMapping } from '../../../src/logs/guess-mapping.ts';
import type { LogRun } from '../../../src/logs/log-run.ts';
import type { Run } from '../../../src/schema/live-tests/run.ts';
import { madeRunLog } from '../../browser/driver/made-run-log.ts';
import { readText } from '../../logs/read-text.ts';

const MADE = `000001790000000.000000.${'0'.repeat(32)}`;
const log = (said: Record<string, unknown>, firstLine = 10, lastLine = 90) => ({
  logId: 'a'.repeat(64),
  firstLine,
  lastLine,
  rowCount: 81,
  gapCount: 0,
  mapping: {},
  said,
});
const STORED: Run = Object.freeze({
  made: MADE,
  label: 'Gentle',
  chargedToV: 14.6,
  taperA: 4,
  note: 'first day',
  chargeAh: 1.667,
  energyWh: 21.6,
  meanVoltageV: 12.9,
  end: 'lowVoltage' as const,
  restMin: 45,
  cellStartDegC: 21.4,
  log: log({ end: 'lowVoltage', restMin: 40, cellStartDegC: 21.4 }),
});

describe('a kept run whose log is read again', () => {
  const fresh = {
    chargeAh: 100,
    end: 'packDisconnect' as const,
    restMin: 42,
    log: log({ end: 'packDisconnect', restMin: 42 }),
  };
  const read = readAgain(STORED, fresh);

  it('has the new 100 Ah, loses the energy the new reading does not have, and keeps its place', () => {
    expect(read.chargeAh).toBe(100);
    expect(['energyWh', 'meanVoltageV'].filter((key) => key in read)).toEqual([]);
    expect(read.made).toBe(MADE);
    expect(read.log?.said).toEqual({ end: 'packDisconnect', restMin: 42 });
  });

  it('keeps name, note and how it began as typed, and the rest of 45 min that a person set against the log’s 40', () => {
    expect(read).toMatchObject({ label: 'Gentle', note: 'first day', chargedToV: 14.6, taperA: 4, restMin: 45 });
  });

  it('follows the log where nobody said otherwise: another end, and no temperature any more', () => {
    expect(read.end).toBe('packDisconnect');
    expect('cellStartDegC' in read).toBe(false);
  });

  it('does not bring back what a person emptied', () => {
    const { restMin: _emptied, ...emptied } = STORED;
    expect('restMin' in readAgain(emptied, fresh)).toBe(false);
  });
});

describe('which found run a kept one is', () => {
  const [model] = readText(madeRunLog()).runs;
  if (model === undefined) throw new Error('a run is needed');
  const found = (firstLine: number, lastLine: number, flow: LogRun['flow'] = 'out'): LogRun => ({
    ...model,
    flow,
    kind: flow === 'in' ? 'charge' : 'discharge',
    firstLine,
    lastLine,
  });
  const kept = (id: string, firstLine: number, lastLine: number) => ({
    ...STORED,
    id,
    log: log({}, firstLine, lastLine),
  });

  it('is the one it shares most lines with, each once', () => {
    const matched = matchedRuns(
      [kept('one', 10, 90), kept('two', 80, 200)],
      [found(1, 85), found(86, 210), found(300, 400)],
    );
    expect([...matched]).toEqual([
      ['two', 1],
      ['one', 0],
    ]);
  });

  it('goes to the one of two kept runs that shares more lines with it; the other has none', () => {
    expect([...matchedRuns([kept('one', 10, 60), kept('two', 50, 200)], [found(1, 210)])]).toEqual([['two', 0]]);
  });

  it('is none where the lines are a charge now, or belong to no run', () => {
    expect(matchedRuns([kept('one', 10, 90)], [found(10, 90, 'in')]).size).toBe(0);
    expect(matchedRuns([kept('one', 10, 90)], [found(91, 120)]).size).toBe(0);
    expect(matchedRuns([kept('one', 10, 90)], [found(90, 120)]).size).toBe(1);
  });
});

describe('a mapping kept with a run', () => {
  const mapping = guessMapping(new TextEncoder().encode(madeRunLog()));

  it('comes back as it was from what is stored', () => {
    expect(keptMapping(JSON.parse(JSON.stringify(mapping)))).toEqual(mapping);
  });

  it.each([
    ['nothing', undefined],
    ['an empty one', {}],
    [
      'an unknown quantity',
      { ...mapping, columns: mapping.columns.map((column) => ({ ...column, quantity: 'torque' })) },
    ],
    [
      'a scale that is no number',
      { ...mapping, columns: mapping.columns.map((column) => ({ ...column, scale: '1' })) },
    ],
    ['fewer columns than names', { ...mapping, columns: mapping.columns.slice(1) }],
    ['a time format of a later version', { ...mapping, timeFormat: 'moons' }],
  ])('is found anew where it is %s', (_, stored) => {
    expect(keptMapping(stored)).toBeNull();
  });
});
