import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { roundedPoint } from '../../drawing/simplify-stroke.ts';
import type { ImagePoint } from '../../schema/callout.ts';
import { rulerStageWords as say } from '../../text/live-tests/ruler.ts';
import { keyStep } from '../callouts/crosshair.ts';
import type { GestureEffect } from '../callouts/gesture.ts';
import { isMoved, StageFrame } from '../callouts/stage-frame.tsx';
import { usePointers } from '../callouts/use-pointers.ts';
import { useView } from '../callouts/use-view.ts';
import { toImage, toStage } from '../callouts/view.ts';
import { RulerPlane } from './ruler-plane.tsx';
import { enterPoint, type HeldPoint, RULER_POINTS, type RulerKeys, rulerGesture, withPoint } from './ruler-points.ts';

interface RulerStageProps {
  photoUrl: string;
  photo: { widthPx: number; heightPx: number };
  points: readonly ImagePoint[];
  /** What is asked for now. */
  step: string;
  onPoints: (points: ImagePoint[]) => void;
}

const ZOOM_KEYS: Readonly<Record<string, number>> = { '+': 1.25, '-': 0.8 };

/** The photo under the fingers: sets and shifts the six points, magnifies; the same with the keys. */
export function RulerStage({ photoUrl, photo, points, step, onPoints }: RulerStageProps) {
  const stage = useRef<HTMLDivElement>(null);
  const view = useView(stage, photo);
  const { laid, zoom, pan, pinch } = view;
  const moving = useSignal(false);
  const held = useSignal<HeldPoint | null>(null);
  const keys = useSignal<RulerKeys | null>(null);

  function onEffect(effect: GestureEffect) {
    keys.value = null;
    if (effect.kind === 'pan') pan(effect.byPx);
    if (effect.kind === 'pinch') pinch(effect);
    if (laid === null) return;
    const next = rulerGesture(held.peek(), effect, {
      points,
      toImage: (at) => toImage(at, laid.view, laid.size),
      toStage: (point) => toStage(point, laid.view, laid.size),
    });
    held.value = next.held;
    if (next.set) onPoints(withPoint(points, next.set.place, next.set.at));
  }
  const pointers = usePointers(isMoved(view, moving), onEffect);

  /** True when the key was meant for the stage. */
  function press({ key, shiftKey }: KeyboardEvent): boolean {
    const start = Math.min(points.length, RULER_POINTS - 1);
    const now = keys.peek() ?? { place: start, at: points[start] ?? [0.5, 0.5] };
    const by = keyStep(key, { large: shiftKey, zoom: laid?.view.zoom ?? 1 });
    const factor = ZOOM_KEYS[key];
    if (by !== null) {
      const at = roundedPoint([now.at[0] + by[0], now.at[1] + by[1]]);
      keys.value = { ...now, at };
      if (now.place < points.length) onPoints(withPoint(points, now.place, at));
    } else if (factor !== undefined) zoom(factor);
    else if (key === 'Enter') {
      const entered = enterPoint(now, points);
      keys.value = entered.keys;
      if (entered.points) onPoints(entered.points);
    } else return false;
    return true;
  }

  const shown = held.value ? withPoint(points, held.value.place, held.value.at) : points;
  return (
    <StageFrame
      {...{ stage, view, moving, pointers }}
      label={`${say.stage}. ${step}`}
      keys={say.keys}
      onReach={() => {
        const place = Math.min(points.length, RULER_POINTS - 1);
        keys.value ??= { place, at: points[place] ?? [0.5, 0.5] };
      }}
      onLeave={() => {
        keys.value = null;
      }}
      onKey={press}
    >
      {laid && (
        <RulerPlane {...{ photoUrl, laid }} points={shown} held={held.value} crosshair={keys.value?.at ?? null} />
      )}
    </StageFrame>
  );
}
