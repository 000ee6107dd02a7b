import type { Entry } from '../../schema/entry.ts';
import { bytesPath } from './bundle-paths.ts';
import type { FrameSize } from './check-file.ts';
import { RefusedBundle } from './refused-bundle.ts';

/**
 * A photo must have the size its entry gives it: callouts and rulers lie on it by that size. Photos without an entry here,
 * and entries without bytes here, have nothing to be held against.
 *
 * Throws  RefusedBundle
 */
export function refuseOtherSizes(
  packs: readonly { entries: readonly Entry[] }[],
  frames: ReadonlyMap<string, FrameSize>,
): void {
  for (const { key, v, gone } of packs.flatMap(({ entries }) => entries)) {
    const frame = frames.get(key[2]);
    if (key[1] !== 'photo' || gone || frame === undefined) continue;
    // Every photo entry has passed its schema.
    const { widthPx, heightPx } = v as FrameSize;
    if (widthPx === frame.widthPx && heightPx === frame.heightPx) continue;
    const path = bytesPath('photos', key[2]);
    throw new RefusedBundle(
      'otherPicture',
      `${path} has ${frame.widthPx} × ${frame.heightPx} px, its entry says ${widthPx} × ${heightPx}`,
    );
  }
}
