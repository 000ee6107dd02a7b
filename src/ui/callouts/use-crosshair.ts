import { useSignal } from '@preact/signals';
import type { CalloutKind, ImagePoint } from '../../schema/callout.ts';
import { calloutWords } from '../../text/callouts.ts';
import { type Crosshair, keyStep, movedCrosshair, setPoint } from './crosshair.ts';
import { type PhotoSize, pointsFromPath } from './shape-callout.ts';

export interface CrosshairKeys {
  tool: CalloutKind;
  sizes: { shown: PhotoSize; whole: PhotoSize } | null;
  zoom: number;
  chosenId: string | null;
  onZoom: (factor: number) => void;
  onDraw: (kind: CalloutKind, points: ImagePoint[]) => void;
  onChoose: (id: string | null) => void;
  onRemove: (id: string) => void;
  onSay: (words: string) => void;
}

const CENTRE: Crosshair = { at: [0.5, 0.5], set: [] };
const ZOOM_KEYS: Readonly<Record<string, number>> = { '+': 1.25, '-': 0.8 };

/** Drawing with the keys: the crosshair, if it is shown, and what a key does. */
export function useCrosshair(keys: CrosshairKeys) {
  const crosshair = useSignal<Crosshair | null>(null);

  /** True when the key was meant for the stage. */
  function press({ key, shiftKey }: KeyboardEvent): boolean {
    const now = crosshair.peek() ?? CENTRE;
    const by = keyStep(key, { large: shiftKey, zoom: keys.zoom });
    const zoom = ZOOM_KEYS[key];
    if (by !== null) crosshair.value = movedCrosshair(now, by);
    else if (zoom !== undefined) keys.onZoom(zoom);
    else if (key === 'Enter') enter(now);
    else if (key === 'Delete' && keys.chosenId !== null) keys.onRemove(keys.chosenId);
    else if (key === 'Escape' && now.set.length > 0) crosshair.value = { ...now, set: [] };
    else if (key === 'Escape' && keys.chosenId !== null) keys.onChoose(null);
    else return false;
    return true;
  }

  function enter(now: Crosshair) {
    const step = setPoint(keys.tool, now);
    crosshair.value = step.crosshair;
    const points = step.path && keys.sizes && pointsFromPath(keys.tool, step.path, keys.sizes);
    if (points) keys.onDraw(keys.tool, points);
    else keys.onSay(calloutWords.pointSet(step.crosshair.set.length));
  }

  return {
    crosshair: crosshair.value,
    press,
    show() {
      crosshair.value ??= CENTRE;
    },
    hide() {
      crosshair.value = null;
    },
  };
}
