import { isOrientation, type Orientation } from './orientation.ts';
import { textAt } from './sniff-format.ts';

/** The two things a photo's Exif block is asked for. The position in it is never read. */
export interface ExifFacts {
  orientation: Orientation | null;
  /** Local time the picture was taken, ISO 8601, with its offset where the camera gave one. */
  takenAt: string | null;
}

/**
 * Reads orientation and time taken from an Exif block, which is a small TIFF file.
 *
 * Shape   the block from its byte-order mark on; nothing is trusted, every offset and count is checked.
 * Throws  nothing: what is out of range, of another type or no date is null.
 * Source  CIPA DC-008-2023 (Exif 3.0), tags 0x0112, 0x8769, 0x9003, 0x9011; TIFF 6.0 §2
 * Check   tests/photos/exif.test.ts
 */
export function readExif(block: Uint8Array): ExifFacts {
  const tiff = openTiff(block);
  if (tiff === null) return { orientation: null, takenAt: null };
  const first = directoryAt(tiff, uint32(tiff, 4));
  const orientation = shortOf(tiff, first.get(TAG.orientation));
  const exif = directoryAt(tiff, longOf(tiff, first.get(TAG.exifDirectory)));
  const time = isoTime(textOf(tiff, exif.get(TAG.timeTaken)));
  return {
    orientation: isOrientation(orientation) ? orientation : null,
    takenAt: time === null ? null : time + isoOffset(textOf(tiff, exif.get(TAG.offsetTaken))),
  };
}

const TAG = { orientation: 0x0112, exifDirectory: 0x8769, timeTaken: 0x9003, offsetTaken: 0x9011 } as const;
const TYPE = { ascii: 2, short: 3, long: 4 } as const;
const ENTRY_BYTES = 12;
/** No field asked for is longer than a date of 20 bytes; a longer one is not what it says. */
const LONGEST_TEXT_BYTES = 64;

interface Tiff {
  view: DataView;
  littleEndian: boolean;
}

/** One directory entry: type, count, and where its four value bytes lie. */
interface Entry {
  type: number;
  count: number;
  valueAt: number;
}

function openTiff(block: Uint8Array): Tiff | null {
  if (block.length < 8) return null;
  const mark = textAt(block, 0, 2);
  if (mark !== 'II' && mark !== 'MM') return null;
  const tiff = { view: new DataView(block.buffer, block.byteOffset, block.byteLength), littleEndian: mark === 'II' };
  return uint16(tiff, 2) === 42 ? tiff : null;
}

/** Entries by tag, as many as truly fit; the first of a repeated tag counts. */
function directoryAt(tiff: Tiff, offset: number): Map<number, Entry> {
  const entries = new Map<number, Entry>();
  if (offset < 8 || offset + 2 > tiff.view.byteLength) return entries;
  const fit = Math.floor((tiff.view.byteLength - offset - 2) / ENTRY_BYTES);
  const count = Math.min(uint16(tiff, offset), fit);
  for (let i = 0; i < count; i++) {
    const at = offset + 2 + i * ENTRY_BYTES;
    const tag = uint16(tiff, at);
    if (!entries.has(tag)) {
      entries.set(tag, { type: uint16(tiff, at + 2), count: uint32(tiff, at + 4), valueAt: at + 8 });
    }
  }
  return entries;
}

function shortOf(tiff: Tiff, entry: Entry | undefined): number {
  return entry?.type === TYPE.short && entry.count === 1 ? uint16(tiff, entry.valueAt) : 0;
}

function longOf(tiff: Tiff, entry: Entry | undefined): number {
  return entry?.type === TYPE.long && entry.count === 1 ? uint32(tiff, entry.valueAt) : 0;
}

function textOf(tiff: Tiff, entry: Entry | undefined): string {
  if (entry?.type !== TYPE.ascii || entry.count > LONGEST_TEXT_BYTES) return '';
  // Up to four bytes stand in the entry itself.
  const start = entry.count <= 4 ? entry.valueAt : uint32(tiff, entry.valueAt);
  if (start + entry.count > tiff.view.byteLength) return '';
  const bytes = new Uint8Array(tiff.view.buffer, tiff.view.byteOffset + start, entry.count);
  return textAt(bytes, 0, bytes.length).split('\0')[0] ?? '';
}

/** `YYYY:MM:DD hh:mm:ss` to ISO 8601; blanks and zeros, which cameras write for "not set", are no time. */
function isoTime(text: string): string | null {
  const found = /^(\d{4})[:-](\d\d)[:-](\d\d) (\d\d):(\d\d):(\d\d)$/.exec(text.trim());
  if (found === null) return null;
  const [year, month, day, hour, minute, second] = found.slice(1).map(Number) as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const isDay =
    year >= 1 && month >= 1 && month <= 12 && day >= 1 && day <= new Date(Date.UTC(year, month, 0)).getUTCDate();
  if (!isDay || hour > 23 || minute > 59 || second > 59) return null;
  return `${found[1]}-${found[2]}-${found[3]}T${found[4]}:${found[5]}:${found[6]}`;
}

/** `±hh:mm`; no place on Earth is further than 14 h from UTC. */
function isoOffset(text: string): string {
  const found = /^[+-](\d\d):([0-5]\d)$/.exec(text.trim());
  return found !== null && Number(found[1]) <= 14 ? found[0] : '';
}

function uint16(tiff: Tiff, at: number): number {
  return tiff.view.getUint16(at, tiff.littleEndian);
}

function uint32(tiff: Tiff, at: number): number {
  return tiff.view.getUint32(at, tiff.littleEndian);
}
