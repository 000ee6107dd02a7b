import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { canBeKept, restBefore, tickedAtFirst } from '../../../src/app/logs/found-run.ts';
import { type RunRead, runFromLog } from '../../../src/app/logs/run-from-log.ts';
import { curveOf } from '../../../src/logs/curve-of.ts';
import { runSchema } from '../../../src/schema/live-tests/run.ts';
import { madeRunLog } from '../../browser/driver/made-run-log.ts';
import { type ReadText, readText } from '../../logs/read-text.ts';
import { asCsv, followed, syntheticDischarge } from '../../logs/synthetic-lfp.ts';

const LOG_ID = 'a'.repeat(64);
const STAMP = `000001790000000.000000.${'0'.repeat(32)}`;

function readOf({ reading, runs, mapping }: ReadText, place = 0): RunRead {
  const run = runs[place];
  if (run === undefined) throw new RangeError(`no run ${place}`);
  const rowCount = run.lastIndex - run.firstIndex + 1;
  return {
    runs,
    place,
    curve: curveOf(reading, run, 600),
    logId: LOG_ID,
    mapping,
    rowCount,
    startedAtMs: reading.startedAtMs,
  };
}

/** A charge of an hour at −20 A, a rest of so many minutes, then 50 A out: closed forms, no knee of interest. */
function chargedThenRun(restMin: number): string {
  const charge = Array.from({ length: 361 }, (_, at) => ({
    timeS: at * 10,
    currentA: -20,
    voltageV: 13.3 + at * 0.003,
  }));
  const rest = Array.from({ length: restMin * 6 }, () => ({ currentA: 0, voltageV: 13.6 }));
  const run = Array.from({ length: 361 }, (_, at) => ({ currentA: 50, voltageV: 13.2 - at * 0.001 }));
  return asCsv(followed(followed(charge, rest), run));
}

describe('a run read from a log, as it is stored', () => {
  const minutes = readText(madeRunLog(), (mapping) => ({ ...mapping, timeFormat: 'minutes' }));
  const stored = runFromLog(readOf(minutes));

  it('has 100 Ah of 20 A over 300 min, magnitudes from a log whose discharge is negative', () => {
    expect(stored.chargeAh).toBeCloseTo((20 * 300) / 60, 9);
    expect(stored.currentA).toBeCloseTo(20, 9);
    expect(stored.durationS).toBe(18_000);
    expect(stored.curve?.timeS[0]).toBe(0);
    expect(stored.curve?.currentA?.every((amperes) => amperes === 20)).toBe(true);
    expect(stored.curve?.chargeAh?.at(-1)).toBeCloseTo(100, 9);
  });

  it('names its lines, rows and cell temperatures, and passes the schema of a run', () => {
    expect(stored.log).toMatchObject({ logId: LOG_ID, firstLine: 47, lastLine: 347, rowCount: 301, gapCount: 0 });
    expect([stored.cellStartDegC, stored.cellEndDegC]).toEqual([21.4, 24.5]);
    expect(stored.end).toBe('lowVoltage');
    expect(v.safeParse(runSchema, { ...stored, made: STAMP }).issues).toBeUndefined();
    expect(stored.curve?.timeS.length).toBeLessThanOrEqual(600);
  });

  it('takes 40 min of rest from a log that begins with it, being enough; 20 min may have been longer and are left open', () => {
    expect(stored.restMin).toBe(40);
    const seconds = runFromLog(readOf(readText(madeRunLog(), (mapping) => ({ ...mapping, timeFormat: 'seconds' }))));
    expect('restMin' in seconds).toBe(false);
  });

  it('takes 10 min of rest where the log shows the charge before it', () => {
    const read = readText(chargedThenRun(10));
    expect(read.runs.map(({ kind }) => kind)).toEqual(['charge', 'discharge']);
    expect(restBefore(read.runs, 1)).toMatchObject({ known: 'afterCharge' });
    // From the last row under charge to the first under load: the 60 rows of rest and one step more.
    expect(runFromLog(readOf(read, 1)).restMin).toBeCloseTo(10 + 10 / 60, 9);
  });

  it('ends at the last voltage before the terminals dropped, not at the 0 V after it', () => {
    const cutOff = followed(syntheticDischarge({ cells: 4, until: 0.5 }), [
      { currentA: 50, voltageV: 0.4 },
      { currentA: 0, voltageV: 0 },
      { currentA: 0, voltageV: 0 },
    ]);
    const run = runFromLog(readOf(readText(asCsv(cutOff))));
    expect(run.end).toBe('packDisconnect');
    expect(run.endVoltageV).toBeGreaterThan(12);
  });

  it('has a day where the log has dates, and none where it counts from its start', () => {
    const dated = Array.from(
      { length: 120 },
      (_, at) =>
        `2026-11-24T${String(20 + Math.floor(at / 60)).padStart(2, '0')}:${String(at % 60).padStart(2, '0')}:00,20,${13 - at / 1000}`,
    );
    expect(runFromLog(readOf(readText(`Time,Current [A],Voltage [V]\n${dated.join('\n')}\n`))).on).toBe('2026-11-24');
    expect('on' in stored).toBe(false);
  });

  it('has charge and no energy where the log has current only, and a curve without voltage', () => {
    const rows = Array.from({ length: 361 }, (_, at) => `${at * 10},${at === 0 ? 0 : 50}`);
    const run = runFromLog(readOf(readText(`Time [s],Current [A]\n${rows.join('\n')}\n`)));
    // 50 A from the second row to the last: 3590 s.
    expect(run.chargeAh).toBeCloseTo((50 * 3590) / 3600, 9);
    expect(run.curve?.voltageV).toBeNull();
    expect('energyWh' in run).toBe(false);
  });

  it('has no charge, energy or current where the log has voltages only, and a curve without them', () => {
    const rows = Array.from({ length: 100 }, (_, at) => `${at * 60},${(13.2 - at / 500).toFixed(3)}`);
    const run = runFromLog(readOf(readText(`Time [s],Voltage [V]\n${rows.join('\n')}\n`)));
    expect(['chargeAh', 'energyWh', 'currentA'].filter((key) => key in run)).toEqual([]);
    expect(run.curve).toMatchObject({ currentA: null, chargeAh: null });
    expect(v.safeParse(runSchema, { ...run, made: STAMP }).issues).toBeUndefined();
  });
});

describe('runs found in a log', () => {
  const { runs } = readText(chargedThenRun(10));

  it('can be kept if they deliver: a charge cannot, a discharge and its hold can, voltages alone can', () => {
    expect(runs.map(canBeKept)).toEqual([false, true]);
    expect(canBeKept({ kind: 'hold', flow: 'in' })).toBe(false);
    expect(canBeKept({ kind: 'hold', flow: 'out' })).toBe(true);
    expect(canBeKept({ kind: 'voltageOnly', flow: null })).toBe(true);
  });

  it('are ticked at first if they are discharges of a tenth of the largest or more', () => {
    const [charge, run] = runs;
    if (charge === undefined || run === undefined) throw new Error('two runs are needed');
    const pulse = (chargeAh: number) => ({ ...run, chargeAh });
    expect(tickedAtFirst([charge, pulse(100), pulse(10), pulse(9.99), { ...pulse(100), kind: 'hold' }])).toEqual([
      1, 2,
    ]);
  });
});
