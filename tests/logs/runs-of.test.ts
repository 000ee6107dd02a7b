import { describe, expect, it } from 'vitest';
import { curveOf, overviewOf } from '../../src/logs/curve-of.ts';
import { runsOf } from '../../src/logs/runs-of.ts';
import { readText } from './read-text.ts';
import { asCsv, followed, type SyntheticRow, syntheticDischarge } from './synthetic-lfp.ts';

/** Rest rows after a discharge, the voltage back at `volts` a pack. */
const rest = (voltageV: number, rows = 12) => Array.from({ length: rows }, () => ({ currentA: 0, voltageV }));
const gone = Array.from({ length: 12 }, () => ({ currentA: 0, voltageV: 0 }));
const runs = (rows: readonly SyntheticRow[], decimals?: number) => readText(asCsv(rows, decimals)).runs;

describe('ends of synthetic packs', () => {
  it.each([4, 8, 16])('cut off on the plateau, %i cells: packDisconnect', (cells) => {
    for (const until of [0.3, 0.6, 0.85]) {
      const found = runs(followed(syntheticDischarge({ cells, until }), gone));
      expect(found.map(({ kind, end }) => `${kind} ${end}`)).toEqual(['discharge packDisconnect']);
    }
  });

  it.each([4, 8, 16])('run through the knee, %i cells: lowVoltage, whoever opened', (cells) => {
    expect(runs(followed(syntheticDischarge({ cells }), gone)).map(({ end }) => end)).toEqual(['lowVoltage']);
    expect(runs(followed(syntheticDischarge({ cells }), rest(cells * 2.9))).map(({ end }) => end)).toEqual([
      'lowVoltage',
    ]);
    expect(runs(syntheticDischarge({ cells })).map(({ end }) => end)).toEqual(['lowVoltage']);
  });

  it.each([4, 8, 16])('taken off the load on the plateau, %i cells: stopped; log cut short: unclear', (cells) => {
    const half = syntheticDischarge({ cells, until: 0.5 });
    expect(runs(followed(half, rest(cells * 3.3))).map(({ end }) => end)).toEqual(['stopped']);
    expect(runs(half).map(({ end }) => end)).toEqual(['unclear']);
  });

  it('tells the same from voltages in steps of 10 mV', () => {
    expect(runs(followed(syntheticDischarge({ cells: 4, until: 0.6 }), gone), 2)[0]?.end).toBe('packDisconnect');
    expect(runs(followed(syntheticDischarge({ cells: 4 }), rest(11.6)), 2)[0]?.end).toBe('lowVoltage');
    expect(runs(followed(syntheticDischarge({ cells: 1, until: 0.6 }), rest(3.28)), 2)[0]).toMatchObject({
      end: 'stopped',
      evidence: { voltageStepV: expect.closeTo(0.01, 9) },
    });
  });

  it('tells them without a current column too, save that nobody can say a load was taken off', () => {
    const volts = (rows: readonly SyntheticRow[]) =>
      readText(
        `Time [s],Voltage [V]\n${rows.map(({ timeS, voltageV }) => `${timeS},${voltageV.toFixed(3)}`).join('\n')}\n`,
      ).runs[0];
    expect(volts(followed(syntheticDischarge({ cells: 4 }), rest(11.9)))).toMatchObject({
      kind: 'voltageOnly',
      end: 'lowVoltage',
      chargeAh: null,
    });
    expect(volts(followed(syntheticDischarge({ cells: 4, until: 0.6 }), gone))).toMatchObject({
      end: 'packDisconnect',
      energyWh: null,
    });
    expect(volts(followed(syntheticDischarge({ cells: 4, until: 0.6 }), rest(13.2)))?.end).toBe('unclear');
  });
});

describe('cutting', () => {
  it('integrates from the first to the last loaded row: 50 A from 10 s to 3600 s is 49.861 Ah (closed form)', () => {
    const [run] = runs(followed(syntheticDischarge({ cells: 4 }), rest(12)));
    expect(run).toMatchObject({
      kind: 'discharge',
      flow: 'out',
      firstLine: 3,
      lastLine: 362,
      startS: 10,
      endS: 3600,
      restBeforeS: 10,
    });
    expect(run?.chargeAh).toBeCloseTo((50 * 3590) / 3600, 9);
    expect(run?.meanCurrentA).toBeCloseTo(50, 9);
  });

  it.each([
    [0.0026, 0.1],
    [0.05, 50],
  ])('takes a rest current of %f A for rest beside a load of %f A', (leakA, loadA) => {
    const rows = followed(
      syntheticDischarge({ cells: 1, currentA: loadA }).map((row) =>
        row.timeS === 0 ? { ...row, currentA: leakA } : row,
      ),
      rest(2.9, 100).map((row) => ({ ...row, currentA: leakA })),
    );
    const found = runs(rows);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ firstLine: 3, lastLine: 362 });
  });

  it('keeps a run at a fiftieth of another: 1 A after 50 A', () => {
    const first = followed(syntheticDischarge({ cells: 4, until: 0.5 }), rest(13.2));
    const slow = Array.from({ length: 700 }, (_, row) => ({ currentA: 1, voltageV: 13.1 - row / 10_000 }));
    expect(
      runs(followed(followed(first, slow), rest(13.1))).map(({ meanCurrentA }) => Math.round(meanCurrentA ?? 0)),
    ).toEqual([50, 1]);
  });

  it('parts a constant-current discharge from the hold that follows in the same step', () => {
    const hold = Array.from({ length: 60 }, (_, row) => ({ currentA: 45 * Math.exp(-row / 15), voltageV: 8 }));
    const found = runs(followed(followed(syntheticDischarge({ cells: 4 }), hold), rest(9)));
    expect(found.map(({ kind, end, evidence }) => `${kind} ${end} then ${evidence.followedBy}`)).toEqual([
      'discharge lowVoltage then hold',
      'hold taper then rest',
    ]);
    expect(found[0]?.lastLine).toBe(362);
    expect(found[1]?.firstLine).toBe(363);
  });

  it('parts a charge at 20 A from its hold at 14.4 V down to 1 A', () => {
    const up = Array.from({ length: 300 }, (_, row) => ({
      timeS: row * 10,
      currentA: -20,
      voltageV: 13.2 + 1.19 * (row / 299) ** 4,
    }));
    const hold = Array.from({ length: 120 }, (_, row) => ({ currentA: -20 * Math.exp(-row / 40), voltageV: 14.4 }));
    const found = runs(followed(followed(up, hold), rest(13.8)));
    expect(found.map(({ kind, flow, end }) => `${kind} ${flow} ${end}`)).toEqual([
      'charge in unclear',
      'hold in taper',
    ]);
    // Closed form of the hold: the first row whose current is under 97 % of 20 A is the second, 20·exp(-1/40) = 19.5 A.
    expect(found[1]?.startS).toBe(3000 + 20);
  });

  it('takes no load of constant resistance for a hold', () => {
    const rows = Array.from({ length: 300 }, (_, row) => {
      const voltageV = 13.0 - row / 3000;
      return { timeS: row * 10, currentA: voltageV / 0.65, voltageV };
    });
    expect(runs(followed(rows, rest(13.2))).map(({ kind }) => kind)).toEqual(['discharge']);
  });

  it('cuts where a step begins with another current, and not where only the step number changes', () => {
    const line = (row: number, step: number, amperes: number) =>
      `${row * 10},${step},${amperes},${(13.2 - row / 1000).toFixed(3)}`;
    const log = (currentOf: (row: number) => number) =>
      readText(
        `Time [s],Step,Current [A],Voltage [V]\n0,0,0,13.5\n${Array.from({ length: 200 }, (_, row) => line(row + 1, row < 100 ? 1 : 2, currentOf(row))).join('\n')}\n`,
      ).runs.map(({ meanCurrentA }) => Math.round(meanCurrentA ?? 0));
    expect(log((row) => (row < 100 ? 10 : 20))).toEqual([10, 20]);
    expect(log(() => 10)).toEqual([10]);
  });

  it('pays no heed to a step number that changes with every row', () => {
    const rows = Array.from(
      { length: 200 },
      (_, row) => `${row * 10},${row},${row === 0 ? 0 : row % 2 ? 10 : 13},${(13.2 - row / 1000).toFixed(3)}`,
    );
    expect(readText(`Time [s],Step,Current [A],Voltage [V]\n${rows.join('\n')}\n`).runs).toHaveLength(1);
  });

  it('reports a gap of five minutes inside a run, and does not cut there', () => {
    const rows = syntheticDischarge({ cells: 4, until: 0.5 }).filter(({ timeS }) => timeS <= 600 || timeS >= 900);
    const [run] = runs(rows);
    expect(run?.gaps).toEqual([{ index: 60, fromS: 600, toS: 900, lengthS: 300 }]);
    expect(run?.chargeAh).toBeCloseTo((50 * 1790) / 3600, 9);
  });

  it('bridges a counter that restarts in mid-run, and a run does not notice', () => {
    const rows = Array.from(
      { length: 121 },
      (_, row) =>
        `${row * 60},${row === 0 ? 0 : -6},${(13 - row / 500).toFixed(3)},${(row < 60 ? row : row - 60) / 10}`,
    );
    const [run] = readText(`Time [s],I [A],U [V],Discharge capacity [Ah]\n${rows.join('\n')}\n`).runs;
    // From row 1 (0.1 Ah) to row 59 (5.9 Ah) 5.8 Ah; the row of the restart shows 0; then up to 6.0 Ah.
    expect(run?.counterChargeAh).toBeCloseTo(11.8, 9);
    expect(run?.chargeAh).toBeCloseTo((6 * 119) / 60, 9);
  });

  it('leaves out a leak of a tenth of a per cent and single loaded rows', () => {
    const leak = Array.from({ length: 30 }, () => ({ currentA: 4, voltageV: 13.2 }));
    const found = runs(
      followed(followed(followed(syntheticDischarge({ cells: 4 }), rest(12, 3)), leak.slice(0, 1)), rest(12, 3)),
    );
    expect(found).toHaveLength(1);
  });

  it('gives temperatures of the run alone: 25 to 31 °C, 32 °C at most', () => {
    const rows = Array.from(
      { length: 60 },
      (_, row) =>
        `${row * 60},${row < 10 || row > 49 ? 0 : -5},${row < 10 || row > 49 ? 13.3 : 13},${row === 30 ? 32 : row < 30 ? 25 : row > 49 ? 60 : 31}`,
    );
    expect(readText(`Time [s],I [A],U [V],T [degC]\n${rows.join('\n')}\n`).runs[0]?.temperatures).toEqual({
      startDegC: 25,
      endDegC: 31,
      highestDegC: 32,
    });
  });

  it('integrates a log without voltage, and leaves energy and end open', () => {
    const rows = Array.from({ length: 61 }, (_, row) => `${row * 60},${row === 0 ? 0 : 5}`);
    expect(readText(`Time [s],Discharge current [A]\n${rows.join('\n')}\n`).runs[0]).toMatchObject({
      kind: 'discharge',
      chargeAh: expect.closeTo((5 * 59) / 60, 9),
      energyWh: null,
      meanVoltageV: null,
      startVoltageV: null,
      end: 'unclear',
    });
  });

  it('cuts each stretch of joined files by itself', () => {
    const once = asCsv(followed(syntheticDischarge({ cells: 4, until: 0.5 }), rest(13.2)));
    const { reading, runs: found } = readText(once + once);
    expect(reading.stretches).toHaveLength(2);
    expect(found.map(({ end }) => end)).toEqual(['stopped', 'stopped']);
    expect(reading.rejected).toEqual([{ line: 195, reason: 'badTime' }]);
  });

  it('takes the number of cells as help', () => {
    const { reading } = readText(asCsv(followed(syntheticDischarge({ cells: 4, until: 0.5 }), rest(13.2))));
    expect(runsOf(reading, { cellsInSeries: 4 })[0]?.evidence.voltagePerCellV).toBeCloseTo(3.22, 4);
    expect(runsOf(reading, { cutOffVoltageV: 12.9 })[0]?.end).toBe('lowVoltage');
  });
});

describe('curves', () => {
  const { reading, runs: found } = readText(asCsv(followed(syntheticDischarge({ cells: 4 }), rest(12))));

  it('thins a run to 100 points at most, its first and last rows and its lowest voltage among them', () => {
    const [run] = found;
    if (run === undefined) throw new Error('the synthetic log must give a run');
    const curve = curveOf(reading, run, 100);
    expect(curve.timeS.length).toBeLessThanOrEqual(100);
    expect([curve.timeS[0], curve.timeS.at(-1)]).toEqual([10, 3600]);
    expect(Math.min(...curve.voltageV)).toBeCloseTo(8, 3);
    expect(curve.chargeAh?.at(-1)).toBeCloseTo(run.chargeAh ?? 0, 9);
    expect(curve.temperatureDegC).toBeNull();
    expect([curve.voltageV.length, curve.currentA?.length, curve.chargeAh?.length]).toEqual(
      Array(3).fill(curve.timeS.length),
    );
  });

  it('draws the whole log, one curve for each stretch', () => {
    expect(overviewOf(reading, 2000)).toHaveLength(1);
    expect(overviewOf(reading, 2000)[0]?.timeS).toHaveLength(373);
  });
});
