import { describe, expect, it } from 'vitest';
import type { ImagePoint } from '../../src/schema/callout.ts';
import { eraseBefore, turnSign, typeInto } from '../../src/ui/fields/pad-typing.ts';
import { enterPoint, rulerGesture, withPoint } from '../../src/ui/ruler/ruler-points.ts';

/** A photo that fills a stage of 1000 × 1000 px. */
const stageOf = (points: readonly ImagePoint[]) => ({
  points,
  toImage: ([x, y]: [number, number]): ImagePoint => [x / 1000, y / 1000],
  toStage: ([x, y]: ImagePoint): [number, number] => [x * 1000, y * 1000],
});

describe('points under the finger', () => {
  it('a press sets the next point, shifting moves it, lifting keeps it', () => {
    const stage = stageOf([[0.1, 0.1]]);
    const pressed = rulerGesture(null, { kind: 'press', at: [500, 500] }, stage);
    expect(pressed.held).toEqual({ place: 1, at: [0.5, 0.5], offPx: [0, 0] });
    const path: [number, number][] = [
      [500, 500],
      [520, 510],
    ];
    const dragged = rulerGesture(pressed.held, { kind: 'drag', path, moved: true }, stage);
    expect(dragged.held?.at).toEqual([0.52, 0.51]);
    const lifted = rulerGesture(dragged.held, { kind: 'release', path, tap: false }, stage);
    expect(lifted).toEqual({ held: null, set: { place: 1, at: [0.52, 0.51] } });
  });

  it('a set point is carried along at the distance at which it was taken', () => {
    const six: ImagePoint[] = [
      [0.1, 0.1],
      [0.9, 0.1],
      [0.9, 0.9],
      [0.1, 0.9],
      [0.4, 0.5],
      [0.6, 0.5],
    ];
    const stage = stageOf(six);
    const { held } = rulerGesture(null, { kind: 'press', at: [415, 510] }, stage);
    expect(held).toEqual({ place: 4, at: [0.4, 0.5], offPx: [-15, -10] });
    const moved = rulerGesture(
      held,
      {
        kind: 'drag',
        path: [
          [415, 510],
          [425, 520],
        ],
        moved: true,
      },
      stage,
    );
    expect(moved.held?.at).toEqual([0.41, 0.51]);
    expect(rulerGesture(null, { kind: 'press', at: [430, 530] }, stage).held).toBeNull();
  });

  it('15 px beside a set point a further one can be set while points are missing, 14 px off the set one is taken', () => {
    const stage = stageOf([[0.5, 0.5]]);
    expect(rulerGesture(null, { kind: 'press', at: [515, 500] }, stage).held?.place).toBe(1);
    expect(rulerGesture(null, { kind: 'press', at: [514, 500] }, stage).held?.place).toBe(0);
  });

  it('a second finger drops what was being set', () => {
    const held = { place: 0, at: [0.5, 0.5] as ImagePoint, offPx: [0, 0] as [number, number] };
    expect(rulerGesture(held, { kind: 'abandon' }, stageOf([]))).toEqual({ held: null, set: null });
  });

  it('Enter sets a point where the crosshair is, and after the sixth takes the first in hand', () => {
    const five = Array.from({ length: 5 }, (_, place): ImagePoint => [place / 10, 0]);
    const sixth = enterPoint({ at: [0.7, 0.7], place: 5 }, five);
    expect(sixth.points).toEqual([...five, [0.7, 0.7]]);
    expect(sixth.keys).toEqual({ place: 0, at: [0, 0] });
    expect(enterPoint(sixth.keys, sixth.points ?? [])).toEqual({ keys: { place: 1, at: [0.1, 0] }, points: null });
    expect(withPoint(five, 2, [1, 1])[2]).toEqual([1, 1]);
  });
});

describe('keys of the number pad', () => {
  it('type at the caret, in place of what is marked, and at the end where no caret is told', () => {
    expect(typeInto({ text: '32', from: 1, to: 1 }, '.')).toEqual({ text: '3.2', from: 2, to: 2 });
    expect(typeInto({ text: '3.296', from: 0, to: 5 }, '3')).toEqual({ text: '3', from: 1, to: 1 });
    expect(typeInto({ text: '3', from: null, to: null }, '.').text).toBe('3.');
  });

  it('erase the character before the caret, or what is marked, and nothing of an empty box', () => {
    expect(eraseBefore({ text: '3.29', from: 4, to: 4 })).toEqual({ text: '3.2', from: 3, to: 3 });
    expect(eraseBefore({ text: '3.29', from: 1, to: 4 })).toEqual({ text: '3', from: 1, to: 1 });
    expect(eraseBefore({ text: '', from: 0, to: 0 })).toEqual({ text: '', from: 0, to: 0 });
  });

  it('put a minus before the figure and take it away again', () => {
    const negative = turnSign({ text: '0.4', from: 3, to: 3 });
    expect(negative).toEqual({ text: '-0.4', from: 4, to: 4 });
    expect(turnSign(negative)).toEqual({ text: '0.4', from: 3, to: 3 });
  });
});
