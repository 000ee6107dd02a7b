import type { RefObject } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';

/** The size of the stage, kept up as the phone turns or the keyboard comes up; null until it is first known. */
export function useStageSize(stage: RefObject<HTMLElement | null>): { widthPx: number; heightPx: number } | null {
  const [size, setSize] = useState<{ widthPx: number; heightPx: number } | null>(null);
  useLayoutEffect(() => {
    const element = stage.current;
    if (element === null) return;
    const measure = () => {
      const { clientWidth, clientHeight } = element;
      // A stage squeezed to nothing by the keyboard keeps its last size, so that no length is ever divided by 0.
      if (clientWidth > 0 && clientHeight > 0) setSize({ widthPx: clientWidth, heightPx: clientHeight });
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [stage]);
  return size;
}
