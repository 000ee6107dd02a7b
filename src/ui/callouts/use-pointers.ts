import { useRef } from 'preact/hooks';
import {
  type Gesture,
  type GestureEffect,
  type GestureStep,
  IDLE,
  pointerDown,
  pointerMove,
  pointerUp,
} from './gesture.ts';
import type { StagePoint } from './view.ts';

const MIDDLE_BUTTON = 1;

/** Turns the pointer events of the stage into what they mean. `finger` tells whether something covers the spot. */
export function usePointers(moving: boolean, onEffect: (effect: GestureEffect, by: { finger: boolean }) => void) {
  const gesture = useRef<Gesture>(IDLE);

  function follow(event: PointerEvent, step: GestureStep) {
    gesture.current = step.gesture;
    if (step.effect !== null) onEffect(step.effect, { finger: event.pointerType === 'touch' });
  }

  return {
    onPointerDown(event: PointerEvent) {
      if (!(event.currentTarget instanceof HTMLElement)) return;
      // The right button is the browser's own.
      if (event.pointerType === 'mouse' && event.button > MIDDLE_BUTTON) return;
      if (event.pointerType !== 'mouse') {
        // No mouse events after it, which would take the focus; and the keyboard of the phone goes away.
        event.preventDefault();
        if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      }
      event.currentTarget.setPointerCapture(event.pointerId);
      const type = event.pointerType === 'pen' || event.pointerType === 'mouse' ? event.pointerType : 'touch';
      const pans = moving || event.button === MIDDLE_BUTTON;
      follow(event, pointerDown(gesture.current, { pointerId: event.pointerId, type, at: placeOf(event), pans }));
    },
    onPointerMove(event: PointerEvent) {
      follow(event, pointerMove(gesture.current, { pointerId: event.pointerId, at: placeOf(event) }));
    },
    onPointerUp(event: PointerEvent) {
      follow(event, pointerUp(gesture.current, event.pointerId));
    },
    onPointerCancel(event: PointerEvent) {
      follow(event, pointerUp(gesture.current, event.pointerId, true));
    },
  };
}

function placeOf(event: PointerEvent): StagePoint {
  const stage = event.currentTarget instanceof HTMLElement ? event.currentTarget.getBoundingClientRect() : null;
  return [event.clientX - (stage?.left ?? 0), event.clientY - (stage?.top ?? 0)];
}
