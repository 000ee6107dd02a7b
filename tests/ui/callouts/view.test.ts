import { describe, expect, it } from 'vitest';
import {
  heldView,
  MOST_ZOOM,
  panBy,
  pinchView,
  shownSize,
  toImage,
  toStage,
  wholeView,
  zoomAbout,
} from '../../../src/ui/callouts/view.ts';

/** A photo 3 : 4 on a stage 390 × 536: shown 390 × 520, 8 px of room above and below. */
const SIZE = { stageWidthPx: 390, stageHeightPx: 536, photoWidthPx: 1536, photoHeightPx: 2048 };

describe('view', () => {
  it('shows the whole photo at 390 × 520, 8 px from the top', () => {
    expect(shownSize(SIZE)).toEqual({ widthPx: 390, heightPx: 520 });
    expect(wholeView(SIZE)).toEqual({ zoom: 1, leftPx: 0, topPx: 8 });
  });

  it('keeps what lies under the point about which it magnifies', () => {
    const at = [100, 300] as [number, number];
    const before = toImage(at, wholeView(SIZE), SIZE);
    const near = zoomAbout(wholeView(SIZE), { factor: 3, at }, SIZE);
    expect(near.zoom).toBe(3);
    const after = toImage(at, near, SIZE);
    expect(after[0]).toBeCloseTo(before[0], 9);
    expect(after[1]).toBeCloseTo(before[1], 9);
  });

  it('magnifies to 8 at most, about the same point, and never shrinks below the whole', () => {
    const at = [195, 268] as [number, number];
    const nearest = zoomAbout(wholeView(SIZE), { factor: 100, at }, SIZE);
    expect(toImage(at, nearest, SIZE)[0]).toBeCloseTo(toImage(at, wholeView(SIZE), SIZE)[0], 9);
    expect(zoomAbout(wholeView(SIZE), { factor: 100, at: [0, 0] }, SIZE).zoom).toBe(MOST_ZOOM);
    expect(zoomAbout(wholeView(SIZE), { factor: 0.01, at: [0, 0] }, SIZE)).toEqual(wholeView(SIZE));
  });

  it('follows two fingers: 100 px apart to 200 px apart doubles, and their middle keeps its spot', () => {
    const from = [
      [100, 200],
      [200, 200],
    ] as [[number, number], [number, number]];
    const to = [
      [70, 260],
      [270, 260],
    ] as [[number, number], [number, number]];
    const view = pinchView(wholeView(SIZE), { from, to }, SIZE);
    expect(view.zoom).toBeCloseTo(2, 9);
    const spot = toImage([150, 200], wholeView(SIZE), SIZE);
    const now = toStage(spot, view, SIZE);
    // 170 across is within reach; so is 260 down.
    expect(now[0]).toBeCloseTo(170, 9);
    expect(now[1]).toBeCloseTo(260, 9);
  });

  it('stays as it is when two fingers in one place stay in one place', () => {
    const still: [[number, number], [number, number]] = [
      [5, 5],
      [5, 5],
    ];
    expect(pinchView(wholeView(SIZE), { from: still, to: still }, SIZE)).toEqual(wholeView(SIZE));
  });

  it('uncovers 72 px of ground at most beside a photo larger than the stage, for what the buttons hide', () => {
    const near = zoomAbout(wholeView(SIZE), { factor: 2, at: [195, 268] }, SIZE);
    expect(panBy(near, [9999, 9999], SIZE)).toMatchObject({ leftPx: 72, topPx: 72 });
    expect(panBy(near, [-9999, -9999], SIZE)).toMatchObject({ leftPx: 390 - 780 - 72, topPx: 536 - 1040 - 72 });
  });

  it('puts a photo back in the middle when the stage grows around it', () => {
    expect(heldView(wholeView(SIZE), { ...SIZE, stageHeightPx: 620 })).toEqual({ zoom: 1, leftPx: 0, topPx: 50 });
  });

  it('maps the stage to the picture and back', () => {
    const view = zoomAbout(wholeView(SIZE), { factor: 2.5, at: [40, 80] }, SIZE);
    const [x, y] = toStage(toImage([123, 456], view, SIZE), view, SIZE);
    expect(x).toBeCloseTo(123, 9);
    expect(y).toBeCloseTo(456, 9);
  });
});
