import { describe, expect, it } from 'vitest';
import {
  type Gesture,
  type GestureEffect,
  IDLE,
  pointerDown,
  pointerMove,
  pointerUp,
  type Touch,
} from '../../../src/ui/callouts/gesture.ts';

type Act =
  | ['down', number, number, number, Partial<Touch>?]
  | ['move', number, number, number]
  | ['up', number]
  | ['lost', number];

/** Plays a list of acts and returns where it ends and every effect on the way. */
function played(...acts: Act[]): { gesture: Gesture; effects: GestureEffect[] } {
  let gesture: Gesture = IDLE;
  const effects: GestureEffect[] = [];
  for (const act of acts) {
    const step =
      act[0] === 'down'
        ? pointerDown(gesture, { pointerId: act[1], type: 'touch', at: [act[2], act[3]], pans: false, ...act[4] })
        : act[0] === 'move'
          ? pointerMove(gesture, { pointerId: act[1], at: [act[2], act[3]] })
          : pointerUp(gesture, act[1], act[0] === 'lost');
    gesture = step.gesture;
    if (step.effect !== null) effects.push(step.effect);
  }
  return { gesture, effects };
}
const kinds = (effects: GestureEffect[]) => effects.map((effect) => effect.kind);

describe('gesture', () => {
  it('takes a press that wanders 7 px as a tap, one of 8 px as a drag', () => {
    const tap = played(['down', 1, 0, 0], ['move', 1, 7, 0], ['up', 1]).effects.at(-1);
    expect(tap).toMatchObject({ kind: 'release', tap: true });
    const drag = played(['down', 1, 0, 0], ['move', 1, 8, 0], ['up', 1]).effects.at(-1);
    expect(drag).toMatchObject({
      kind: 'release',
      tap: false,
      path: [
        [0, 0],
        [8, 0],
      ],
    });
  });

  it('stays a drag when the finger comes back to where it began', () => {
    const { effects } = played(['down', 1, 0, 0], ['move', 1, 50, 0], ['move', 1, 0, 0], ['up', 1]);
    expect(effects.at(-1)).toMatchObject({ kind: 'release', tap: false });
  });

  it('drops the drawing when a second finger comes down, and draws nothing until both are up', () => {
    const { gesture, effects } = played(
      ['down', 1, 0, 0],
      ['down', 2, 100, 0],
      ['move', 2, 200, 0],
      ['up', 1],
      ['move', 2, 250, 0],
      ['down', 3, 10, 10],
      ['up', 2],
      ['up', 3],
    );
    expect(kinds(effects)).toEqual(['press', 'abandon', 'pinch']);
    expect(effects[2]).toEqual({
      kind: 'pinch',
      from: [
        [0, 0],
        [100, 0],
      ],
      to: [
        [0, 0],
        [200, 0],
      ],
    });
    expect(gesture).toEqual(IDLE);
  });

  it('lets a third finger change nothing in a pinch', () => {
    const { effects } = played(['down', 1, 0, 0], ['down', 2, 9, 9], ['down', 3, 50, 50], ['move', 3, 60, 60]);
    expect(kinds(effects)).toEqual(['press', 'abandon']);
  });

  it('ignores the hand that rests on the glass while a pen draws', () => {
    const { effects } = played(
      ['down', 1, 0, 0, { type: 'pen' }],
      ['down', 2, 300, 300],
      ['move', 2, 310, 300],
      ['move', 1, 20, 0],
      ['up', 1],
    );
    expect(kinds(effects)).toEqual(['press', 'drag', 'release']);
  });

  it('drops the drawing when the browser takes the pointer away', () => {
    expect(kinds(played(['down', 1, 0, 0], ['move', 1, 40, 0], ['lost', 1]).effects)).toEqual([
      'press',
      'drag',
      'abandon',
    ]);
  });

  it('pans with one pointer where that is asked for, by 5 and −3 px', () => {
    const { gesture, effects } = played(['down', 1, 10, 10, { pans: true }], ['move', 1, 15, 7], ['up', 1]);
    expect(effects).toEqual([{ kind: 'pan', byPx: [5, -3] }]);
    expect(gesture).toEqual(IDLE);
  });

  it('ignores moves and lifts of pointers it does not know', () => {
    expect(played(['move', 4, 1, 1], ['up', 4])).toEqual({ gesture: IDLE, effects: [] });
  });
});
