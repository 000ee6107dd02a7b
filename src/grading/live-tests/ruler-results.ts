import { type PhotoRuler, photoRuler } from '../../calc/photo-ruler.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import type { RulerResult } from './results.ts';

export type Measured = Pick<PackRecord, 'tests'> & Partial<Pick<PackRecord, 'photos'>>;

/** The distance each ruler gives on its photo, whose size in pixels is the record's. */
export function rulerResults({ tests, photos = [] }: Measured): RulerResult[] {
  return tests.rulers.map((ruler) => {
    const photo = photos.find(({ id }) => id === ruler.photoId);
    return { ruler, distance: photo === undefined ? null : distanceOn(ruler, photo) };
  });
}

/** Not said how far off the card's plane a thing lies, its distance can be told but not how sure it is. */
function distanceOn(
  { corners, from, to, offPlaneMm, cameraMm }: RulerResult['ruler'],
  { widthPx, heightPx }: { widthPx: number; heightPx: number },
): RulerResult['distance'] {
  const onPhoto = { corners, from, to, imageWidthPx: widthPx, imageHeightPx: heightPx };
  const camera = cameraMm === undefined ? {} : { distanceToCameraMm: cameraMm };
  const found: PhotoRuler | null = photoRuler({ ...onPhoto, ...camera, offPlaneMm: offPlaneMm ?? 0 });
  if (found === null || offPlaneMm !== undefined) return found;
  return { ...found, offPlaneMm: null, uncertaintyMm: null };
}
