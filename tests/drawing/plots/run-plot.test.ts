import { describe, expect, it } from 'vitest';
import { runPlot } from '../../../src/drawing/run-plot.ts';
import { RUN_END_CHOICES } from '../../../src/schema/live-tests/run.ts';
import { nothing, runInput, steadyRun } from './plot-samples.ts';
import { dotsOf, linesOf, middleOf, textOf, textsOf } from './read-drawing.ts';

const curves = (drawing: ReturnType<typeof runPlot>) => linesOf(drawing).filter((line) => line.points.length > 50);

describe('runPlot', () => {
  it('puts 50 Ah midway between the figures 40 and 60, and 23 V midway between 22 and 24', () => {
    const voltageV = Array.from({ length: 101 }, (_, percent) => (percent === 50 ? 23 : 26 - percent * 0.06));
    const drawing = runPlot(runInput({ current: false, runs: [steadyRun('20 A', 20, 100, { voltageV })] }));
    const [x, y] = curves(drawing)[0]!.points[50]!;
    const at = (text: string) => middleOf(textOf(drawing, text));
    expect(x).toBeCloseTo((at('40').x + at('60').x) / 2, 6);
    expect(y).toBeCloseTo((at('22').y + at('24').y) / 2, 6);
  });

  it('keeps a dip of one sample: 12 V among 26 V reaches down to between the figures 10 and 15', () => {
    const voltageV = Array.from({ length: 101 }, (_, percent) => (percent === 31 ? 12 : 26));
    const drawing = runPlot(runInput({ current: false, runs: [steadyRun('20 A', 20, 100, { voltageV })] }));
    const ys = curves(drawing)[0]!.points.map(([, y]) => y);
    const [y10, y15] = ['10', '15'].map((text) => middleOf(textOf(drawing, text)).y);
    expect(ys[31]).toBeCloseTo(y15! + (y10! - y15!) * 0.6, 6);
    expect(ys.filter((y) => y > y15!)).toHaveLength(1);
  });

  it('begins every run at 0 along time, in hours: 100 Ah at 20 A end at 5 h', () => {
    const drawing = runPlot(runInput({ by: 'time', current: false }));
    expect(textOf(drawing, 'Time, h').ink).toBe('muted');
    const [first, last] = [curves(drawing)[0]!.points[0]!, curves(drawing)[0]!.points.at(-1)!];
    const zero = textsOf(drawing).find((text) => text.text === '0' && text.anchor === 'middle')!;
    expect(first[0]).toBeCloseTo(zero.x, 6);
    expect(last[0]).toBeCloseTo(middleOf(textOf(drawing, '5')).x, 6);
  });

  it('reads a run of 30 min in minutes: 10 Ah at 20 A', () => {
    const drawing = runPlot(runInput({ by: 'time', runs: [steadyRun('20 A', 20, 10)] }));
    expect(textOf(drawing, 'Time, min').text).toBe('Time, min');
  });

  it('names each of 8 runs once, and shares the axis between two panels', () => {
    const names = [10, 20, 30, 40, 50, 60, 80, 100].map((currentA) => `${currentA} A`);
    const runs = names.map((name, place) => steadyRun(name, 10 + place * 10, 100 - place * 3));
    const drawing = runPlot(runInput({ runs }));
    for (const name of names) expect(textOf(drawing, name).ink).toBe('ink');
    const [voltage, current] = [curves(drawing)[0]!, curves(drawing)[8]!];
    expect(voltage.points.map(([x]) => x)).toEqual(current.points.map(([x]) => x));
    expect(Math.min(...current.points.map(([, y]) => y))).toBeGreaterThan(
      Math.max(...voltage.points.map(([, y]) => y)),
    );
  });

  it('tells 6 curves over one another apart by dash and weight, all in ink', () => {
    const runs = [10, 20, 30, 40, 50, 60].map((currentA) => steadyRun(`${currentA} A`, currentA, 100 - currentA / 4));
    const looks = curves(runPlot(runInput({ current: false, runs }))).map((line) => line.stroke);
    expect(new Set(looks.map(({ width, dash }) => `${width}/${dash}`)).size).toBe(6);
    expect(new Set(looks.map(({ ink }) => ink))).toEqual(new Set(['ink']));
  });

  it('has 5 signs for 5 ways to end, no two alike, each once in the key', () => {
    const signs = RUN_END_CHOICES.map((end) => {
      const drawing = runPlot(runInput({ current: false, runs: [steadyRun('run', 20, 100, { end })] }));
      const words = runInput().words.ends[end];
      expect(textsOf(drawing).filter((text) => text.text === words)).toHaveLength(1);
      for (const other of RUN_END_CHOICES.filter((choice) => choice !== end)) {
        expect(textsOf(drawing).some((text) => text.text === runInput().words.ends[other])).toBe(false);
      }
      const after = drawing.marks.slice(
        drawing.marks.findIndex((mark) => mark.kind === 'line' && mark.points.length > 50) + 1,
      );
      return JSON.stringify(after.filter((mark) => mark.kind !== 'text'));
    });
    expect(new Set(signs).size).toBe(5);
  });

  it('ends a knee at a filled dot that stands on the last point, at 100 Ah', () => {
    const drawing = runPlot(runInput({ current: false }));
    const [dot] = dotsOf(drawing);
    expect(dot!.fill).toBe('ink');
    expect([dot!.shape.cx, dot!.shape.cy]).toEqual(curves(drawing)[0]!.points.at(-1));
  });

  it('puts the bar of a disconnect across its way: upright after a level line, level below a fall to 0.2 V', () => {
    const bar = (change: Partial<ReturnType<typeof steadyRun>>) => {
      const run = steadyRun('run', 20, 100, { end: 'packDisconnect', ...change });
      const heavy = linesOf(runPlot(runInput({ current: false, runs: [run] }))).find(
        (line) => line.stroke.width === 2.4,
      );
      const [from, to] = heavy!.points;
      return { across: Math.abs(to![0] - from![0]), down: Math.abs(to![1] - from![1]) };
    };
    const level = Array.from({ length: 101 }, () => 26);
    expect(bar({ voltageV: level })).toEqual({ across: 0, down: 12 });
    expect(bar({ voltageV: [...level.slice(1), 0.2] })).toEqual({ across: 12, down: 0 });
  });

  it('draws one cut-off line for two runs with the same cut-off, on the place of 20 V', () => {
    const runs = [20, 50].map((currentA) =>
      steadyRun(`${currentA} A`, currentA, 100 - currentA / 4, { cutOffVoltageV: 20 }),
    );
    const drawing = runPlot(runInput({ current: false, runs }));
    expect(textOf(drawing, 'cut-off 20.0 V').text).toBe('cut-off 20.0 V');
    const dashed = linesOf(drawing).filter((line) => line.points.length === 2 && line.stroke.dash?.join() === '5,4');
    expect(dashed).toHaveLength(1);
    const places = textsOf(drawing).filter((text) => text.text === '20' && text.anchor === 'end');
    expect(dashed[0]!.points[0]![1]).toBeCloseTo(middleOf(places[0]!).y, 6);
  });

  it('says which run has no charge when charge is asked for, and draws the other', () => {
    const runs = [steadyRun('20 A', 20, 100), steadyRun('typed', 50, 95, { chargeAh: null })];
    const drawing = runPlot(runInput({ current: false, runs }));
    expect(textOf(drawing, 'Not drawn: typed').text).toBe('Not drawn: typed');
    expect(curves(drawing)).toHaveLength(1);
  });

  it('draws current alone when no run has a voltage, and names the run there', () => {
    const drawing = runPlot(runInput({ runs: [steadyRun('20 A', 20, 100, { voltageV: null })] }));
    expect(textsOf(drawing).some((text) => text.text === 'Voltage, V')).toBe(false);
    expect(textOf(drawing, '20 A').text).toBe('20 A');
  });

  it.each([
    ['no runs', []],
    ['a run without a sample', [steadyRun('x', 20, 1, { timeS: [], voltageV: [], currentA: [], chargeAh: [] })]],
    ['a run without voltage where only voltage is drawn', [steadyRun('x', 20, 1, { voltageV: null })]],
  ])('draws an empty frame that says so: %s', (_, runs) => {
    const drawing = runPlot(runInput({ runs, current: false }));
    expect(textsOf(drawing).map((text) => text.text)).toEqual([nothing]);
    expect([drawing.width, drawing.height]).toEqual([358, 320]);
  });

  it('draws a single sample as its sign alone', () => {
    const one = { timeS: [0], voltageV: [26], currentA: [20], chargeAh: [0] };
    expect(dotsOf(runPlot(runInput({ current: false, runs: [steadyRun('x', 20, 1, one)] })))).toHaveLength(2);
  });

  it.each([
    [
      'a voltage that is not a number',
      { voltageV: Array.from({ length: 101 }, (_, at) => (at === 3 ? Number.NaN : 26)) },
    ],
    ['a time without end', { timeS: Array.from({ length: 101 }, (_, at) => (at === 100 ? Infinity : at)) }],
    ['a list that is shorter', { currentA: [1, 2, 3] }],
    ['a cut-off that is not a number', { cutOffVoltageV: Number.NaN }],
  ])('refuses bad input: %s', (_, change) => {
    expect(() => runPlot(runInput({ runs: [steadyRun('x', 20, 1, change)] }))).toThrow(RangeError);
  });

  it('grows beyond 60 units of height rather than squeeze its panels to nothing', () => {
    const drawing = runPlot(runInput({ height: 60 }));
    expect(drawing.height).toBeGreaterThan(150);
    const ys = curves(drawing)[0]!.points.map(([, y]) => y);
    expect(Math.max(...ys) - Math.min(...ys)).toBeGreaterThan(20);
  });
});
