import type { Grading, ItemResult } from '../../grading/grading.ts';
import type { PackRecord } from '../../record/pack-record.ts';
import { stampMs } from '../../record/stamp-ms.ts';
import type { Checklist, Hazard, Item, Zone } from '../../schema/checklist.ts';
import { formatDay, localDay } from '../../text/format-day.ts';
import type { UnitChoice } from '../../units/unit-choice.ts';
import { numberPhotos } from './number-photos.ts';
import type { SheetPhoto } from './sheet.ts';
import { type ShownPoints, shownPoints } from './shown-points.ts';
import type { Since } from './since-blocks.ts';

export interface SheetInput {
  definition: Checklist;
  definitionSha256: string;
  record: PackRecord;
  grading: Grading;
  /** The score by the checklist it was carried over from; null if it never was, or if that is not on this phone. */
  earlier?: { definition: Checklist; grading: Grading } | null;
  /** The earlier pack this one was begun from, and what changed since; null if there is none. No part of the sealed figures. */
  since?: Since | null;
  /** Entries that have come in since it was closed, from another phone or a backup; 0 or absent: none. */
  sinceClosing?: number;
  /**
   * SHA-256 of the closing whose sheet this is. The record is then folded from what was sealed, but has the closings,
   * reopenings, attachments and `sheet` of the present record.
   */
  shownRevision?: string;
  /** Lines that this version of the app works out otherwise than they are sealed; 0 or absent: none. */
  otherLines?: number;
  appVersion: string;
  units: UnitChoice;
  locale: 'en';
  /** Minutes that local time is ahead of UTC where the sheet is made. */
  utcOffsetMinutes: number;
}

/** The input with its look-ups made once. */
export interface SheetContext extends SheetInput {
  /** Day of the newest entry that the sheet is made of, in words; null of an empty record. */
  day: string | null;
  newestMs: number | null;
  photos: SheetPhoto[];
  /** The ledger's points as shown; null where the score is withheld. */
  points: ShownPoints | null;
  itemOf(itemId: string): Item;
  zoneOf(zoneId: string): Zone;
  hazardOf(hazardId: string): Hazard;
  resultOf(itemId: string): ItemResult;
  /** Photos linked to an item, in number order. */
  photosOf(itemId: string): SheetPhoto[];
}

/** Throws RangeError where grading and definition do not belong together: that is a fault of the caller. */
export function sheetContext(input: SheetInput): SheetContext {
  const { definition, grading, record, utcOffsetMinutes } = input;
  const newestMs = record.sheetAt === null ? null : stampMs(record.sheetAt);
  const photos = numberPhotos(record, definition);
  const photosByItem = new Map<string, SheetPhoto[]>();
  for (const [place, photo] of record.photos.entries()) {
    const shown = photos[place];
    if (shown === undefined) continue;
    for (const itemId of photo.itemIds) photosByItem.set(itemId, [...(photosByItem.get(itemId) ?? []), shown]);
  }
  return {
    ...input,
    newestMs,
    day: newestMs === null ? null : formatDay(localDay(newestMs, utcOffsetMinutes)),
    photos,
    points: shownPoints(grading),
    itemOf: finder('item', definition.items, (item) => item.id),
    zoneOf: finder('zone', definition.zones, (zone) => zone.id),
    hazardOf: finder('hazard', definition.hazards, (hazard) => hazard.id),
    resultOf: finder('result of item', grading.items, (result) => result.itemId),
    photosOf: (itemId) => photosByItem.get(itemId) ?? [],
  };
}

function finder<T>(what: string, all: readonly T[], idOf: (one: T) => string): (id: string) => T {
  const byId = new Map(all.map((one) => [idOf(one), one]));
  return (id) => {
    const found = byId.get(id);
    if (found === undefined) throw new RangeError(`makeSheet: ${what} must be in definition and grading, got ${id}`);
    return found;
  };
}
