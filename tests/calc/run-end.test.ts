import { describe, expect, it } from 'vitest';
import { type RunToJudge, runEnd } from '../../src/calc/run-end.ts';
import { RUN_ENDS } from '../../src/calc/run-end-name.ts';
import { syntheticCellV } from '../logs/synthetic-lfp.ts';

/** Synthetic: an invented LFP pack at constant current, run to a share of its charge. */
function run(cells: number, until: number, more: Partial<RunToJudge> = {}): RunToJudge {
  const timeS = Array.from({ length: 361 }, (_, row) => row * 10 * until);
  return {
    flow: 'out',
    heldToFrac: null,
    timeS,
    voltageV: timeS.map((s) => cells * syntheticCellV(s / 3600)),
    followedBy: 'rest',
    voltageAfterV: [],
    ...more,
  };
}
const rebound = (cells: number) => [cells * 2.6, cells * 2.8, cells * 2.9];

describe.each([1, 4, 8, 16])('runEnd of a synthetic pack of %i LFP cells in series', (cells) => {
  it('is lowVoltage when run through the knee, whether a load let go, the pack opened or the log just ended', () => {
    expect(runEnd(run(cells, 1, { voltageAfterV: rebound(cells) })).end).toBe('lowVoltage');
    expect(runEnd(run(cells, 1, { voltageAfterV: [0, 0, 0] })).end).toBe('lowVoltage');
    expect(runEnd(run(cells, 1, { followedBy: 'nothing' })).end).toBe('lowVoltage');
    expect(runEnd(run(cells, 1, { followedBy: 'hold' })).end).toBe('lowVoltage');
  });

  it.each([0.2, 0.5, 0.7, 0.8, 0.9])(
    'is packDisconnect when the terminals drop at a share of %f, on the plateau',
    (until) => {
      expect(runEnd(run(cells, until, { voltageAfterV: [0, 0, 0] })).end).toBe('packDisconnect');
      expect(runEnd(run(cells, until, { voltageAfterV: [cells * 3, cells, 0.1] })).end).toBe('packDisconnect');
    },
  );

  it.each([0.2, 0.5, 0.7, 0.8, 0.9])('is stopped when the voltage rebounds at a share of %f', (until) => {
    expect(runEnd(run(cells, until, { voltageAfterV: [cells * 3.3, cells * 3.31] })).end).toBe('stopped');
  });

  it('stays stopped when the pack is pulled off the bench after its rebound', () => {
    expect(runEnd(run(cells, 0.5, { voltageAfterV: [cells * 3.3, cells * 3.31, 0, 0] })).end).toBe('stopped');
  });

  it('is unclear when the log ends on the plateau', () => {
    expect(runEnd(run(cells, 0.5, { followedBy: 'nothing' })).end).toBe('unclear');
  });

  it('sees terminals go while the current is still read as flowing', () => {
    const cut = run(cells, 0.5);
    const gone = { timeS: [...Array.from(cut.timeS), 1810, 1820], voltageV: [...Array.from(cut.voltageV), 0.4, 0.1] };
    expect(runEnd({ ...cut, ...gone }).end).toBe('packDisconnect');
    expect(runEnd({ ...cut, ...gone }).evidence.lastVoltageV).toBeCloseTo(cells * syntheticCellV(0.5), 10);
  });
});

describe('runEnd', () => {
  it('takes a bend that has only set in for low voltage where the pack then opened, not where somebody stopped', () => {
    // One weak cell of 16 runs out: 15 on the plateau, one through its knee. Synthetic.
    const timeS = Array.from({ length: 361 }, (_, row) => row * 10);
    const voltageV = timeS.map((s) => 15 * syntheticCellV((0.85 * s) / 3600) + syntheticCellV(s / 3600));
    const weak = run(16, 1, { timeS, voltageV });
    expect(runEnd({ ...weak, voltageAfterV: [0, 0, 0] }).end).toBe('lowVoltage');
    expect(runEnd({ ...weak, voltageAfterV: [52, 52, 52] }).end).toBe('stopped');
  });

  it('takes a steady slope with a small last dip for no knee, and an even bend for none', () => {
    const timeS = Array.from({ length: 1001 }, (_, row) => row);
    const curve = (volts: (x: number) => number) =>
      run(1, 1, { timeS, voltageV: timeS.map((s) => volts(s / 1000)), voltageAfterV: [4, 4] });
    // 15 % down a straight line, then 2 % more in the last hundredth: the drop and the slope are there, the bend is not.
    const dip = runEnd(curve((x) => 4 * (1 - 0.15 * x - (x > 0.99 ? 2 * (x - 0.99) : 0))));
    expect(dip.evidence.slopeRatio).toBeGreaterThan(8);
    expect(dip.end).toBe('stopped');
    // A cubic bends by 4.8 % but its last slope is under three times that of its middle.
    const cubic = runEnd(curve((x) => 4 * (1 - 0.3 * x ** 3)));
    expect(cubic.evidence.bendFrac).toBeGreaterThan(0.035);
    expect(cubic.end).toBe('stopped');
  });

  it('takes the number of cells or the cut-off as help: 2.5 V a cell, or the cut-off itself, is low', () => {
    const flat = {
      timeS: [0, 1000, 2000],
      voltageV: [10.1, 10.05, 10],
      followedBy: 'rest' as const,
      voltageAfterV: [11],
    };
    expect(runEnd({ ...run(4, 1), ...flat }).end).toBe('stopped');
    expect(runEnd({ ...run(4, 1), ...flat, cellsInSeries: 4 }).end).toBe('lowVoltage');
    expect(runEnd({ ...run(4, 1), ...flat, cutOffVoltageV: 10 }).end).toBe('lowVoltage');
    expect(runEnd({ ...run(4, 1), ...flat, cutOffVoltageV: 9.5 }).end).toBe('stopped');
  });

  it('finds no knee in a voltage written in steps too coarse for one', () => {
    const timeS = Array.from({ length: 101 }, (_, row) => row * 36);
    const voltageV = timeS.map((s) => Math.round(2 * syntheticCellV(s / 3600)) / 2);
    expect(runEnd(run(1, 1, { timeS, voltageV, followedBy: 'nothing' })).end).toBe('unclear');
  });

  it('calls a hold tapered from half its current down, and otherwise stopped or unclear', () => {
    const held = (heldToFrac: number, followedBy: RunToJudge['followedBy']) =>
      runEnd(run(4, 0.5, { heldToFrac, followedBy, flow: 'in' })).end;
    expect(held(0.05, 'rest')).toBe('taper');
    expect(held(0.5, 'nothing')).toBe('taper');
    expect(held(0.51, 'rest')).toBe('stopped');
    expect(held(0.51, 'nothing')).toBe('unclear');
  });

  it('calls a charge stopped at a rest and leaves one that goes on in a hold unclear', () => {
    expect(runEnd(run(4, 0.5, { flow: 'in' })).end).toBe('stopped');
    expect(runEnd(run(4, 0.5, { flow: 'in', followedBy: 'hold' })).end).toBe('unclear');
  });

  it('keeps its numbers: at the end of the synthetic curve 2.0 V a cell, 37.8 % under the middle', () => {
    const { evidence } = runEnd(run(1, 1));
    // Closed form of the curve: V(1) = 3.26 - 0.08 - 1.18 = 2.0, V(0.5) = 3.22, 1 - 2 / 3.22 = 0.37888.
    expect(evidence.lastVoltageV).toBeCloseTo(2, 10);
    expect(evidence.middleVoltageV).toBeCloseTo(3.22, 10);
    expect(evidence.dropFrac).toBeCloseTo(1 - 2 / 3.22, 10);
    expect(evidence.voltagePerCellV).toBeNull();
  });

  it('judges one sample, and only with the closed words', () => {
    const one = runEnd(run(1, 1, { timeS: [0], voltageV: [3.2] }));
    expect(one.end).toBe('stopped');
    expect(RUN_ENDS).toContain(one.end);
    expect(one.evidence.dropFrac).toBeNull();
  });

  it.each([
    ['empty', { timeS: [], voltageV: [] }],
    ['lengths differ', { timeS: [0, 1], voltageV: [1] }],
    ['time falls', { timeS: [1, 0], voltageV: [1, 1] }],
    ['not finite', { timeS: [0, 1], voltageV: [1, Number.NaN] }],
  ])('refuses bad input: %s', (_, samples) => {
    expect(() => runEnd(run(1, 1, samples))).toThrow(RangeError);
  });
});
