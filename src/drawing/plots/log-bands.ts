import type { Mark, TextMark } from '../display-list.ts';
import { shortened } from '../text-shortened.ts';
import type { TextFace } from '../text-width.ts';
import { type Box, clampedAcross, type LabelRoom } from './label-room.ts';
import type { Scale } from './linear-scale.ts';

/** Part of a log along the axis, in the axis' unit. */
export interface PlacedBand {
  from: number;
  to: number;
  label: string;
  chosen: boolean;
}

/** Between the first panel and its title. */
export const BAND_LABEL_HEIGHT = 16;
const EDGE_HEIGHT = 3.5;
const FACE: TextFace = { size: 12.5, weight: 400 };
const CHOSEN: TextFace = { size: 12.5, weight: 600 };
/** So short a run is still drawn this wide, or it would be lost between two lines. */
const NARROWEST = 3;
/** A name may be this wide even over a narrower band. */
const LABEL_WIDTH = 70;

/** The same part of every panel. The chosen lie above the others, with a heavy upper edge in the first panel. */
export function bandMarks(bands: readonly PlacedBand[], x: Scale, panels: readonly Box[]): Mark[] {
  const inOrder = [...bands.filter((band) => !band.chosen), ...bands.filter((band) => band.chosen)];
  return inOrder.flatMap((band) =>
    panels.flatMap((panel, place): Mark[] => {
      const { left, width } = across(band, x, panel);
      const shape = { form: 'box', x: left, y: panel.top, width, height: panel.bottom - panel.top } as const;
      if (!band.chosen) return [{ kind: 'shape', shape, stroke: { ink: 'muted', width: 0.9, dash: [3, 3] } }];
      const edge: Mark = { kind: 'shape', shape: { ...shape, height: EDGE_HEIGHT }, fill: 'ink' };
      return [{ kind: 'shape', shape, fill: 'face', stroke: { ink: 'ink', width: 1 } }, ...(place === 0 ? [edge] : [])];
    }),
  );
}

/** Names over the bands: the chosen ones first, then as many of the others as find room. */
export function bandLabels({ bands, x, room, panel }: BandLabelsInput): Mark[] {
  if (panel === undefined) return [];
  const inOrder = [...bands.filter((band) => band.chosen), ...bands.filter((band) => !band.chosen)];
  const y = panel.top - 5;
  return inOrder.flatMap((band) => {
    const place = across(band, x, panel);
    const face = band.chosen ? CHOSEN : FACE;
    const wordIn = (most: number): TextMark | null => {
      const text = shortened(band.label, face, most);
      if (text === '' || text === '…') return null;
      const middle = place.left + place.width / 2;
      const ink = band.chosen ? 'ink' : 'muted';
      return room.take(
        clampedAcross({ kind: 'text', x: middle, y, text, ...face, anchor: 'middle', ink }, panel.left, panel.right),
      );
    };
    return wordIn(Math.min(panel.right - panel.left, Math.max(place.width, LABEL_WIDTH))) ?? wordIn(place.width) ?? [];
  });
}

export interface BandLabelsInput {
  bands: readonly PlacedBand[];
  x: Scale;
  room: LabelRoom;
  /** The first. */
  panel: Box | undefined;
}

function across({ from, to }: PlacedBand, x: Scale, panel: Box): { left: number; width: number } {
  const width = Math.max(NARROWEST, x(to) - x(from));
  const left = (x(from) + x(to)) / 2 - width / 2;
  return { left: Math.min(Math.max(left, panel.left), panel.right - width), width };
}
