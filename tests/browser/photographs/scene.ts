/** The picture in every made photograph: four coloured corners and a dark letter F, so that turned, mirrored and upright differ. */

export type SceneColour = 'red' | 'green' | 'blue' | 'yellow' | 'dark' | 'grey';

/** Luminance, blue and red difference of ITU-T T.871 for rgb 200,40,40 · 40,160,60 · 40,60,200 · 220,200,40 · 40,40,40 · 150,150,150. */
export const SCENE_YCC: Record<SceneColour, readonly [y: number, cb: number, cr: number]> = {
  red: [88, 101, 208],
  green: [113, 98, 76],
  blue: [70, 201, 107],
  yellow: [188, 45, 151],
  dark: [40, 128, 128],
  grey: [150, 128, 128],
};

/** Where to look for which colour, 0–1 in the upright picture; three of the places lie on the F, one in its notch. */
export const SCENE_PLACES: readonly {
  u: number;
  v: number;
  colour: SceneColour;
  rgb: readonly [number, number, number];
}[] = [
  { u: 0.1, v: 0.1, colour: 'red', rgb: [200, 40, 40] },
  { u: 0.9, v: 0.1, colour: 'green', rgb: [40, 160, 60] },
  { u: 0.9, v: 0.9, colour: 'blue', rgb: [40, 60, 200] },
  { u: 0.1, v: 0.9, colour: 'yellow', rgb: [220, 200, 40] },
  { u: 0.42, v: 0.65, colour: 'dark', rgb: [40, 40, 40] },
  { u: 0.6, v: 0.34, colour: 'dark', rgb: [40, 40, 40] },
  { u: 0.52, v: 0.5, colour: 'dark', rgb: [40, 40, 40] },
  { u: 0.6, v: 0.65, colour: 'grey', rgb: [150, 150, 150] },
];

export function sceneColour(u: number, v: number): SceneColour {
  if (v < 0.25 && (u < 0.25 || u > 0.75)) return u < 0.5 ? 'red' : 'green';
  if (v > 0.75 && (u < 0.25 || u > 0.75)) return u < 0.5 ? 'yellow' : 'blue';
  const stem = u > 0.37 && u < 0.47 && v > 0.28 && v < 0.74;
  const topBar = u >= 0.47 && u < 0.66 && v > 0.28 && v < 0.4;
  const middleBar = u >= 0.47 && u < 0.58 && v > 0.46 && v < 0.55;
  return stem || topBar || middleBar ? 'dark' : 'grey';
}

/**
 * Where a stored place stands in the upright picture, by the Exif definition of orientation (CIPA DC-008, tag 0x0112):
 * e.g. 6 is "the 0th row is the right-hand side, the 0th column the top".
 */
export function uprightPlace(x: number, y: number, orientation: number): [u: number, v: number] {
  const right = 1 - x;
  const below = 1 - y;
  const places: Record<number, [number, number]> = {
    1: [x, y],
    2: [right, y],
    3: [right, below],
    4: [x, below],
    5: [y, x],
    6: [below, x],
    7: [below, right],
    8: [y, right],
  };
  const place = places[orientation];
  if (place === undefined) throw new RangeError(`uprightPlace: orientation must be 1–8, got ${orientation}`);
  return place;
}
