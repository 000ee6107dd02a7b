import { describe, expect, it } from 'vitest';
import { type DeliveredRow, deliveredBars } from '../../../src/drawing/delivered-bars.ts';
import { boxesOf, textOf, textsOf } from './read-drawing.ts';

const row = (change: Partial<DeliveredRow> = {}): DeliveredRow => ({
  label: 'Charge',
  promised: 100,
  promisedText: 'promised 100 Ah',
  delivered: 75,
  deliveredText: '75.0 Ah',
  atLeast: false,
  shareText: '75 %',
  ...change,
});
const drawn = (...rows: DeliveredRow[]) => deliveredBars({ width: 358, rows });
const outlines = (drawing: ReturnType<typeof drawn>) => boxesOf(drawing).filter((box) => box.stroke !== undefined);
const filled = (drawing: ReturnType<typeof drawn>) => boxesOf(drawing).filter((box) => box.fill === 'ink');
const endOf = ({ shape }: { shape: { x: number; width: number } }) => shape.x + shape.width;

describe('deliveredBars', () => {
  it('fills three quarters of the outline for 75 of 100 Ah', () => {
    const drawing = drawn(row());
    expect(endOf(filled(drawing)[0]!) / endOf(outlines(drawing)[0]!)).toBeCloseTo(0.75, 9);
    expect(filled(drawing)).toHaveLength(1);
  });

  it('gives the promise of each unit the same width: 100 Ah and 2560 Wh', () => {
    const drawing = drawn(row(), row({ promised: 2560, delivered: 1280 }));
    const [charge, energy] = outlines(drawing).map(endOf);
    expect(charge).toBe(energy);
    expect(endOf(filled(drawing)[1]!) / energy!).toBeCloseTo(0.5, 9);
  });

  it('lets “at least” run out in 3 strips beyond its value, and stays inside the drawing', () => {
    const drawing = drawn(row({ atLeast: true, delivered: 100 }));
    const [value, ...strips] = filled(drawing);
    expect(strips).toHaveLength(3);
    for (const strip of strips) expect(strip.shape.x).toBeGreaterThan(endOf(value!));
    expect(Math.max(...strips.map(endOf))).toBeLessThanOrEqual(358);
  });

  it('lets 120 of 100 Ah reach beyond the promise and still fit', () => {
    const drawing = drawn(row({ delivered: 120 }));
    expect(endOf(filled(drawing)[0]!)).toBeCloseTo(358, 9);
    expect(endOf(outlines(drawing)[0]!)).toBeCloseTo(358 / 1.2, 9);
  });

  it('fills nothing without a promise, whose place is dashed, nor without a measurement', () => {
    const noClaim = drawn(row({ promised: null, promisedText: 'no claim' }));
    expect(filled(noClaim)).toHaveLength(0);
    expect(outlines(noClaim)[0]!.stroke!.dash).toEqual([4, 3]);
    expect(textOf(noClaim, '75.0 Ah').ink).toBe('ink');
    const notMeasured = drawn(row({ delivered: null, deliveredText: 'not measured' }));
    expect(filled(notMeasured)).toHaveLength(0);
    expect(outlines(notMeasured)[0]!.stroke!.dash).toBeUndefined();
  });

  it('tells a delivered 0 from one that was not measured: a filled part of width 0 stands for 0', () => {
    expect(filled(drawn(row({ delivered: 0 })))[0]!.shape.width).toBe(0);
  });

  it('says every word once', () => {
    expect(textsOf(drawn(row())).map((text) => text.text)).toEqual(['Charge', '75 %', 'promised 100 Ah', '75.0 Ah']);
  });

  it('draws an empty frame without rows', () => {
    const drawing = deliveredBars({ width: 358, rows: [], words: { alt: 'a', nothing: 'No runs' } });
    expect(textsOf(drawing).map((text) => text.text)).toEqual(['No runs']);
    expect(drawing.alt).toBe('a');
  });

  it.each([
    ['promised 0', { promised: 0 }],
    ['promised not a number', { promised: Number.NaN }],
    ['delivered without end', { delivered: Infinity }],
    ['delivered below 0', { delivered: -1 }],
  ])('refuses bad input: %s', (_, change) => {
    expect(() => drawn(row(change))).toThrow(RangeError);
  });
});
