import { deflateSync } from 'node:zlib';
import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { pictureFacts } from '../../src/photos/picture-facts.ts';
import type { PictureFormat } from '../../src/photos/sniff-format.ts';
import { heicStub } from '../browser/photographs/broken-files.ts';
import { jpegSegment } from '../browser/photographs/camera-jpeg.ts';
import { exifBlock } from '../browser/photographs/exif-block.ts';
import { FRAME, jpegOf, SCAN, TABLES } from './hand-built-jpeg.ts';

const EXIF = exifBlock({ littleEndian: false, orientation: 6, timeTaken: '2024:05:03 10:11:12', gps: true });
const TAKEN_AT = '2024-05-03T10:11:12';
const u32 = (n: number) => Uint8Array.of(n >>> 24, (n >>> 16) & 255, (n >>> 8) & 255, n & 255);
const u32le = (n: number) => u32(n).reverse();
const bytesOf = (...parts: (Uint8Array | string)[]) =>
  new Uint8Array(Buffer.concat(parts.map((part) => (typeof part === 'string' ? Buffer.from(part, 'latin1') : part))));

/** Checksums are left at zero: nothing here reads them. */
const chunk = (type: string, content: Uint8Array) => bytesOf(u32(content.length), type, content, u32(0));
const IHDR = chunk('IHDR', bytesOf(u32(1200), u32(800), Uint8Array.of(8, 2, 0, 0, 0)));
const png = (...chunks: Uint8Array[]) => bytesOf('\x89PNG\r\n\x1a\n', IHDR, ...chunks);
const IDAT = chunk('IDAT', deflateSync(Buffer.alloc(100)));
const IEND = chunk('IEND', new Uint8Array(0));

const riff = (...chunks: [type: string, content: Uint8Array][]) => {
  const body = bytesOf(
    'WEBP',
    ...chunks.flatMap(([type, content]) => [type, u32le(content.length), content, new Uint8Array(content.length % 2)]),
  );
  return bytesOf('RIFF', u32le(body.length), body);
};
const vp8x = Uint8Array.of(8, 0, 0, 0, 0xaf, 0x04, 0, 0x1f, 0x03, 0);

it('a PNG of 1200 × 800 px with its end is complete, and its time is read', () => {
  expect(pictureFacts(png(chunk('eXIf', EXIF), IDAT, IEND), 'png')).toMatchObject({
    complete: true,
    sizePx: { widthPx: 1200, heightPx: 800 },
    takenAt: TAKEN_AT,
    orientation: null,
  });
});

it.each([
  ['without IEND', png(IDAT)],
  ['cut inside IDAT', png(IDAT, IEND).slice(0, -20)],
  ['of the signature alone', bytesOf('\x89PNG\r\n\x1a\n')],
])('a PNG %s is not complete', (_, bytes) => {
  expect(pictureFacts(bytes, 'png').complete).toBe(false);
});

// RFC 9649 §2.5–2.7: VP8 has 14-bit sides, VP8L packs side − 1 into 14 bits each, VP8X stores side − 1 in 24 bits.
it.each([
  ['VP8', riff(['VP8 ', Uint8Array.of(0, 0, 0, 0x9d, 1, 0x2a, 0xb0, 0x04, 0x20, 0x03, 0, 0)]), 1200, 800],
  ['VP8L', riff(['VP8L', bytesOf(Uint8Array.of(0x2f), u32le((799 << 14) | 1199), new Uint8Array(8))]), 1200, 800],
  ['VP8X', riff(['VP8X', vp8x], ['VP8 ', new Uint8Array(20)]), 1200, 800],
])('a WebP of kind %s is 1200 × 800 px', (_, bytes, widthPx, heightPx) => {
  expect(pictureFacts(bytes, 'webp')).toMatchObject({ complete: true, sizePx: { widthPx, heightPx } });
});

it('a WebP gives its time, with and without the prefix that some writers put before it', () => {
  for (const content of [EXIF, bytesOf('Exif\0\0', EXIF)]) {
    const bytes = riff(['VP8X', vp8x], ['VP8 ', new Uint8Array(21)], ['EXIF', content]);
    expect(pictureFacts(bytes, 'webp').takenAt).toBe(TAKEN_AT);
    expect(pictureFacts(bytes.slice(0, -1), 'webp').complete).toBe(false);
  }
});

it('a GIF of 1200 × 800 px says so', () => {
  const bytes = bytesOf('GIF89a', Uint8Array.of(0xb0, 0x04, 0x20, 0x03, 0, 0, 0));
  expect(pictureFacts(bytes, 'gif')).toMatchObject({ complete: true, sizePx: { widthPx: 1200, heightPx: 800 } });
});

it('an HEIC of 4032 × 3024 px with a tile of 512 × 512 px is 4032 × 3024, and its time is found behind it', () => {
  const tile = bytesOf(u32(20), 'ispe', u32(0), u32(512), u32(512));
  const bytes = bytesOf(heicStub(), tile, u32(6), 'Exif\0\0', EXIF);
  expect(pictureFacts(bytes, 'heic')).toMatchObject({
    sizePx: { widthPx: 4032, heightPx: 3024 },
    takenAt: TAKEN_AT,
    everyBrowserReadsIt: false,
  });
});

it('a JPEG gives orientation 6 and time from the first Exif block, not from XMP before or a second block after', () => {
  const app1 = (prefix: string, content: Uint8Array) => jpegSegment(0xe1, bytesOf(prefix, content));
  const second = exifBlock({ littleEndian: true, orientation: 3 });
  const bytes = jpegOf(
    app1('http://ns.adobe.com/xap/1.0/\0', EXIF),
    app1('Exif\0\0', EXIF),
    app1('Exif\0\0', second),
    TABLES,
    FRAME,
    SCAN,
  );
  expect(pictureFacts(bytes, 'jpeg')).toMatchObject({
    complete: true,
    sizePx: { widthPx: 640, heightPx: 480 },
    orientation: 6,
    takenAt: TAKEN_AT,
    everyBrowserReadsIt: true,
  });
});

it.each([
  [0xc0, true],
  [0xc2, true],
  [0xc3, false],
  [0xc9, false],
])('a JPEG of frame kind %i is read by every browser: %s', (marker, everyBrowserReadsIt) => {
  const frame = jpegSegment(marker, FRAME.subarray(4));
  expect(pictureFacts(jpegOf(TABLES, frame, SCAN), 'jpeg').everyBrowserReadsIt).toBe(everyBrowserReadsIt);
});

it('never throws on 4 000 random or damaged files of any kind', () => {
  const sound: [PictureFormat, Uint8Array][] = [
    ['jpeg', jpegOf(jpegSegment(0xe1, bytesOf('Exif\0\0', EXIF)), TABLES, FRAME, SCAN)],
    ['png', png(chunk('eXIf', EXIF), IDAT, IEND)],
    ['webp', riff(['VP8X', vp8x], ['VP8 ', new Uint8Array(21)], ['EXIF', EXIF])],
    ['gif', bytesOf('GIF89a', new Uint8Array(20))],
    ['heic', bytesOf(heicStub().subarray(0, 160), 'Exif\0\0', EXIF)],
  ];
  const hits = fc.array(fc.tuple(fc.nat(400), fc.nat(255)), { maxLength: 10 });
  fc.assert(
    fc.property(
      fc.constantFrom(...sound),
      hits,
      fc.nat(420),
      fc.uint8Array({ maxLength: 60 }),
      ([format, bytes], changes, length, tail) => {
        const damaged = bytesOf(bytes.slice(0, length), tail);
        for (const [at, value] of changes) if (at < damaged.length) damaged[at] = value;
        const { sizePx } = pictureFacts(damaged, format);
        if (sizePx !== null) expect(Number.isInteger(sizePx.widthPx * sizePx.heightPx)).toBe(true);
      },
    ),
    { numRuns: 4000 },
  );
});
