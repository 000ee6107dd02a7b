import type { SizePx } from './orientation.ts';

/** The size with the longer side brought down to the limit, proportions kept; never enlarged, never below 1 px. */
export function fitSize({ widthPx, heightPx }: SizePx, longestSidePx: number): SizePx {
  const scale = Math.min(1, longestSidePx / Math.max(widthPx, heightPx));
  return { widthPx: Math.max(1, Math.round(widthPx * scale)), heightPx: Math.max(1, Math.round(heightPx * scale)) };
}
