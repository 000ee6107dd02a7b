import { describe, expect, it } from 'vitest';
import { leaderPath, RING_RADIUS, restingRing } from '../../src/drawing/callouts/leader.ts';
import { calloutMarks, coverMarks, type DrawnCallout } from '../../src/drawing/callouts.ts';
import type { Drawing, Mark } from '../../src/drawing/display-list.ts';
import { textWidth } from '../../src/drawing/text-width.ts';
import { CALLOUT_KINDS } from '../../src/schema/callout.ts';

const POINTS: Record<DrawnCallout['kind'], DrawnCallout['points']> = {
  leader: [
    [0.5, 0.5],
    [0.1, 0.2],
  ],
  arrow: [
    [0.4, 0.4],
    [0.8, 0.7],
  ],
  outline: [
    [0.6, 0.7],
    [0.2, 0.3],
  ],
  stroke: [
    [0.1, 0.1],
    [0.2, 0.15],
    [0.3, 0.1],
  ],
  text: [[0.5, 0.5]],
  cover: [
    [0.25, 0.25],
    [0.5, 0.75],
  ],
};
const callout = (kind: DrawnCallout['kind'], change: Partial<DrawnCallout> = {}): DrawnCallout => ({
  kind,
  points: POINTS[kind],
  number: kind === 'leader' ? 1 : null,
  ...(kind === 'text' ? { text: 'Paper strip' } : {}),
  ...change,
});
const all = CALLOUT_KINDS.map((kind) => callout(kind));

/** Every length and place of a drawing as one list of numbers, in order. */
function numbersOf(drawing: Drawing): number[] {
  const found: number[] = [];
  JSON.stringify(drawing.marks, (name, value) => {
    if (typeof value === 'number' && name !== 'weight') found.push(value);
    return value;
  });
  return found;
}
const strokeOf = (mark: Mark) => ('stroke' in mark ? mark.stroke : undefined);

describe('calloutMarks', () => {
  it('draws something for each of the six kinds', () => {
    for (const one of all)
      expect(calloutMarks({ callouts: [one], widthPx: 390, heightPx: 520 }).marks.length, one.kind).toBeGreaterThan(0);
  });

  it('uses black and white only, whatever the theme', () => {
    const { marks } = calloutMarks({ callouts: all, widthPx: 390, heightPx: 520 });
    const inks = marks.flatMap((mark) => [
      strokeOf(mark)?.ink,
      'fill' in mark ? mark.fill : undefined,
      'ink' in mark ? mark.ink : undefined,
    ]);
    expect(new Set(inks.filter((ink) => ink !== undefined))).toEqual(new Set(['black', 'white']));
  });

  it('draws a leader 2.4 px wide over a white one of 5.6 px on a photo 390 × 520', () => {
    const lines = calloutMarks({ callouts: [callout('leader')], widthPx: 390, heightPx: 520 }).marks.filter(
      (mark) => mark.kind === 'line',
    );
    expect(lines.map((line) => [line.stroke.ink, line.stroke.width])).toEqual([
      ['white', 2.4 + 2 * 1.6],
      ['black', 2.4],
    ]);
  });

  it('scales every place and length with the size at which the photo is shown: 2× there, 2× here', () => {
    const drawnKinds = all.filter((one) => one.kind !== 'cover');
    const small = numbersOf(calloutMarks({ callouts: drawnKinds, widthPx: 390, heightPx: 520 }));
    const large = numbersOf(calloutMarks({ callouts: drawnKinds, widthPx: 780, heightPx: 1040 }));
    // The number in the ring is text, so it is not among these.
    expect(large).toHaveLength(small.length);
    large.forEach((value, place) => {
      expect(value).toBeCloseTo(2 * small[place]!, 6);
    });
  });

  it('keeps lines 2.4 px at any zoom when told scale 1', () => {
    const { marks } = calloutMarks({ callouts: [callout('outline')], widthPx: 3900, heightPx: 5200, scale: 1 });
    expect(marks.map((mark) => strokeOf(mark)?.width)).toEqual([5.6, 2.4]);
  });

  it('writes each leader’s number in its ring and paints it last', () => {
    const callouts = [callout('leader', { number: 12 }), ...all.filter((one) => one.kind !== 'leader')];
    const last = calloutMarks({ callouts, widthPx: 390, heightPx: 520 }).marks.at(-1);
    expect(last).toMatchObject({ kind: 'text', text: '12', x: 39, anchor: 'middle' });
  });

  it('points an arrow at its first point', () => {
    const { marks } = calloutMarks({ callouts: [callout('arrow')], widthPx: 100, heightPx: 100 });
    const head = marks.find((mark) => mark.kind === 'path');
    expect(head?.kind === 'path' && head.steps[0]).toEqual(['M', 40, 40]);
  });

  it('boxes an outline from whichever corners were drawn: (20, 30) 40 × 40 of 100 × 100', () => {
    const { marks } = calloutMarks({ callouts: [callout('outline')], widthPx: 100, heightPx: 100 });
    expect(marks[0]).toMatchObject({ shape: { x: 20, y: 30, width: 40 } });
    expect(marks[0]!.kind === 'shape' && marks[0]!.shape.form === 'box' && marks[0]!.shape.height).toBeCloseTo(40, 9);
  });

  it('keeps words inside the photo even when they begin at its right lower corner', () => {
    const text = 'A strip of paper bonded over two vents, and a label over the third one';
    const { marks } = calloutMarks({
      callouts: [callout('text', { points: [[0.98, 0.99]], text })],
      widthPx: 390,
      heightPx: 520,
    });
    expect(marks.length).toBeGreaterThan(1);
    for (const mark of marks) {
      if (mark.kind !== 'text') throw new Error(`unexpected ${mark.kind}`);
      expect(mark.x).toBeGreaterThanOrEqual(0);
      expect(mark.x + textWidth(mark.text, mark)).toBeLessThanOrEqual(390);
      expect(mark.y).toBeLessThanOrEqual(520);
    }
  });
});

describe('leaderPath', () => {
  it('is level from the ring, then oblique at 45° where there is room', () => {
    const [target, elbow, edge] = leaderPath([200, 150], [50, 50], 1);
    expect(target).toEqual([200, 150]);
    expect(edge).toEqual([50 + RING_RADIUS, 50]);
    // 100 down, so 100 across on the oblique leg: the elbow stands at x = 100.
    expect(elbow).toEqual([100, 50]);
  });

  it('is steeper than 45° where there is not, with a shoulder of 9', () => {
    const [, elbow] = leaderPath([80, 250], [50, 50], 1);
    expect(elbow).toEqual([50 + RING_RADIUS + 9, 50]);
  });

  it('is straight when the target is under the ring', () => {
    expect(leaderPath([50, 200], [50, 50], 1)).toEqual([
      [50, 200],
      [50, 50 + RING_RADIUS],
    ]);
  });

  it('runs to the left as well', () => {
    expect(leaderPath([50, 150], [200, 50], 1)).toEqual([
      [50, 150],
      [150, 50],
      [200 - RING_RADIUS, 50],
    ]);
  });
});

describe('restingRing', () => {
  it.each([[[0, 0]], [[390, 0]], [[0, 520]], [[390, 520]], [[195, 260]]] as [[number, number]][])(
    'puts the number of a leader at %j inside the photo, clear of the target',
    (target) => {
      const [x, y] = restingRing(target, { widthPx: 390, heightPx: 520, scale: 1 });
      expect(x).toBeGreaterThanOrEqual(RING_RADIUS);
      expect(x).toBeLessThanOrEqual(390 - RING_RADIUS);
      expect(y).toBeGreaterThanOrEqual(RING_RADIUS);
      expect(y).toBeLessThanOrEqual(520 - RING_RADIUS);
      expect(Math.hypot(x - target[0], y - target[1])).toBeGreaterThan(2 * RING_RADIUS);
    },
  );
});

describe('coverMarks', () => {
  it('leaves out everything but covers', () => {
    const { marks } = coverMarks({ callouts: all, widthPx: 100, heightPx: 100 });
    expect(marks[0]).toEqual({
      kind: 'shape',
      shape: { form: 'box', x: 25, y: 25, width: 25, height: 50 },
      fill: 'black',
    });
    expect(marks.slice(1).every((mark) => mark.kind === 'line')).toBe(true);
    expect(
      coverMarks({ callouts: all.filter((one) => one.kind !== 'cover'), widthPx: 100, heightPx: 100 }).marks,
    ).toEqual([]);
  });

  it('grows outward to whole pixels: 0.2504 … 0.4996 of 1000 covers 250 … 500', () => {
    const cover = callout('cover', {
      points: [
        [0.2504, 0.2504],
        [0.4996, 0.4996],
      ],
    });
    const [block] = coverMarks({ callouts: [cover], widthPx: 1000, heightPx: 1000 }).marks;
    expect(block).toMatchObject({ shape: { x: 250, y: 250, width: 250, height: 250 } });
  });

  it('keeps its hatch inside the block', () => {
    const { marks } = coverMarks({ callouts: [callout('cover')], widthPx: 400, heightPx: 300 });
    const points = marks.flatMap((mark) => (mark.kind === 'line' ? mark.points : []));
    expect(points.length).toBeGreaterThan(10);
    for (const [x, y] of points) {
      expect(x).toBeGreaterThanOrEqual(100);
      expect(x).toBeLessThanOrEqual(200);
      expect(y).toBeGreaterThanOrEqual(75);
      expect(y).toBeLessThanOrEqual(225);
    }
  });
});
