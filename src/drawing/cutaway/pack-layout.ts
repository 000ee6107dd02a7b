/** Where the parts of the pack stand, in drawing units. */
export interface PackLayout {
  /** Left edge and width of what is drawn; on a wide screen it stands in the middle. */
  left: number;
  width: number;
  lid: { left: number; right: number; top: number; bottom: number };
  tub: { left: number; right: number; bottom: number };
  /** The hollow inside. */
  inside: { left: number; right: number; top: number; bottom: number };
  posts: { minusX: number; plusX: number; top: number };
  cells: { left: number; right: number; top: number; bottom: number };
  loomY: number;
  bms: { left: number; right: number; top: number; bottom: number };
  /** Lower end of the names above, upper end of those below. */
  namesAbove: number;
  namesBelow: number;
}

export const WALL = 7;
/** Room between wall and cells in which the leads run. */
export const CHANNEL = 22;
export const NAME_HEIGHT = 52;

/** Widest it is drawn, in px: our choice, beyond it the names stand too far from what they name. */
const WIDEST = 520;

export function packLayout(widthPx: number): PackLayout {
  const width = Math.min(widthPx, WIDEST);
  const left = (widthPx - width) / 2;
  const stretch = Math.min(Math.max(width / 358, 0.85), 1.3);
  const lid = { left: left + 16, right: left + width - 16, top: NAME_HEIGHT + 32, bottom: NAME_HEIGHT + 50 };
  const tub = { left: lid.left + 8, right: lid.right - 8, bottom: lid.bottom + 196 * stretch };
  const inside = { left: tub.left + WALL, right: tub.right - WALL, top: lid.top + WALL, bottom: tub.bottom - WALL };
  const middle = (inside.left + inside.right) / 2;
  const bmsHalf = (inside.right - inside.left) * 0.27;
  return {
    left,
    width,
    lid,
    tub,
    inside,
    posts: { minusX: inside.left + 25, plusX: inside.right - 25, top: lid.top - 25 },
    cells: {
      left: inside.left + CHANNEL,
      right: inside.right - CHANNEL,
      top: inside.top + 50,
      bottom: inside.bottom - 36,
    },
    loomY: inside.top + 20,
    bms: { left: middle - bmsHalf, right: middle + bmsHalf, top: inside.bottom - 24, bottom: inside.bottom - 6 },
    namesAbove: NAME_HEIGHT,
    namesBelow: tub.bottom + 22,
  };
}
