import { describe, expect, it } from 'vitest';
import { logOverview } from '../../../src/drawing/log-overview.ts';
import { nothing, overviewInput } from './plot-samples.ts';
import { boxesOf, linesOf, middleOf, textOf, textsOf } from './read-drawing.ts';

const said = (drawing: ReturnType<typeof logOverview>) => textsOf(drawing).map((text) => text.text);
const chosenBands = (drawing: ReturnType<typeof logOverview>) => boxesOf(drawing).filter((box) => box.fill === 'face');
const otherBands = (drawing: ReturnType<typeof logOverview>) =>
  boxesOf(drawing).filter((box) => box.stroke?.dash !== undefined);

describe('logOverview', () => {
  it('draws a log of 10 h from 0, a band of 2.5 h from 0 to midway between 2 and 3 … in both panels', () => {
    // 101 samples 360 s apart are 10 h; the first band is 9000 s = 2.5 h long.
    const drawing = logOverview(overviewInput());
    const zero = textsOf(drawing).find((text) => text.text === '0' && text.anchor === 'middle')!;
    const place = (hours: number) => zero.x + (middleOf(textOf(drawing, '4')).x - zero.x) * (hours / 4);
    const chosen = chosenBands(drawing);
    expect(chosen).toHaveLength(2);
    for (const { shape } of chosen) {
      expect(shape.x).toBeCloseTo(place(0), 6);
      expect(shape.x + shape.width).toBeCloseTo(place(2.5), 6);
    }
    expect(otherBands(drawing)[0]!.shape.x).toBeCloseTo(place(5), 6);
  });

  it('names the chosen run strong, the other one calm, and has both titles', () => {
    const drawing = logOverview(overviewInput());
    expect(textOf(drawing, 'run 1')).toMatchObject({ weight: 600, ink: 'ink' });
    expect(textOf(drawing, 'run 2')).toMatchObject({ weight: 400, ink: 'muted' });
    expect(said(drawing)).toEqual(expect.arrayContaining(['Voltage, V', 'Current, A', 'Time, h']));
  });

  it('draws all 101 samples of both columns', () => {
    const curves = linesOf(logOverview(overviewInput())).filter((line) => line.points.length > 2);
    expect(curves.map((line) => line.points.length)).toEqual([101, 101]);
  });

  it('draws one panel where the log has one column', () => {
    expect(said(logOverview(overviewInput({ voltageV: null })))).not.toContain('Voltage, V');
    expect(said(logOverview(overviewInput({ currentA: null })))).not.toContain('Current, A');
  });

  it('still shows a run of 10 s in 10 h, 3 units wide', () => {
    const bands = [{ fromS: 20000, toS: 20010, label: 'blip', chosen: true }];
    expect(chosenBands(logOverview(overviewInput({ bands })))[0]!.shape.width).toBeCloseTo(3, 9);
  });

  it('keeps a run of 0 s at the end of the log inside the panel', () => {
    const bands = [{ fromS: 43000, toS: 43000, label: 'blip', chosen: true }];
    const drawing = logOverview(overviewInput({ bands }));
    const curve = linesOf(drawing).find((line) => line.points.length > 2)!;
    const { x, width } = chosenBands(drawing)[0]!.shape;
    expect(x + width).toBeCloseTo(curve.points.at(-1)![0], 6);
  });

  it('draws of a band only what lies inside the log, and nothing of one beyond it', () => {
    const whole = { fromS: 0, toS: 1e6, label: 'whole', chosen: true };
    const beyond = { fromS: 1e6, toS: 2e6, label: 'beyond', chosen: true };
    const drawing = logOverview(overviewInput({ bands: [whole, beyond] }));
    expect(chosenBands(drawing)).toHaveLength(2);
    const curve = linesOf(drawing).find((line) => line.points.length > 2)!;
    const { x, width } = chosenBands(drawing)[0]!.shape;
    expect([x, x + width]).toEqual([curve.points[0]![0], curve.points.at(-1)![0]].map((at) => expect.closeTo(at, 6)));
  });

  it('keeps the chosen one of 40 crowded names', () => {
    const bands = Array.from({ length: 40 }, (_, place) => ({
      fromS: 7000 + place * 900,
      toS: 7000 + place * 900 + 800,
      label: `run number ${place + 1}`,
      chosen: place === 20,
    }));
    const names = textsOf(logOverview(overviewInput({ bands }))).filter((text) => text.weight === 600);
    expect(names).toHaveLength(1);
  });

  it.each([
    ['no samples', { timeS: [], voltageV: [], currentA: [] }],
    ['neither voltage nor current', { voltageV: null, currentA: null }],
  ])('draws an empty frame that says so: %s', (_, change) => {
    expect(said(logOverview(overviewInput(change)))).toEqual([nothing]);
  });

  it.each([
    ['a time that is not a number', { timeS: [Number.NaN], voltageV: [1], currentA: [1] }],
    ['lists of two lengths', { voltageV: [1, 2] }],
    ['a voltage without end', { timeS: [1], voltageV: [Infinity], currentA: null }],
    ['a band that ends before it begins', { bands: [{ fromS: 9000, toS: 8000, label: '', chosen: false }] }],
    ['a band without end', { bands: [{ fromS: 0, toS: Infinity, label: '', chosen: false }] }],
  ])('refuses bad input: %s', (_, change) => {
    expect(() => logOverview(overviewInput(change))).toThrow(RangeError);
  });
});
