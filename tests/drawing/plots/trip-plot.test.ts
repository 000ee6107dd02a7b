import { describe, expect, it } from 'vitest';
import type { LineMark } from '../../../src/drawing/display-list.ts';
import { tripPlot } from '../../../src/drawing/trip-plot.ts';
import { nothing, tripInput } from './plot-samples.ts';
import { dotsOf, linesOf, middleOf, textOf, textsOf } from './read-drawing.ts';

const bare = { withstand: [], fuse: null, continuousA: null };
const rings = (drawing: ReturnType<typeof tripPlot>) => dotsOf(drawing).filter((dot) => dot.shape.rx === 4);
const isUpright = (line: LineMark) => line.points.length === 2 && line.points[0]![0] === line.points[1]![0];

describe('tripPlot', () => {
  it('puts 400 A and 0.1 s on the figure of 0.1 s, and log(400/200)/log(500/200) of the way from 200 A to 500 A', () => {
    const drawing = tripPlot(tripInput());
    const opened = rings(drawing).find((dot) => dot.fill === 'ink')!.shape;
    const [x200, x500] = ['200 A', '500 A'].map((text) => middleOf(textOf(drawing, text)).x);
    expect(opened.cx).toBeCloseTo(x200! + (x500! - x200!) * (Math.log(2) / Math.log(2.5)), 6);
    expect(opened.cy).toBeCloseTo(middleOf(textOf(drawing, '0.1 s')).y, 6);
  });

  it('fills a trip that opened; one that held is an open ring with an arrow 14 up', () => {
    const drawing = tripPlot(tripInput({ ...bare, words: { ...tripInput().words, opened: '', held: '' } }));
    const [held, opened] = rings(drawing);
    expect(opened!.fill).toBe('ink');
    expect(held!.fill).toBe('ground');
    const shaft = linesOf(drawing).find(
      (line) => isUpright(line) && line.points[0]![0] === held!.shape.cx && line.stroke.width === 1.7,
    );
    expect(held!.shape.cy - shaft!.points[1]![1]).toBeCloseTo(14, 9);
  });

  it('draws a lead solid up to 5 s and dashed beyond: 115 A·s^½ × 10 mm² is cut at 514.3 A', () => {
    // t = (1150/I)² = 5 s at I = 1150/√5 = 514.296 A.
    const drawing = tripPlot(tripInput({ trips: [], fuse: null, continuousA: null }));
    const lead = linesOf(drawing).filter(
      (line) => line.stroke.width === 1.6 && !line.points.every(([, y]) => y === line.points[0]![1]),
    );
    expect(lead.map((line) => line.stroke.dash !== undefined)).toEqual([true, false]);
    const [cut] = lead[1]!.points;
    expect(lead[0]!.points.at(-1)).toEqual(cut);
    const [x100, x1000] = ['100 A', '1000 A'].map((text) => middleOf(textOf(drawing, text)).x);
    expect((cut![0] - x100!) / (x1000! - x100!)).toBeCloseTo(Math.log10(514.296 / 100), 5);
    expect(textOf(drawing, 'at least').ink).toBe('muted');
  });

  it('says nothing of lower bounds when every time is at most 5 s', () => {
    const points = [600, 1150].map((currentA) => ({ currentA, timeS: (1150 / currentA) ** 2 }));
    const drawing = tripPlot(tripInput({ withstand: [{ label: 'lead', points }] }));
    expect(textsOf(drawing).some((text) => text.text === 'at least')).toBe(false);
  });

  it.each([
    ['between 2 s and 60 s', 2, 60, 2],
    ['of at most 60 s', null, 60, 1],
    ['of at least 2 s', 2, null, 1],
    ['of at most 60 s, with a least time of 0', 0, 60, 1],
  ])('caps a fuse gate %s at %s and %s: %d caps', (_, minTimeS, maxTimeS, caps) => {
    const fuse = { label: '', gates: [{ currentA: 250, minTimeS, maxTimeS }] };
    const drawing = tripPlot(tripInput({ withstand: [], continuousA: null, fuse }));
    expect(linesOf(drawing).filter((line) => line.stroke.width === 1.4)).toHaveLength(caps);
    expect(linesOf(drawing).filter((line) => line.stroke.width === 3.4)).toHaveLength(1);
  });

  it('draws nothing for a gate without bounds', () => {
    const fuse = { label: 'fuse', gates: [{ currentA: 250, minTimeS: null, maxTimeS: null }] };
    const drawing = tripPlot(tripInput({ fuse }));
    expect(linesOf(drawing).filter((line) => line.stroke.width === 3.4)).toHaveLength(0);
    expect(textsOf(drawing).some((text) => text.text === 'fuse')).toBe(false);
  });

  it('stands the continuous claim of 100 A upright on the figure 100', () => {
    const drawing = tripPlot(tripInput());
    const claim = linesOf(drawing).find((line) => line.stroke.dash?.join() === '9,3,2,3')!;
    expect(isUpright(claim)).toBe(true);
    expect(claim.points[0]![0]).toBeCloseTo(middleOf(textOf(drawing, '100 A')).x, 6);
    expect(textOf(drawing, 'claim').text).toBe('claim');
  });

  it('stands a trip at 0 s at the foot of the panel with an arrow down', () => {
    const trips = [
      { currentA: 400, timeS: 0, opened: true, label: 'at once' },
      { currentA: 300, timeS: 2, opened: true, label: 'later' },
    ];
    const drawing = tripPlot(tripInput({ ...bare, trips }));
    const [atOnce] = rings(drawing);
    const shaft = linesOf(drawing).find(
      (line) => isUpright(line) && line.points[0]![0] === atOnce!.shape.cx && line.stroke.width === 1.7,
    )!;
    expect(shaft.points[1]![1]).toBeGreaterThan(atOnce!.shape.cy);
    expect(atOnce!.shape.cy).toBeGreaterThan(rings(drawing)[1]!.shape.cy);
  });

  it('draws an empty frame without trips, leads and fuse, though there is a claim', () => {
    const drawing = tripPlot(tripInput({ trips: [], withstand: [], fuse: null }));
    expect(textsOf(drawing).map((text) => text.text)).toEqual([nothing]);
  });

  it.each([
    ['a current of 0', { trips: [{ currentA: 0, timeS: 1, opened: true, label: '' }] }],
    ['a time below 0', { trips: [{ currentA: 10, timeS: -1, opened: true, label: '' }] }],
    ['a time without end', { trips: [{ currentA: 10, timeS: Infinity, opened: true, label: '' }] }],
    ['a withstand time of 0', { withstand: [{ label: '', points: [{ currentA: 10, timeS: 0 }] }] }],
    ['a claim that is not a number', { continuousA: Number.NaN }],
    [
      'a gate that is not a number',
      { fuse: { label: '', gates: [{ currentA: 9, minTimeS: Number.NaN, maxTimeS: 1 }] } },
    ],
  ])('refuses bad input: %s', (_, change) => {
    expect(() => tripPlot(tripInput(change))).toThrow(RangeError);
  });
});
