import type { PackRecord, RecordPhoto } from '../../record/pack-record.ts';
import type { Checklist } from '../../schema/checklist.ts';
import { formatTakenAt } from '../../text/format-day.ts';
import { listOf, sheetWords } from '../../text/sheet.ts';
import { PHOTO_PLACES } from '../../text/sheet-record.ts';
import type { SheetPhoto } from './sheet.ts';

/** Every photo of a record with its number, in the order in which they were made, and the legend of its callouts. */
export function numberPhotos(record: PackRecord, definition: Checklist): SheetPhoto[] {
  const titles = new Map(definition.items.map((item) => [item.id, item.title]));
  const zones = new Map(definition.zones.map((zone) => [zone.id, zone.title]));
  return record.photos.map((photo, place) => {
    const zone = zones.get(photo.zone) ?? PHOTO_PLACES[photo.zone] ?? photo.zone;
    const when = photo.takenAt === undefined ? null : formatTakenAt(photo.takenAt);
    return {
      photoId: photo.id,
      number: place + 1,
      widthPx: photo.widthPx,
      heightPx: photo.heightPx,
      title: sheetWords.photo.title(place + 1, zone, when),
      caption: captionOf(photo, titles),
      callouts: photo.callouts,
      legend: legendOf(photo, titles),
    };
  });
}

function captionOf(photo: RecordPhoto, titles: ReadonlyMap<string, string>): string | null {
  const items = photo.itemIds.flatMap((itemId) => titles.get(itemId) ?? []);
  const parts = [photo.caption ?? [], items.length === 0 ? [] : sheetWords.photo.shows(listOf(items))].flat();
  return parts.length === 0 ? null : parts.join(' · ');
}

function legendOf(photo: RecordPhoto, titles: ReadonlyMap<string, string>): SheetPhoto['legend'] {
  return photo.callouts
    .flatMap((callout) => {
      if (callout.number === null) return [];
      const item = callout.itemId === undefined ? undefined : titles.get(callout.itemId);
      const words = callout.text?.trim();
      return [{ number: callout.number, text: words || item || sheetWords.photo.unnamedLeader }];
    })
    .sort((a, b) => a.number - b.number);
}
