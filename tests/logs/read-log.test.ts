import { describe, expect, it } from 'vitest';
import { guessMapping } from '../../src/logs/guess-mapping.ts';
import { REJECTED_KEPT } from '../../src/logs/log-reading.ts';
import { readLog } from '../../src/logs/read-log.ts';
import { readText } from './read-text.ts';

const HEAD = 'Time [s],I [A],U [V]\n';
const read = (rows: string, head = HEAD) => readText(head + rows).reading;
const times = (rows: string, head = HEAD) => Array.from(read(rows, head).columns.timeS);
/** Time of the cells alone, beside a steady voltage. */
const timesOf = (cells: readonly string[], head = 'Time,U [V]\n') =>
  times(cells.map((cell) => `${cell},3.3\n`).join(''), head);

describe('time', () => {
  it.each([
    ['seconds, the first not 0', ['60.0286', '61.0286', '62.0286'], [60.0286, 61.0286, 62.0286]],
    ['hh:mm:ss past 24 h', ['23:59:59', '24:00:00', '25:00:01'], [86_399, 86_400, 90_001]],
    ['0d 00:00:05', ['0d 00:00:05', '0d 23:59:59', '1d 00:00:09'], [5, 86_399, 86_409]],
    [
      'ISO with Z',
      ['2026-03-26T10:00:00.000Z', '2026-03-26T10:00:00.464Z', '2026-03-27T10:00:00Z'],
      [0, 0.464, 86_400],
    ],
    ['ISO without Z', ['2026-03-26 10:00:00', '2026-03-26 10:00:30', '2026-03-26 10:01:00'], [0, 30, 60]],
    ['day first', ['31.03.2026 23:59:50', '01.04.2026 00:00:00', '01.04.2026 00:00:10'], [0, 10, 20]],
    ['month first', ['03/31/2026 23:59:50', '04/01/2026 00:00:00', '04/01/2026 00:00:10'], [0, 10, 20]],
  ])('reads %s', (_, cells, expected) => {
    for (const [place, timeS] of timesOf(cells).entries()) expect(timeS).toBeCloseTo(expected[place] ?? Number.NaN, 6);
    expect(timesOf(cells)).toHaveLength(3);
  });

  it('reads spreadsheet serial days: 46107.5 is 2026-03-26T12:00Z, a day-thousandth 86.4 s (closed form)', () => {
    const reading = read('46107.500,3.3\n46107.501,3.3\n46107.502,3.3\n', 'Time,U [V]\n');
    expect(reading.startedAtMs).toBe(Date.UTC(2026, 2, 26, 12));
    expect(reading.columns.timeS[1]).toBeCloseTo(86.4, 5);
  });

  it('reads a date and a clock time in two columns, over midnight', () => {
    const reading = readText(
      'Date,Time,U [V]\n2026-03-26,23:59:30,3.3\n2026-03-26,23:59:45,3.3\n2026-03-27,00:00:00,3.3\n',
    ).reading;
    expect(Array.from(reading.columns.timeS)).toEqual([0, 15, 30]);
    expect(reading.startedAtMs).toBe(Date.parse('2026-03-26T23:59:30Z'));
  });

  it('carries a clock without a date over midnight once, and says so', () => {
    const reading = read('23:59:50,3.3\n23:59:59,3.3\n00:00:08,3.3\n00:00:17,3.3\n', 'Time,U [V]\n');
    expect(Array.from(reading.columns.timeS)).toEqual([86_390, 86_399, 86_408, 86_417]);
    expect(reading.counts.midnights).toBe(1);
    expect(reading.stretches).toHaveLength(1);
  });

  it('keeps pairs 0.1 ms apart apart', () => {
    expect(times('0,1,3.3\n1.0000,1,3.3\n1.0001,1,3.3\n2,1,3.3\n')).toEqual([0, 1, 1.0001, 2]);
  });
});

describe('order', () => {
  it('rejects one row at 0.000 at a step start, with its line', () => {
    const reading = read('0,0,3.3\n10,0,3.3\n20,0,3.3\n0.000,-5,3.2\n20.01,-5,3.2\n30,-5,3.1\n');
    expect(Array.from(reading.columns.timeS)).toEqual([0, 10, 20, 20.01, 30]);
    expect(reading.rejected).toEqual([{ line: 5, reason: 'timeFellForOneRow' }]);
    expect(reading.stretches).toEqual([{ firstIndex: 0, lastIndex: 4 }]);
  });

  it('splits where files were joined, and sorts nothing', () => {
    const reading = read('0,1,3.3\n1,1,3.3\n2,1,3.3\n3,1,3.3\n0,1,3.2\n1,1,3.2\n2,1,3.2\n');
    expect(reading.stretches).toEqual([
      { firstIndex: 0, lastIndex: 3 },
      { firstIndex: 4, lastIndex: 6 },
    ]);
    expect(Array.from(reading.columns.timeS)).toEqual([0, 1, 2, 3, 0, 1, 2]);
    expect(reading.counts.rejected).toBe(0);
  });

  it('rejects one row far above both neighbours', () => {
    const reading = read('0,1,3.3\n1,1,3.3\n99999,1,3.3\n3,1,3.3\n4,1,3.3\n');
    expect(reading.rejected).toEqual([{ line: 4, reason: 'timeJumpedForOneRow' }]);
    expect(reading.stretches).toHaveLength(1);
  });

  it('rejects a last row whose time falls', () => {
    expect(read('0,1,3.3\n1,1,3.3\n2,1,3.3\n0,1,3.3\n').rejected).toEqual([{ line: 5, reason: 'timeFellForOneRow' }]);
  });
});

describe('equal stamps', () => {
  it('averages them inside a run: (13.0 + 13.2 + 13.1) / 3 V', () => {
    const reading = read('0,5,13.3\n1,5,13.0\n1,5,13.2\n1,5,13.1\n2,5,13.0\n');
    expect(reading.columns.voltageV?.[1]).toBeCloseTo(13.1, 12);
    expect(reading.counts).toMatchObject({ rowsRead: 5, merged: 2, rejected: 0 });
    expect(Array.from(reading.columns.line)).toEqual([2, 3, 6]);
  });

  it('never averages across a change of load', () => {
    const reading = read('0,0,13.3\n1,0,13.3\n1,5,13.0\n2,5,13.0\n');
    expect(Array.from(reading.columns.currentA ?? [])).toEqual([0, 0, 5, 5]);
    expect(reading.counts.merged).toBe(0);
  });

  it('never averages across a change of step, though the current is the same', () => {
    const reading = read('0,1,5,13.3\n1,1,5,13.3\n1,2,5,13.0\n2,2,5,13.0\n', 'Time [s],Step,I [A],U [V]\n');
    expect(Array.from(reading.columns.voltageV ?? [])).toEqual([13.3, 13.3, 13, 13]);
    expect(reading.counts.merged).toBe(0);
  });
});

describe('cells', () => {
  it('reads exponents and leaves no minus on a zero', () => {
    const reading = read('0,-0,3.3\n1,6.78E-05,3.3\n2,1.5e0,3.3\n');
    expect(Object.is(reading.columns.currentA?.[0], 0)).toBe(true);
    expect(Math.abs(reading.columns.currentA?.[1] ?? 0)).toBe(6.78e-5);
  });

  it('leaves no minus on a printed -0 of a log whose current is not turned', () => {
    const reading = read('0,-0,3.3\n1,5,3.2\n2,5,3.1\n3,-0,3.3\n');
    expect(reading.sign.outIs).toBe('positive');
    expect(Object.is(reading.columns.currentA?.[0], 0)).toBe(true);
  });

  it('leaves no minus on a zero of a log whose current is turned', () => {
    const reading = read('0,0,3.3\n1,-5,3.2\n2,-5,3.1\n3,0,3.3\n');
    expect(reading.sign.outIs).toBe('negative');
    expect(Object.is(reading.columns.currentA?.[0], 0)).toBe(true);
  });

  it('rejects text in a number column, a sentinel, a cut-off row and a row that is none, each with its reason', () => {
    const reading = read(
      '0,1,3.3\n1,1,unavailable\n2,3.40E+38,3.3\n[Part 2]\nTime [s],I [A],U [V]\n5,1,3.3\n6\n7,1,3.3\n',
    );
    expect(reading.rejected).toEqual([
      { line: 3, reason: 'notANumber' },
      { line: 4, reason: 'sentinel' },
      { line: 5, reason: 'notARow' },
      { line: 6, reason: 'badTime' },
      { line: 8, reason: 'emptyCell' },
    ]);
    expect(Array.from(reading.columns.timeS)).toEqual([0, 5, 7]);
  });

  it('leaves out a temperature of -2500 °C, not its row', () => {
    const reading = read('0,3.3,25\n1,3.3,-2500\n2,3.3,n/a\n3,3.3,26\n', 'Time [s],U [V],T [degC]\n');
    expect(Array.from(reading.columns.temperatureDegC ?? [])).toEqual([25, Number.NaN, Number.NaN, 26]);
    expect(reading.counts).toMatchObject({ rejected: 0, temperaturesLeftOut: 1 });
  });

  it('fills a voltage present only on every third row along the straight line, and counts it', () => {
    const reading = read('0,1,3.30\n1,1,\n2,1,\n3,1,3.27\n4,1,\n5,1,\n6,1,3.24\n7,1,\n');
    expect(reading.columns.voltageV?.[1]).toBeCloseTo(3.29, 12);
    expect(reading.columns.voltageV?.[5]).toBeCloseTo(3.25, 12);
    expect(reading.counts).toMatchObject({ filled: 4, rejected: 1 });
    expect(reading.rejected).toEqual([{ line: 9, reason: 'emptyCell' }]);
  });

  it('bridges no more than ten rows', () => {
    const gap = (rows: number) => Array.from({ length: rows }, (_, row) => `${row + 1},1,\n`).join('');
    expect(read(`0,1,3.3\n${gap(9)}10,1,3.2\n11,1,3.2\n`).counts.filled).toBe(9);
    expect(read(`0,1,3.3\n${gap(10)}11,1,3.2\n12,1,3.2\n`).counts).toMatchObject({ filled: 0, rejected: 10 });
  });

  it('reads quoted cells and a last row without a line end', () => {
    const reading = read('"0","1.5","3.30"\n"1","1.5","3.29"\n"2","1.5","3.28"');
    expect(Array.from(reading.columns.timeS)).toEqual([0, 1, 2]);
    expect(reading.columns.voltageV?.[2]).toBe(3.28);
  });

  it('reads decimal commas with exponents', () => {
    const { reading } = readText(
      'Zeit/s\tU/V\tI/mA\n0,5\t3,2196126E+000\t-0,5\n1,5\t3,21E+000\t-0,5\n2,5\t3,20E+000\t-0,5\n',
    );
    expect(reading.columns.voltageV?.[0]).toBe(3.2196126);
    expect(reading.columns.timeS[1]).toBe(1.5);
    expect(reading.columns.currentA?.[0]).toBeCloseTo(0.0005, 15);
  });

  it('runs counters on where they restart: 0.2 + 0.3 Ah', () => {
    const { columns } = read(
      '0,-5,3.3,0\n1,-5,3.3,0.1\n2,-5,3.3,0.2\n3,-5,3.3,0\n4,-5,3.3,0.3\n',
      'Time [s],I [A],U [V],Discharge capacity [Ah]\n',
    );
    expect(columns.counterOutAh?.[4]).toBeCloseTo(0.5, 12);
  });

  it('adds what a counter shows after its restart, if it is past 0 by then: 0.2 + 0.05 + 0.25 Ah', () => {
    const { columns } = read(
      '0,-5,3.3,0\n1,-5,3.3,0.1\n2,-5,3.3,0.2\n3,-5,3.3,0.05\n4,-5,3.3,0.3\n',
      'Time [s],I [A],U [V],Discharge capacity [Ah]\n',
    );
    expect(columns.counterOutAh?.[4]).toBeCloseTo(0.5, 12);
  });

  it('lets a counter of net charge count down: 10 Ah left to 9.7 Ah is 0.3 Ah', () => {
    const { columns } = read(
      '0,-5,3.3,10\n1,-5,3.3,9.9\n2,-5,3.3,9.7\n3,-5,3.3,9.7\n',
      'Time [s],I [A],U [V],Capacity [Ah]\n',
    );
    expect(columns.counterNetAh?.[3]).toBeCloseTo(-0.3, 12);
  });

  it('reads UTF-16 as it reads UTF-8', () => {
    const text = 'Time [s],I [A],U [V]\n0,\u22121,3.3\n1,\u22121,3.2\n2,\u22121,3.1\n';
    const wide = Uint8Array.from([
      0xff,
      0xfe,
      ...[...text].flatMap((character) => [character.charCodeAt(0) & 255, character.charCodeAt(0) >> 8]),
    ]);
    expect(readText(wide).reading.columns).toEqual(readText(text).reading.columns);
    expect(readText(text).reading.counts).toMatchObject({ rowsRead: 3, rejected: 0 });
  });
});

describe('nothing is silently dropped', () => {
  it('accounts for every row of a bad log: read = kept + merged + rejected', () => {
    const rows = Array.from({ length: 5000 }, (_, row) =>
      row % 7 === 3 ? `${row},x,y` : row % 11 === 5 ? `${row - 1},1,3.3` : `${row},1,3.3`,
    );
    const { reading } = readText(`Time [s],I [A],U [V]\n${rows.join('\n')}\n`);
    const { rowsRead, merged, rejected } = reading.counts;
    expect(rowsRead).toBe(5000);
    expect(reading.columns.timeS.length + merged + rejected).toBe(5000);
    expect(merged).toBeGreaterThan(0);
  });

  it(`keeps the first ${REJECTED_KEPT} rejected rows and counts all`, () => {
    const rows = Array.from({ length: 3000 }, (_, row) => (row % 2 === 0 ? `${row},1,3.3` : `${row},1,bad`));
    const { reading } = readText(`Time [s],I [A],U [V]\n${rows.join('\n')}\n`);
    expect(reading.counts.rejected).toBe(1500);
    expect(reading.rejected).toHaveLength(REJECTED_KEPT);
  });

  it('says why there is no charge: noCurrentColumn; and why no energy: noVoltageColumn', () => {
    expect(read('0,3.3\n1,3.2\n', 'Time [s],U [V]\n')).toMatchObject({
      noCharge: 'noCurrentColumn',
      noEnergy: 'noCurrentColumn',
    });
    expect(read('0,3.3\n1,3.2\n', 'Time [s],I [A]\n')).toMatchObject({ noCharge: null, noEnergy: 'noVoltageColumn' });
  });

  it('refuses a log over 256 MiB: tooLarge', () => {
    const bytes = new Uint8Array(256 * 1024 * 1024 + 1);
    const mapping = guessMapping(new TextEncoder().encode('Time [s],U [V]\n0,3\n1,3\n'));
    expect(readLog(bytes, mapping).next().value).toMatchObject({ refused: 'tooLarge' });
  });

  it('refuses rows that are all bad, and still counts them: noNumbers', () => {
    const mapping = guessMapping(new TextEncoder().encode('Time [s],U [V]\n0,3\n1,3\n'));
    const steps = readLog(new TextEncoder().encode('Time [s],U [V]\nx,y\nz,w\n'), mapping);
    let step = steps.next();
    while (!step.done) step = steps.next();
    expect(step.value).toMatchObject({ refused: 'noNumbers', counts: { rowsRead: 2, rejected: 2 } });
  });

  it('pauses at least every 12 000 rows, its share rising to 1 at most', () => {
    const rows = Array.from({ length: 60_000 }, (_, row) => `${row},1,3.3`).join('\n');
    const bytes = new TextEncoder().encode(`Time [s],I [A],U [V]\n${rows}\n`);
    const shares: number[] = [];
    for (const { doneFrac } of readLog(bytes, guessMapping(bytes))) shares.push(doneFrac);
    expect(shares.length).toBeGreaterThanOrEqual(5);
    expect(shares.toSorted((one, other) => one - other)).toEqual(shares);
    expect(shares.at(-1)).toBeLessThanOrEqual(1);
  });
});
