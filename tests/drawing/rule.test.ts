import { describe, expect, it } from 'vitest';
import type { Drawing, LineMark, TextMark } from '../../src/drawing/display-list.ts';
import { type RuleInput, rule, rulePlace } from '../../src/drawing/rule.ts';
import { textWidth } from '../../src/drawing/text-width.ts';

const input = (change: Partial<RuleInput>): RuleInput => ({
  range: { low: 52, high: 66.4 },
  settled: false,
  figures: '52.0–66.4',
  widthPx: 300,
  alt: 'Score',
  ...change,
});
const lines = (drawing: Drawing) => drawing.marks.filter((mark): mark is LineMark => mark.kind === 'line');
const texts = (drawing: Drawing) => drawing.marks.filter((mark): mark is TextMark => mark.kind === 'text');
const upright = (line: LineMark) => line.points[0]![0] === line.points[1]![0];
const lengthOf = (line: LineMark) => line.points[0]![1] - line.points[1]![1];
const boxes = (drawing: Drawing) =>
  drawing.marks.flatMap((mark) => (mark.kind === 'shape' && mark.shape.form === 'box' ? [mark.shape] : []));

function span(text: TextMark): [number, number] {
  const width = textWidth(text.text, text);
  return [text.x - width / 2, text.x + width / 2];
}

describe('rule', () => {
  it('has 21 ticks: 5 long at 25, 8 middle at 10, 8 short at 5', () => {
    const lengths = lines(rule(input({ range: null })))
      .filter(upright)
      .map(lengthOf);
    expect(lengths).toHaveLength(21);
    const counts = [...new Set(lengths)]
      .sort((a, b) => b - a)
      .map((length) => lengths.filter((l) => l === length).length);
    // 0, 25, 50, 75, 100; 10 … 90 without 50; 5 … 95 without 25 and 75: 5 + 8 + 8.
    expect(counts).toEqual([5, 8, 8]);
  });

  it('writes 0, 25, 50, 75 and 100 under the long ticks', () => {
    expect(texts(rule(input({ range: null }))).map((text) => text.text)).toEqual(['0', '25', '50', '75', '100']);
  });

  it('is straight: 50 stands midway between 0 and 100, 25 a quarter along', () => {
    const place = rulePlace(300);
    expect(place(50)).toBeCloseTo((place(0) + place(100)) / 2, 9);
    expect(place(25) - place(0)).toBeCloseTo((place(100) - place(0)) / 4, 9);
  });

  it('draws the bar from 52 to 66.4, 14.4 hundredths of the scale long', () => {
    const place = rulePlace(300);
    const [bar] = boxes(rule(input({})));
    expect(bar!.x).toBeCloseTo(place(52), 9);
    expect(bar!.width).toBeCloseTo(0.144 * (place(100) - place(0)), 9);
  });

  it('draws one tick and no bar when settled, down to the scale at 93.6', () => {
    const drawing = rule(input({ range: { low: 93.6, high: 93.6 }, settled: true, figures: '93.6' }));
    expect(boxes(drawing)).toHaveLength(0);
    const ticks = lines(drawing).filter(upright);
    expect(ticks).toHaveLength(22);
    expect(ticks.at(-1)!.points[0]![0]).toBeCloseTo(rulePlace(300)(93.6), 9);
  });

  it('still shows a bar, 3 px wide, when an unsettled range is as narrow as a point', () => {
    const [bar] = boxes(rule(input({ range: { low: 40, high: 40 } })));
    expect(bar!.width).toBe(3);
    expect(bar!.x + 1.5).toBeCloseTo(rulePlace(300)(40), 9);
  });

  it.each([
    [0, '0.0', 120],
    [100, '100.0', 120],
    [0, '0.0–0.4', 300],
    [100, '99.6–100.0', 300],
  ])('keeps all its words inside the box at %d (%s, %d px)', (score, figures, widthPx) => {
    const drawing = rule(input({ range: { low: score, high: score }, figures, widthPx }));
    for (const [from, to] of texts(drawing).map(span)) {
      expect(from).toBeGreaterThanOrEqual(0);
      expect(to).toBeLessThanOrEqual(widthPx);
    }
  });

  it('leaves figures of neighbouring ticks apart on a rule 120 px wide', () => {
    const scale = texts(rule(input({ range: null, widthPx: 120 }))).map(span);
    for (const [place, [from]] of scale.entries()) {
      if (place > 0) expect(from).toBeGreaterThan(scale[place - 1]![1]);
    }
  });
});
