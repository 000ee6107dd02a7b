import { describe, expect, it } from 'vitest';
import type { DrawnCallout } from '../../../src/drawing/callouts.ts';
import { calloutAt, distanceToCalloutPx, editingFrame, gripAt } from '../../../src/ui/callouts/grip.ts';

const FRAME = { widthPx: 400, heightPx: 400, scale: 1 };
const of = (kind: DrawnCallout['kind'], points: DrawnCallout['points'], text?: string): DrawnCallout => ({
  kind,
  points,
  number: kind === 'leader' ? 1 : null,
  ...(text !== undefined && { text }),
});

describe('distanceToCalloutPx', () => {
  it('is 0 in a leader’s ring and 27 px above a ring of 13 px at 40 px from its middle', () => {
    const leader = of('leader', [
      [0.75, 0.75],
      [0.25, 0.25],
    ]);
    expect(distanceToCalloutPx(leader, [105, 95], FRAME)).toBe(0);
    expect(distanceToCalloutPx(leader, [100, 60], FRAME)).toBeCloseTo(27, 9);
  });

  it('is measured to an outline’s edge but to a cover’s whole face', () => {
    const points: DrawnCallout['points'] = [
      [0.25, 0.25],
      [0.75, 0.75],
    ];
    expect(distanceToCalloutPx(of('outline', points), [200, 150], FRAME)).toBeCloseTo(50, 9);
    expect(distanceToCalloutPx(of('cover', points), [200, 150], FRAME)).toBe(0);
    expect(distanceToCalloutPx(of('cover', points), [330, 340], FRAME)).toBeCloseTo(50, 9);
  });

  it('is measured to a line between its points, not to its endless continuation', () => {
    const arrow = of('arrow', [
      [0.25, 0.5],
      [0.5, 0.5],
    ]);
    expect(distanceToCalloutPx(arrow, [150, 210], FRAME)).toBeCloseTo(10, 9);
    expect(distanceToCalloutPx(arrow, [230, 240], FRAME)).toBeCloseTo(50, 9);
  });

  it('is 0 on the words of a text', () => {
    expect(distanceToCalloutPx(of('text', [[0.25, 0.5]], 'Paper strip'), [120, 195], FRAME)).toBe(0);
  });
});

describe('calloutAt', () => {
  it('takes the nearest within 18 px, of equals the later one, and none beyond', () => {
    const near = of('stroke', [
      [0.25, 0.5],
      [0.75, 0.5],
    ]);
    const far = of('stroke', [
      [0.25, 0.53],
      [0.75, 0.53],
    ]);
    expect(calloutAt([near, far], [200, 203], FRAME)).toBe(near);
    const twin = of('stroke', [
      [0.25, 0.5],
      [0.75, 0.5],
    ]);
    expect(calloutAt([near, twin], [200, 203], FRAME)).toBe(twin);
    expect(calloutAt([near], [200, 218], FRAME)).toBe(near);
    expect(calloutAt([near], [200, 219], FRAME)).toBeNull();
  });
});

describe('gripAt', () => {
  it('takes hold of the nearer point within 24 px, else of the whole within 18 px of it, else of nothing', () => {
    const arrow = of('arrow', [
      [0.25, 0.5],
      [0.75, 0.5],
    ]);
    expect(gripAt(arrow, [120, 200], FRAME)).toEqual({ kind: 'point', place: 0 });
    expect(gripAt(arrow, [290, 210], FRAME)).toEqual({ kind: 'point', place: 1 });
    expect(gripAt(arrow, [200, 215], FRAME)).toEqual({ kind: 'whole' });
    expect(gripAt(arrow, [200, 225], FRAME)).toBeNull();
  });

  it('takes a stroke as a whole even at its end', () => {
    expect(
      gripAt(
        of('stroke', [
          [0.25, 0.5],
          [0.75, 0.5],
        ]),
        [100, 200],
        FRAME,
      ),
    ).toEqual({ kind: 'whole' });
  });
});

describe('editingFrame', () => {
  it('keeps lines as wide as on the whole photo while it is magnified, and numbers at 13 px or more', () => {
    expect(editingFrame({ widthPx: 3120, heightPx: 4160 }, { widthPx: 390, heightPx: 520 }).scale).toBe(1);
    // 15 px figures at scale 0.9 are 13.5 px.
    expect(editingFrame({ widthPx: 390, heightPx: 292 }, { widthPx: 390, heightPx: 292 }).scale).toBe(0.9);
  });
});
