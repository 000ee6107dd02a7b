import { useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';
import { useStageSize } from './use-stage-size.ts';
import {
  heldView,
  panBy,
  pinchView,
  type StagePair,
  type StagePoint,
  type StageSize,
  type View,
  wholeView,
  zoomAbout,
} from './view.ts';

/** One notch of a mouse wheel, about 100 px, magnifies by a fifth. Our choice. */
const WHEEL_FACTOR_PER_PX = 1.0018;

/** How the photo lies on the stage, and the ways to change it; null until the stage has been measured. */
export function useView(stage: RefObject<HTMLElement | null>, photo: { widthPx: number; heightPx: number }) {
  const measured = useStageSize(stage);
  const view = useSignal<View | null>(null);
  const size: StageSize | null = measured && {
    stageWidthPx: measured.widthPx,
    stageHeightPx: measured.heightPx,
    photoWidthPx: photo.widthPx,
    photoHeightPx: photo.heightPx,
  };
  const held = size && heldView(view.value ?? wholeView(size), size);

  function change(next: (now: View, size: StageSize) => View) {
    if (size !== null && held !== null) view.value = next(view.peek() ?? held, size);
  }
  function zoom(factor: number, at: StagePoint | null = null) {
    change((now, on) => zoomAbout(now, { factor, at: at ?? [on.stageWidthPx / 2, on.stageHeightPx / 2] }, on));
  }

  useEffect(() => {
    const element = stage.current;
    if (element === null) return;
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      const box = element.getBoundingClientRect();
      zoom(WHEEL_FACTOR_PER_PX ** -event.deltaY, [event.clientX - box.left, event.clientY - box.top]);
    };
    // Not passive: otherwise the page would scroll or the browser zoom as well.
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  });

  return {
    laid: size && held && { view: held, size },
    zoom,
    pan: (byPx: StagePoint) => change((now, on) => panBy(now, byPx, on)),
    pinch: (move: { from: StagePair; to: StagePair }) => change((now, on) => pinchView(now, move, on)),
    whole: () => change((_, on) => wholeView(on)),
  };
}
