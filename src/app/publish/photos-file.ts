import { stampMs } from '../../record/stamp-ms.ts';
import { annotatedPhotosZip, type ZippedPhoto } from '../../sheet/exports/annotated-photos.ts';
import { annotationPage, exportedPhotos } from '../../sheet/exports/annotations.ts';
import { numberPhotos } from '../../sheet/model/number-photos.ts';
import type { SheetInput } from '../../sheet/model/sheet-context.ts';
import { photoForExport } from '../photos/photo-for-export.ts';

/** The photos that may leave the phone, cover-ups burnt in, with their callouts; and how many had to stay. */
export async function photosFile(input: SheetInput, fileName: string): Promise<{ file: File; missingCount: number }> {
  const { record, definition } = input;
  const shown = numberPhotos(record, definition);
  const wanted = exportedPhotos(input);
  const photos: (ZippedPhoto & { photoId: string })[] = [];
  for (const one of wanted) {
    const bytes = await photoForExport(shown.find(({ photoId }) => photoId === one.photoId));
    if (bytes !== null) photos.push({ ...one, bytes: bytes.bytes });
  }
  const atMs = record.sheetAt === null ? 0 : stampMs(record.sheetAt);
  const zip = annotatedPhotosZip({ page: annotationPage(input, photos), photos, atMs });
  return {
    file: new File([zip], fileName, { type: 'application/zip' }),
    missingCount: wanted.length - photos.length,
  };
}
