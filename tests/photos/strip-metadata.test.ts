import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pictureFacts } from '../../src/photos/picture-facts.ts';
import { type KeptMetadata, stripMetadata } from '../../src/photos/strip-metadata.ts';
import { jpegLayout } from '../../src/schema/jpeg-layout.ts';
import { cameraJpeg, holdsPosition, jpegSegment, PLACE_TEXT } from '../browser/photographs/camera-jpeg.ts';
import { exifBlock } from '../browser/photographs/exif-block.ts';
import { FRAME, jpegOf, SCAN, TABLES } from './hand-built-jpeg.ts';

const BARE: KeptMetadata = { colourProfile: false, orientation: null };
const strip = (bytes: Uint8Array, kept: KeptMetadata) => stripMetadata(bytes, jpegLayout(bytes), kept);
const segment = (marker: number, prefix: string, rest: Uint8Array = Buffer.from(PLACE_TEXT)) =>
  jpegSegment(marker, Buffer.concat([Buffer.from(prefix, 'latin1'), rest]));

const PROFILE = segment(0xe2, 'ICC_PROFILE\0', Uint8Array.of(1, 1, 9, 9, 9));
const ADOBE = segment(0xee, 'Adobe', Uint8Array.of(0, 100, 0, 0, 0, 0, 1));
const JFIF = segment(0xe0, 'JFIF\0', Uint8Array.of(1, 2, 1, 0, 72, 0, 72, 0, 0));
const EXIF = segment(0xe1, 'Exif\0\0', exifBlock({ littleEndian: true, orientation: 6, gps: true }));

describe('a file with a position everywhere', () => {
  const camera = cameraJpeg({ megapixels: 12, orientation: 8, gps: true, takenAt: '2024-05-03T10:11:12+02:00' });

  it('holds it before and not after', () => {
    expect(holdsPosition(camera)).toBe(true);
    expect(holdsPosition(strip(camera, BARE))).toBe(false);
    expect(holdsPosition(strip(camera, { colourProfile: true, orientation: 8 }))).toBe(false);
  });

  it('keeps orientation 8 where asked to, and no time', () => {
    expect(pictureFacts(strip(camera, { colourProfile: true, orientation: 8 }), 'jpeg')).toMatchObject({
      complete: true,
      sizePx: { widthPx: 4032, heightPx: 3024 },
      orientation: 8,
      takenAt: null,
    });
    expect(pictureFacts(strip(camera, BARE), 'jpeg').orientation).toBeNull();
  });
});

it('leaves exactly tables, frame and scan, byte for byte', () => {
  const thumbnail = segment(0xe0, 'JFXX\0');
  const dirty = jpegOf(
    EXIF,
    thumbnail,
    PROFILE,
    TABLES,
    segment(0xed, 'Photoshop 3.0\0'),
    FRAME,
    segment(0xfe, ''),
    SCAN,
    segment(0xe5, ''),
    SCAN,
  );
  const tail = Buffer.from(`after the picture ${PLACE_TEXT}`);
  expect(strip(Buffer.concat([dirty, tail]), BARE)).toEqual(jpegOf(TABLES, FRAME, SCAN, SCAN));
});

it('keeps the colour profile where asked to, but no other APP2', () => {
  const dirty = jpegOf(segment(0xe2, 'MPF\0'), PROFILE, TABLES, FRAME, SCAN);
  expect(strip(dirty, { colourProfile: true, orientation: null })).toEqual(jpegOf(PROFILE, TABLES, FRAME, SCAN));
});

it("keeps 14 bytes of Adobe's segment and drops what was added to it", () => {
  const longer = segment(0xee, 'Adobe', Buffer.concat([Uint8Array.of(0, 100, 0, 0, 0, 0, 1), Buffer.from(PLACE_TEXT)]));
  expect(strip(jpegOf(longer, TABLES, FRAME, SCAN), BARE)).toEqual(jpegOf(ADOBE, TABLES, FRAME, SCAN));
  expect(strip(jpegOf(segment(0xee, 'Adobf'), TABLES, FRAME, SCAN), BARE)).toEqual(jpegOf(TABLES, FRAME, SCAN));
});

it('keeps a JFIF header of 16 bytes without its preview, in front of a new Exif block of one entry', () => {
  const withPreview = segment(
    0xe0,
    'JFIF\0',
    Buffer.concat([Uint8Array.of(1, 2, 1, 0, 72, 0, 72, 3, 2), Buffer.alloc(18, 0x41)]),
  );
  const tiff = [0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0, 0, 0, 0, 0];
  const orientationOnly = segment(0xe1, 'Exif\0\0', Uint8Array.from(tiff));
  const stripped = strip(jpegOf(withPreview, EXIF, TABLES, FRAME, SCAN), { colourProfile: true, orientation: 6 });
  expect(stripped).toEqual(jpegOf(JFIF, orientationOnly, TABLES, FRAME, SCAN));
});

it('refuses a file that breaks off', () => {
  expect(() => strip(jpegOf(TABLES, FRAME, SCAN).slice(0, -2), BARE)).toThrow(/stripMetadata: needs a complete JPEG/);
});

it('stripping twice changes nothing the second time', () => {
  const once = strip(jpegOf(JFIF, EXIF, PROFILE, ADOBE, TABLES, FRAME, SCAN), { colourProfile: true, orientation: 6 });
  expect(strip(once, { colourProfile: true, orientation: 6 })).toEqual(once);
});

it('lets no secret through and touches no picture byte, for any metadata in any place (1 000 files)', () => {
  const secret = Buffer.from('SECRET-PLACE');
  const prefix = fc.constantFrom(
    'Exif\0\0',
    'JFIF\0',
    'JFXX\0',
    'MPF\0',
    'Photoshop 3.0\0',
    'Adobe',
    'http://ns.adobe.com/xap/1.0/\0',
    '',
  );
  const metadata = fc
    .tuple(
      fc.constantFrom(0xe0, 0xe1, 0xe2, 0xe3, 0xeb, 0xed, 0xee, 0xef, 0xf0, 0xfd, 0xfe),
      prefix,
      fc.uint8Array({ minLength: 14, maxLength: 40 }),
    )
    .map(([marker, start, filling]) => segment(marker, start, Buffer.concat([filling, secret])));
  const block = fc.array(metadata, { maxLength: 3 });
  const kept = fc.record({ colourProfile: fc.boolean(), orientation: fc.constantFrom(null, 1, 6 as const) });
  fc.assert(
    fc.property(
      fc.tuple(block, block, block, block),
      fc.uint8Array({ maxLength: 50 }),
      kept,
      ([a, b, c, d], tail, options) => {
        const dirty = jpegOf(...a, TABLES, ...b, FRAME, ...c, SCAN, ...d, SCAN);
        const clean = Buffer.from(strip(Buffer.concat([dirty, tail, secret]), options));
        expect(clean.includes(secret)).toBe(false);
        const picture = jpegLayout(clean).segments.filter(({ marker }) => marker < 0xe0);
        expect(Buffer.concat(picture.map(({ start, end }) => clean.subarray(start, end)))).toEqual(
          Buffer.concat([TABLES, FRAME, SCAN, SCAN]),
        );
      },
    ),
    { numRuns: 1000 },
  );
});
