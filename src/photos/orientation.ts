/** Exif orientation: which way the stored rows and columns must be turned to stand upright (CIPA DC-008, tag 0x0112). */
export type Orientation = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;

export interface SizePx {
  widthPx: number;
  heightPx: number;
}

export function isOrientation(value: number): value is Orientation {
  return Number.isInteger(value) && value >= 1 && value <= 8;
}

/** From 5 on, the stored rows are the upright columns. */
export function uprightSize(stored: SizePx, orientation: Orientation): SizePx {
  return orientation < 5 ? stored : { widthPx: stored.heightPx, heightPx: stored.widthPx };
}

/** Canvas transform (a, b, c, d, e, f) that draws a picture of this stored size upright with its corner at 0, 0. */
export function uprightTransform(
  stored: SizePx,
  orientation: Orientation,
): [number, number, number, number, number, number] {
  const { widthPx: w, heightPx: h } = stored;
  switch (orientation) {
    case 1:
      return [1, 0, 0, 1, 0, 0];
    case 2:
      return [-1, 0, 0, 1, w, 0];
    case 3:
      return [-1, 0, 0, -1, w, h];
    case 4:
      return [1, 0, 0, -1, 0, h];
    case 5:
      return [0, 1, 1, 0, 0, 0];
    case 6:
      return [0, 1, -1, 0, h, 0];
    case 7:
      return [0, -1, -1, 0, h, w];
    case 8:
      return [0, -1, 1, 0, 0, w];
  }
}
