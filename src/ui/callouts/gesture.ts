import type { StagePair, StagePoint } from './view.ts';

/** A finger, pen or mouse on the stage. */
export interface Touch {
  pointerId: number;
  type: 'touch' | 'pen' | 'mouse';
  at: StagePoint;
  /** Moves the photo instead of drawing: the middle button, or Move is switched on. */
  pans: boolean;
}

/** What the pointers on the stage are doing. One draws, two move and magnify; after two, all must be lifted first. */
export type Gesture =
  | { kind: 'idle' }
  | { kind: 'pressing'; touch: Touch; path: StagePoint[]; moved: boolean }
  | { kind: 'panning'; touch: Touch }
  | { kind: 'pinching'; first: Touch; second: Touch }
  | { kind: 'spent'; downIds: number[] };

export type GestureEffect =
  | { kind: 'press'; at: StagePoint }
  | { kind: 'drag'; path: StagePoint[]; moved: boolean }
  | { kind: 'release'; path: StagePoint[]; tap: boolean }
  | { kind: 'abandon' }
  | { kind: 'pan'; byPx: StagePoint }
  | { kind: 'pinch'; from: StagePair; to: StagePair };

export interface GestureStep {
  gesture: Gesture;
  effect: GestureEffect | null;
}

export const IDLE: Gesture = { kind: 'idle' };

/** A press that wanders less than this is a tap: our choice, a gloved fingertip rolls a few pixels. */
const TAP_SLACK_PX = 8;

export function pointerDown(gesture: Gesture, touch: Touch): GestureStep {
  switch (gesture.kind) {
    case 'idle':
      if (touch.pans) return { gesture: { kind: 'panning', touch }, effect: null };
      return {
        gesture: { kind: 'pressing', touch, path: [touch.at], moved: false },
        effect: { kind: 'press', at: touch.at },
      };
    case 'pressing':
    case 'panning': {
      // The ball of the hand rests on the glass while a pen draws; a second mouse button is no second finger.
      if (gesture.touch.type !== 'touch' || touch.type !== 'touch') return { gesture, effect: null };
      const pinching: Gesture = { kind: 'pinching', first: gesture.touch, second: touch };
      return { gesture: pinching, effect: gesture.kind === 'pressing' ? { kind: 'abandon' } : null };
    }
    case 'spent':
      return { gesture: { kind: 'spent', downIds: [...gesture.downIds, touch.pointerId] }, effect: null };
    case 'pinching':
      return { gesture, effect: null };
  }
}

export function pointerMove(gesture: Gesture, { pointerId, at }: Pick<Touch, 'pointerId' | 'at'>): GestureStep {
  switch (gesture.kind) {
    case 'pressing': {
      if (gesture.touch.pointerId !== pointerId) return { gesture, effect: null };
      const path = [...gesture.path, at];
      const moved = gesture.moved || distancePx(gesture.touch.at, at) >= TAP_SLACK_PX;
      return { gesture: { ...gesture, path, moved }, effect: { kind: 'drag', path, moved } };
    }
    case 'panning': {
      const { touch } = gesture;
      if (touch.pointerId !== pointerId) return { gesture, effect: null };
      const byPx: StagePoint = [at[0] - touch.at[0], at[1] - touch.at[1]];
      return { gesture: { kind: 'panning', touch: { ...touch, at } }, effect: { kind: 'pan', byPx } };
    }
    case 'pinching': {
      const { first, second } = gesture;
      if (pointerId !== first.pointerId && pointerId !== second.pointerId) return { gesture, effect: null };
      const next = {
        first: first.pointerId === pointerId ? { ...first, at } : first,
        second: second.pointerId === pointerId ? { ...second, at } : second,
      };
      return {
        gesture: { kind: 'pinching', ...next },
        effect: { kind: 'pinch', from: [first.at, second.at], to: [next.first.at, next.second.at] },
      };
    }
    default:
      return { gesture, effect: null };
  }
}

/** A pointer was lifted, or the browser took it away: then what was being drawn is dropped. */
export function pointerUp(gesture: Gesture, pointerId: number, takenAway = false): GestureStep {
  switch (gesture.kind) {
    case 'pressing': {
      if (gesture.touch.pointerId !== pointerId) return { gesture, effect: null };
      const { path, moved } = gesture;
      return { gesture: IDLE, effect: takenAway ? { kind: 'abandon' } : { kind: 'release', path, tap: !moved } };
    }
    case 'panning':
      return { gesture: gesture.touch.pointerId === pointerId ? IDLE : gesture, effect: null };
    case 'pinching': {
      const others = [gesture.first, gesture.second].filter((touch) => touch.pointerId !== pointerId);
      if (others.length === 2) return { gesture, effect: null };
      return { gesture: { kind: 'spent', downIds: others.map((touch) => touch.pointerId) }, effect: null };
    }
    case 'spent': {
      const downIds = gesture.downIds.filter((id) => id !== pointerId);
      return { gesture: downIds.length === 0 ? IDLE : { kind: 'spent', downIds }, effect: null };
    }
    case 'idle':
      return { gesture, effect: null };
  }
}

function distancePx(a: StagePoint, b: StagePoint): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
