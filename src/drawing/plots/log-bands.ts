import type { Mark, TextMark } from '../display-list.ts';
import { shortened } from '../text-shortened.ts';
import type { TextFace } from '../text-width.ts';
import { clampedAcross, type LabelRoom } from './label-room.ts';
import type { Scale } from './linear-scale.ts';

/** Part of a log along the axis, in the axis' unit. */
export interface PlacedBand {
  from: number;
  to: number;
  label: string;
  chosen: boolean;
}

/** Above the bands. */
export const BAND_LABEL_HEIGHT = 18;
const FACE: TextFace = { size: 12.5, weight: 400 };
const CHOSEN: TextFace = { size: 12.5, weight: 600 };
/** So short a run is still drawn this wide, or it would be lost between two lines. */
const NARROWEST = 3;
/** A name may be this wide even over a narrower band. */
const LABEL_WIDTH = 70;

export function bandMarks(bands: readonly PlacedBand[], x: Scale, bottom: number): Mark[] {
  const inOrder = [...bands.filter((band) => !band.chosen), ...bands.filter((band) => band.chosen)];
  return inOrder.flatMap((band): Mark[] => {
    const { left, width } = across(band, x);
    const shape = { form: 'box', x: left, y: BAND_LABEL_HEIGHT, width, height: bottom - BAND_LABEL_HEIGHT } as const;
    if (!band.chosen) return [{ kind: 'shape', shape, stroke: { ink: 'muted', width: 0.9, dash: [3, 3] } }];
    return [
      { kind: 'shape', shape, fill: 'face', stroke: { ink: 'ink', width: 1.2 } },
      { kind: 'shape', shape: { ...shape, height: 3.5 }, fill: 'ink' },
    ];
  });
}

/** Names over the bands: the chosen ones first, then as many of the others as find room. */
export function bandLabels({ bands, x, room, width }: BandLabelsInput): Mark[] {
  const inOrder = [...bands.filter((band) => band.chosen), ...bands.filter((band) => !band.chosen)];
  return inOrder.flatMap((band) => {
    const place = across(band, x);
    const face = band.chosen ? CHOSEN : FACE;
    const wordIn = (most: number): TextMark | null => {
      const text = shortened(band.label, face, most);
      if (text === '' || text === '…') return null;
      const middle = place.left + place.width / 2;
      const ink = band.chosen ? 'ink' : 'muted';
      return room.take(
        clampedAcross({ kind: 'text', x: middle, y: 13, text, ...face, anchor: 'middle', ink }, 0, width),
      );
    };
    return wordIn(Math.min(width, Math.max(place.width, LABEL_WIDTH))) ?? wordIn(place.width) ?? [];
  });
}

export interface BandLabelsInput {
  bands: readonly PlacedBand[];
  x: Scale;
  room: LabelRoom;
  width: number;
}

function across({ from, to }: PlacedBand, x: Scale): { left: number; width: number } {
  const width = Math.max(NARROWEST, x(to) - x(from));
  return { left: (x(from) + x(to)) / 2 - width / 2, width };
}
