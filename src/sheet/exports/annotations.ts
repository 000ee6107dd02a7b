import { type WebAnnotation, webAnnotationOf } from '../../record/web-annotation.ts';
import { exportWords } from '../../text/exports.ts';
import { disclosureOf } from '../model/disclosure.ts';
import { type SheetContext, type SheetInput, sheetContext } from '../model/sheet-context.ts';
import { packName } from '../model/sheet-head.ts';
import { photoFileName } from './photo-file-name.ts';

/** Terms of ours, told to JSON-LD readers: the callout as opaque JSON, the disclosure as plain text. */
const CONTEXT = [
  'http://www.w3.org/ns/anno.jsonld',
  {
    callout: { '@id': 'urn:underlid:callout', '@type': '@json' },
    disclosure: 'urn:underlid:disclosure',
  },
] as const;

export interface AnnotationPage {
  '@context': typeof CONTEXT;
  id: string;
  type: 'AnnotationPage';
  partOf: { id: string; type: 'AnnotationCollection'; label: string; total: number };
  startIndex: 0;
  disclosure: string;
  items: Omit<WebAnnotation, '@context'>[];
}

/** A photo that goes along, and the name it has in the folder `photos`. */
export interface ExportedPhoto {
  photoId: string;
  fileName: string;
}

/** Every photo of the record with the name under which it is exported. */
export function exportedPhotos(input: SheetInput): ExportedPhoto[] {
  const { photos } = sheetContext(input);
  return photos.map(({ photoId, number }) => ({ photoId, fileName: photoFileName(number, photos.length) }));
}

/**
 * All callouts of a pack on one page of annotations, in the order of the photos. Cover-ups are left out: they are burnt
 * into the pictures that go along. `photos` are those that do; the callouts of any other are left out too. A callout
 * without words of its own says what it shows.
 *
 * Source  W3C Recommendation "Web Annotation Data Model" (2017), sections 5.1 and 5.2. Its `rights` (section 3.3.2) must
 *         be an address, so the disclosure is a term of ours.
 * Check   tests/sheet/exports/annotations.test.ts
 */
export function annotationPage(input: SheetInput, photos: readonly ExportedPhoto[]): AnnotationPage {
  const context = sheetContext(input);
  const fileNames = new Map(photos.map(({ photoId, fileName }) => [photoId, fileName]));
  const items = context.photos.flatMap(({ photoId, widthPx, heightPx, callouts }) => {
    const fileName = fileNames.get(photoId);
    if (fileName === undefined) return [];
    const picture = { source: `photos/${fileName}`, widthPx, heightPx };
    return callouts
      .filter(({ kind }) => kind !== 'cover')
      .map((callout) => {
        const { '@context': _, ...annotation } = webAnnotationOf(callout, picture);
        const value = callout.text?.trim() || itemShown(callout.itemId, context);
        return { ...annotation, body: { ...annotation.body, value } };
      });
  });
  const { packId } = context.record;
  return {
    '@context': CONTEXT,
    id: `urn:underlid:annotations:${packId}`,
    type: 'AnnotationPage',
    partOf: {
      id: `urn:underlid:callouts:${packId}`,
      type: 'AnnotationCollection',
      label: exportWords.callouts(packName(context)),
      total: items.length,
    },
    startIndex: 0,
    disclosure: disclosureOf(context.record).line,
    items,
  };
}

function itemShown(itemId: string | undefined, { definition, grading }: SheetContext): string {
  const item = definition.items.find(({ id }) => id === itemId);
  if (item === undefined) return '';
  return exportWords.shows(item.title, grading.items.find((result) => result.itemId === item.id)?.grade ?? null);
}
