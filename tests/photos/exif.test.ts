import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readExif } from '../../src/photos/exif.ts';
import { ascii, byteOrder, directory, exifBlock, type TiffField } from '../browser/photographs/exif-block.ts';

// Expected values: the layout of TIFF 6.0 §2 and the tags of CIPA DC-008-2023, built by hand in exif-block.ts.
const NOTHING = { orientation: null, takenAt: null };
const TIME = '2024:05:03 10:11:12';

describe.each([
  ['little-endian', true],
  ['big-endian', false],
])('a %s block', (_, littleEndian) => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])('with orientation %i and 2024-05-03 10:11:12 +02:00 gives both', (orientation) => {
    const block = exifBlock({ littleEndian, orientation, timeTaken: TIME, offsetTaken: '+02:00', gps: true });
    expect(readExif(block)).toEqual({ orientation, takenAt: '2024-05-03T10:11:12+02:00' });
  });

  it('at an odd place inside a larger buffer reads the same', () => {
    const block = exifBlock({ littleEndian, orientation: 6, timeTaken: TIME });
    const around = new Uint8Array(block.length + 20).fill(0xff);
    around.set(block, 7);
    expect(readExif(around.subarray(7, 7 + block.length))).toEqual({ orientation: 6, takenAt: '2024-05-03T10:11:12' });
  });

  it.each([0, 9, 255, 65_535])('with orientation %i, which does not exist, gives null', (orientation) => {
    expect(readExif(exifBlock({ littleEndian, orientation })).orientation).toBeNull();
  });
});

it.each([
  ['zeros, as a camera without a clock writes', '0000:00:00 00:00:00', null],
  ['blanks', '    :  :     :  :  ', null],
  ['month 13', '2024:13:03 10:11:12', null],
  ['day 31 of April', '2024:04:31 10:11:12', null],
  ['day 29 of February 2023', '2023:02:29 10:11:12', null],
  ['day 29 of February 2024', '2024:02:29 10:11:12', '2024-02-29T10:11:12'],
  ['hour 24', '2024:05:03 24:00:00', null],
  ['dashes in the date', '2024-05-03 10:11:12', '2024-05-03T10:11:12'],
  ['words', 'yesterday afternoon', null],
])('a time taken of %s', (_, timeTaken, takenAt) => {
  expect(readExif(exifBlock({ littleEndian: true, timeTaken })).takenAt).toBe(takenAt);
});

it.each([
  ['-09:30', '-09:30'],
  ['+14:00', '+14:00'],
  ['+15:00', ''],
  ['+02:60', ''],
  ['   :  ', ''],
  ['Z', ''],
])('an offset of "%s" adds "%s" to the time', (offsetTaken, added) => {
  const block = exifBlock({ littleEndian: false, timeTaken: TIME, offsetTaken });
  expect(readExif(block).takenAt).toBe(`2024-05-03T10:11:12${added}`);
});

it.each([
  ['no bytes', []],
  ['seven bytes', [0x4d, 0x4d, 0, 42, 0, 0, 0]],
  ['another mark', [0x4d, 0x49, 0, 42, 0, 0, 0, 8, 0, 0]],
  ['43 in place of 42', [0x4d, 0x4d, 0, 43, 0, 0, 0, 8, 0, 0]],
  ['a directory at 4 294 967 295', [0x4d, 0x4d, 0, 42, 255, 255, 255, 255, 0, 0]],
  ['a directory at 0, which is the header', [0x4d, 0x4d, 0, 42, 0, 0, 0, 0, 0, 0]],
  ['a directory cut off in its count', [0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0]],
  ['65 535 entries where none fits', [0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 255, 255, 1, 0x12]],
])('a block of %s gives nothing', (_, bytes) => {
  expect(readExif(Uint8Array.from(bytes))).toEqual(NOTHING);
});

const order = byteOrder(false);
const raw = (...fields: TiffField[]) =>
  Uint8Array.from([0x4d, 0x4d, 0, 42, 0, 0, 0, 8, ...directory(fields, 8, order)]);

it('65 535 stated entries are read as far as they fit: orientation 3', () => {
  const block = raw({ tag: 0x0112, type: 3, count: 1, bytes: [0, 3] });
  block.set([255, 255], 8);
  expect(readExif(block).orientation).toBe(3);
});

it.each([
  ['as LONG', { tag: 0x0112, type: 4, count: 1, bytes: [0, 0, 0, 6] }],
  ['with count 2', { tag: 0x0112, type: 3, count: 2, bytes: [0, 6, 0, 6] }],
  ['with count 4 294 967 295', { tag: 0x0112, type: 3, count: 0xffff_ffff, bytes: [0, 6] }],
])('an orientation %s is not believed', (_, field) => {
  expect(readExif(raw(field)).orientation).toBeNull();
});

it('the first of two orientations counts: 6', () => {
  const orientation = (value: number) => ({ tag: 0x0112, type: 3, count: 1, bytes: [0, value] });
  expect(readExif(raw(orientation(6), orientation(3))).orientation).toBe(6);
});

it.each([
  ['whose text lies past the end', 20, 0xffff_fff0],
  ['of 4 294 967 295 letters', 0xffff_ffff, 60],
])('a time taken %s gives null', (_, count, offset) => {
  const exifAt = 8 + 2 + 12 + 4;
  const first = directory([{ tag: 0x8769, type: 4, count: 1, bytes: order.u32(exifAt) }], 8, order);
  const exif = directory([{ ...ascii(0x9003, ''), count, bytes: order.u32(offset) }], exifAt, order);
  const text = [...Buffer.from(`${TIME}\0`.repeat(3))];
  const block = Uint8Array.from([0x4d, 0x4d, 0, 42, 0, 0, 0, 8, ...first, ...exif, ...text]);
  expect(readExif(block)).toEqual(NOTHING);
});

it('a time taken of 300 000 letters, all of them there, gives null', () => {
  const exifAt = 8 + 2 + 12 + 4;
  const first = directory([{ tag: 0x8769, type: 4, count: 1, bytes: order.u32(exifAt) }], 8, order);
  const exif = directory([{ tag: 0x9003, type: 2, count: 300_000, bytes: order.u32(exifAt + 18) }], exifAt, order);
  const head = Uint8Array.from([0x4d, 0x4d, 0, 42, 0, 0, 0, 8, ...first, ...exif]);
  expect(readExif(Buffer.concat([head, Buffer.from(TIME), Buffer.alloc(300_000)]))).toEqual(NOTHING);
});

it('an Exif directory that points at the first one does not loop', () => {
  const block = raw({ tag: 0x8769, type: 4, count: 1, bytes: order.u32(8) });
  expect(readExif(block)).toEqual(NOTHING);
});

it('never throws, and never answers outside 1–8, on 2 000 random blocks and 2 000 damaged ones', () => {
  const sound = exifBlock({ littleEndian: true, orientation: 6, timeTaken: TIME, offsetTaken: '+02:00', gps: true });
  const check = (block: Uint8Array) => {
    const { orientation } = readExif(block);
    expect(orientation === null || (orientation >= 1 && orientation <= 8)).toBe(true);
  };
  const marked = fc
    .uint8Array({ maxLength: 300 })
    .map((bytes) => Uint8Array.from([0x49, 0x49, 42, 0, 8, 0, 0, 0, ...bytes]));
  fc.assert(fc.property(fc.oneof(fc.uint8Array({ maxLength: 300 }), marked), check), { numRuns: 2000 });
  const hit = fc.tuple(fc.nat(sound.length - 1), fc.nat(255));
  fc.assert(
    fc.property(fc.array(hit, { minLength: 1, maxLength: 12 }), fc.nat(sound.length), (hits, length) => {
      const block = sound.slice(0, length);
      for (const [at, value] of hits) if (at < length) block[at] = value;
      check(block);
    }),
    { numRuns: 2000 },
  );
});
