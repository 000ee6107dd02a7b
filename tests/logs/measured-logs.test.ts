import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { type ReadText, readBytes } from './read-text.ts';

/** Measured logs under open licences stand beside the project, not in it (DEVELOPERS.md); elsewhere these tests are skipped. */
const FOLDER = process.env.UNDERLID_DATA ?? resolve(import.meta.dirname, '../../../shared/data');
const here = existsSync(join(FOLDER, 'expected.json'));

interface Segment {
  file: string;
  segment: string;
  lines?: [number, number];
  rows: number;
  duration_s: number;
  ah_trapz: number;
  wh_trapz: number;
  v_first: number;
  v_last: number;
  v_mean_energy: number;
  i_mean_timeweighted_A: number;
  discharge_sign_in_file: string;
  end: string;
  counters?: { ah_delta?: number; ah_sum_over_resets?: number };
}

const segments: Segment[] = here ? JSON.parse(readFileSync(join(FOLDER, 'expected.json'), 'utf8')).segments : [];
const measured = segments.filter(({ lines }) => lines !== undefined);
const known = new Map<string, ReadText>();

function readFile(file: string): ReadText {
  const read = known.get(file) ?? readBytes(new Uint8Array(readFileSync(join(FOLDER, file))));
  known.set(file, read);
  return read;
}

/** The run that ends where the segment does; it begins there too, or on the next row where the first is a rest row. */
function runOf({ file, lines = [0, 0] }: Segment) {
  const { runs } = readFile(file);
  const run = runs.find(({ lastLine }) => lastLine === lines[1]);
  if (run === undefined) throw new Error(`${file}: no run ends on line ${lines[1]}`);
  return run;
}

const off = (found: number | null, expected: number) => Math.abs((found ?? Number.NaN) / expected - 1);
const worst = { chargeFrac: 0, energyFrac: 0, counterFrac: 0 };

describe.skipIf(!here)('measured logs', () => {
  afterAll(() => {
    const shown = Object.entries(worst).map(([what, frac]) => `${what} ${frac.toExponential(1)}`);
    console.log(`measured logs: largest relative errors against the trapezoid and the counters: ${shown.join(', ')}`);
  });

  it('finds 12 segments and one voltage log to check', () => {
    expect(measured).toHaveLength(12);
    expect(segments).toHaveLength(13);
  });

  it.each(measured.map((segment) => [`${segment.file}, ${segment.segment}`, segment] as const))(
    '%s: lines, Ah, Wh, duration and end as expected',
    (_, segment) => {
      const run = runOf(segment);
      const [firstLine] = segment.lines ?? [0];
      // A first row at rest, or one at time 0.000, is listed with some segments and is no loaded row.
      expect([firstLine, firstLine + 1]).toContain(run.firstLine);
      expect(run.kind).toBe('discharge');
      expect(run.end).toBe(segment.end);
      worst.chargeFrac = Math.max(worst.chargeFrac, off(run.chargeAh, segment.ah_trapz));
      worst.energyFrac = Math.max(worst.energyFrac, off(run.energyWh, segment.wh_trapz));
      expect(off(run.chargeAh, segment.ah_trapz)).toBeLessThan(1e-6);
      expect(off(run.energyWh, segment.wh_trapz)).toBeLessThan(1e-6);
      expect(run.durationS).toBeCloseTo(segment.duration_s, 1);
      expect(run.meanVoltageV).toBeCloseTo(segment.v_mean_energy, 3);
      expect(run.meanCurrentA).toBeCloseTo(segment.i_mean_timeweighted_A, 4);
      expect(run.endVoltageV).toBeCloseTo(segment.v_last, 3);
    },
  );

  it.each(measured.filter(({ counters }) => counters !== undefined).map((segment) => [segment.file, segment] as const))(
    '%s: charge within two in ten thousand of the instrument’s counter',
    (_, segment) => {
      const run = runOf(segment);
      const counterAh = segment.counters?.ah_sum_over_resets ?? segment.counters?.ah_delta ?? Number.NaN;
      expect(off(run.counterChargeAh, counterAh)).toBeLessThan(1e-6);
      worst.counterFrac = Math.max(worst.counterFrac, off(run.chargeAh, counterAh));
      expect(off(run.chargeAh, counterAh)).toBeLessThan(2e-4);
    },
  );

  it.each(measured.map((segment) => [segment.file, segment] as const))(
    '%s: sign of current found, with a reason',
    (file, segment) => {
      const { outIs, because } = readFile(file).reading.sign;
      expect(outIs).toBe(segment.discharge_sign_in_file.toLowerCase().startsWith('positive') ? 'positive' : 'negative');
      expect(['counters', 'currentSteps', 'voltageTrend']).toContain(because);
    },
  );

  it('reads every row of every log: none merged but equal stamps, none rejected but one faulty row a step and text rows', () => {
    const counts = [...new Set(segments.map(({ file }) => file))].map((file) => {
      const { rowsRead, merged, rejected } = readFile(file).reading.counts;
      return [file.split('/')[1], rowsRead, merged, rejected];
    });
    // Rows: lines of each file less its header. 19 steps after the first of the pouch log begin with a row at 0.000.
    expect(counts).toEqual([
      ['LFP_25degC_Co20.csv', 7454, 0, 0],
      ['LFP_25degC_Co2.csv', 7218, 0, 0],
      ['LFP_25degC_1C.csv', 3500, 0, 0],
      ['A002_CCCV_1C_2_script2_C3_discharge.csv', 29_621, 0, 0],
      ['A002_PeriodicPulseData.csv', 21_595, 0, 0],
      ['pouch-rate-time-bug.bdf.csv', 13_086, 0, 19],
      ['phone-cell-c30.bdf.csv', 17_587, 5, 0],
      ['T-cell_pOCV_data.txt', 9740, 0, 0],
      ['Test_D3_March_2026_Voltage.csv', 2319, 0, 8],
    ]);
  });

  it('parts the hold at 1.90 V from the C/3 discharge, with the step numbers and without', () => {
    const file = 'lfp-26650-25c/A002_CCCV_1C_2_script2_C3_discharge.csv';
    const ends = ({ runs }: ReadText) =>
      runs.map(({ kind, firstLine, lastLine, end }) => [kind, firstLine, lastLine, end]);
    const expected = [
      ['discharge', 7143, 17_922, 'lowVoltage'],
      ['hold', 17_923, 18_822, 'taper'],
    ];
    expect(ends(readFile(file))).toEqual(expected);
    const unstepped = readBytes(new Uint8Array(readFileSync(join(FOLDER, file))), {
      change: (mapping) => ({
        ...mapping,
        columns: mapping.columns.map((use) =>
          use.quantity === 'step' ? { ...use, quantity: 'ignored' as const } : use,
        ),
      }),
    });
    expect(ends(unstepped)).toEqual(expected);
  });

  it.each([4, 8, 16])(
    'tells the same ends when every voltage is %i times as large (made from the logs of LFP cells)',
    (cells) => {
      for (const { file, end, lines = [0, 0] } of measured.filter((segment) => segment.file.startsWith('lfp'))) {
        const { runs } = readBytes(new Uint8Array(readFileSync(join(FOLDER, file))), {
          change: (mapping) => ({
            ...mapping,
            columns: mapping.columns.map((use) => (use.quantity === 'voltage' ? { ...use, scale: cells } : use)),
          }),
        });
        expect(runs.find(({ lastLine }) => lastLine === lines[1])?.end).toBe(end);
      }
    },
  );

  it('shows the temperature of the cell, not of the air: 25.9 °C rising to 26.1 °C over 1C for 30 min', () => {
    const [run] = readFile('lfp-26650-25c/A002_PeriodicPulseData.csv').runs;
    expect(run?.temperatures).toMatchObject({ startDegC: 25.899, endDegC: 26.095 });
    expect(run?.restBeforeS).toBeGreaterThan(3500);
  });

  it('shows voltages of the 12 V pack, refuses Ah and Wh, and finds the end at line 2298, 11.77 V', () => {
    const { reading, runs } = readFile('lfp-12v-pack-voltage/Test_D3_March_2026_Voltage.csv');
    expect(reading).toMatchObject({
      noCharge: 'noCurrentColumn',
      noEnergy: 'noCurrentColumn',
      sign: { because: 'noCurrent' },
    });
    expect(reading.columns.timeS).toHaveLength(2311);
    expect(reading.rejected.map(({ line, reason }) => `${line} ${reason}`)).toEqual(
      [2028, 2050, 2165, 2167, 2169, 2171, 2176, 2181].map((line) => `${line} notANumber`),
    );
    expect(runs).toHaveLength(1);
    expect(runs[0]).toMatchObject({ kind: 'voltageOnly', chargeAh: null, energyWh: null, end: 'lowVoltage' });
    expect(runs[0]?.evidence.lastVoltageV).toBe(11.77);
    expect(reading.startedAtMs).toBe(Date.parse('2026-03-26T10:00:00Z'));
  });

  it('refuses the table of rest voltages, which is no log: noTime', () => {
    expect(readFile('lfp-26650-25c/derived-pseudo-ocv-25c.csv').reading.refused).toBe('noTime');
  });

  it.each(['Co20', 'Co2', '1C'])(
    'LFP at %s cut on the plateau, with rows of 0 V and 0 A put behind (made from the log): packDisconnect',
    (rate) => {
      const lines = readFileSync(join(FOLDER, `lfp-18650-25c/LFP_25degC_${rate}.csv`), 'utf8').split('\n');
      for (const share of [0.3, 0.6, 0.8]) {
        const kept = lines.slice(0, Math.floor(lines.length * share));
        const lastS = Number(kept.at(-1)?.split(',')[0]);
        const gone = Array.from({ length: 20 }, (_, row) => `${lastS + row + 1},0,0`);
        const { runs } = readBytes(new TextEncoder().encode([...kept, ...gone].join('\n')));
        expect(runs.map(({ end }) => end)).toEqual(['packDisconnect']);
      }
    },
  );
});

/** As many as run above where the folder is here; kept right by the check below. */
const COUNT = 41;

if (here) {
  it(`counts ${COUNT} tests on measured logs, itself among them`, () => {
    const fixed = 8;
    const cuts = 3;
    const packs = 3;
    const counters = measured.filter((segment) => segment.counters !== undefined).length;
    expect(2 * measured.length + counters - 1 + fixed + cuts + packs).toBe(COUNT);
  });
} else {
  it.skip(`${COUNT} tests on measured logs: ${FOLDER} is not here`, () => {});
}
