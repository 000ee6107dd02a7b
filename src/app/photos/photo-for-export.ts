import { burnInCovers } from '../../photos/burn-in-covers.ts';
import type { PhotoBytes } from '../../schema/photo.ts';
import type { SheetPhoto } from '../../sheet/model/sheet.ts';
import { store } from '../state/store.ts';

/** A photo as it may leave the phone: what was covered up is painted over for good, or the photo stays here. */
export async function photoForExport(photo: SheetPhoto | undefined): Promise<PhotoBytes | null> {
  const stored = photo && (await store().photo(photo.photoId));
  if (!photo || !stored) return null;
  const covers = photo.callouts.filter(({ kind }) => kind === 'cover').map(({ points }) => boxOf(points));
  try {
    return { type: stored.type, bytes: await burnInCovers({ bytes: stored.bytes, covers }) };
  } catch (error) {
    console.error('cover-ups: not burnt in, the photo is left out', error);
    return null;
  }
}

function boxOf(points: readonly (readonly [number, number])[]) {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}
