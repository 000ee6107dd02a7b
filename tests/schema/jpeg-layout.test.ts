import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jpegLayout } from '../../src/schema/jpeg-layout.ts';
import { cameraJpeg, jpegSegment } from '../browser/photographs/camera-jpeg.ts';
import { genuinePhoto } from '../browser/photographs/genuine-photo.ts';
import { EOI, FRAME, jpegOf, SCAN, SOI, TABLES } from '../photos/hand-built-jpeg.ts';

// Expected values: marker codes and segment layout of ISO/IEC 10918-1 Annex B.

it('names each segment of a hand-built file with its first and last byte', () => {
  const bytes = jpegOf(TABLES, FRAME, SCAN);
  const starts = [2, 2 + 69, 2 + 69 + 13];
  expect(jpegLayout(bytes)).toEqual({
    complete: true,
    end: bytes.length,
    frame: { marker: 0xc0, widthPx: 640, heightPx: 480 },
    segments: [
      { marker: 0xdb, start: starts[0], end: starts[1] },
      { marker: 0xc0, start: starts[1], end: starts[2] },
      { marker: 0xda, start: starts[2], end: bytes.length - 2 },
    ],
  });
});

it('finds 807 × 1024 px and 11 segments in a genuine photograph', () => {
  const layout = jpegLayout(genuinePhoto());
  expect(layout).toMatchObject({ complete: true, end: 171_368, frame: { marker: 0xc0, widthPx: 807, heightPx: 1024 } });
  expect(layout.segments).toHaveLength(11);
});

it('ends a picture at its end marker, 30 bytes before the end of a file with a film behind it', () => {
  const bytes = Buffer.concat([jpegOf(TABLES, FRAME, SCAN), Buffer.alloc(30, 0x41)]);
  expect(jpegLayout(bytes)).toMatchObject({ complete: true, end: bytes.length - 30 });
});

it('keeps scans of a progressive file apart, and what stands between them: 6 segments', () => {
  const comment = jpegSegment(0xfe, Buffer.from('between'));
  const layout = jpegLayout(jpegOf(TABLES, FRAME, SCAN, comment, SCAN, SCAN));
  expect(layout.segments.map(({ marker }) => marker)).toEqual([0xdb, 0xc0, 0xda, 0xfe, 0xda, 0xda]);
  expect(layout.complete).toBe(true);
});

it('is not misled by an end marker inside a preview in APP1', () => {
  const preview = jpegSegment(0xe1, jpegOf(TABLES, FRAME, SCAN));
  expect(jpegLayout(jpegOf(preview, TABLES, FRAME, SCAN))).toMatchObject({ complete: true });
  const cut = Buffer.concat([SOI, preview, TABLES, FRAME, SCAN]);
  expect(jpegLayout(cut).complete).toBe(false);
});

it('passes over fill and stray bytes between segments, as decoders do', () => {
  const layout = jpegLayout(jpegOf(Uint8Array.of(0xff, 0xff, 0xff), TABLES, Uint8Array.of(0x00, 0x20), FRAME, SCAN));
  expect(layout.segments.map(({ marker }) => marker)).toEqual([0xdb, 0xc0, 0xda]);
  expect(layout.complete).toBe(true);
});

describe('not complete', () => {
  it.each([
    ['without end marker', Buffer.concat([SOI, TABLES, FRAME, SCAN])],
    ['filled up with zeros', Buffer.concat([SOI, TABLES, FRAME, SCAN, Buffer.alloc(5000)])],
    ['without scan', jpegOf(TABLES, FRAME)],
    ['without frame', jpegOf(TABLES, SCAN)],
    [
      'with a second picture begun inside the scan',
      Buffer.concat([SOI, TABLES, FRAME, SCAN, SOI, TABLES, Buffer.alloc(70_000), EOI]),
    ],
    ['with a reserved code inside the scan', jpegOf(TABLES, FRAME, SCAN, Uint8Array.of(0xff, 0x4f, 0, 4, 1, 1))],
    [
      'with a segment longer than the file',
      Buffer.concat([SOI, TABLES, FRAME, SCAN, Uint8Array.of(0xff, 0xe1, 0xff, 0xff), EOI]),
    ],
    ['with a segment of length 1', Buffer.concat([SOI, Uint8Array.of(0xff, 0xe1, 0, 1), TABLES, FRAME, SCAN, EOI])],
    ['of two bytes', SOI],
    ['that breaks off in a marker', Uint8Array.of(0xff, 0xd8, 0xff)],
  ])('is a file %s', (_, bytes) => {
    expect(jpegLayout(bytes).complete).toBe(false);
  });

  it('is a 12 megapixel photograph cut at any of 200 places', () => {
    const whole = cameraJpeg({ megapixels: 12, orientation: 1, gps: false, takenAt: '2024-05-03T10:11:12+02:00' });
    for (let i = 0; i < 200; i++) {
      const length = 2 + Math.floor(((whole.length - 3) * i) / 199);
      expect(jpegLayout(whole.subarray(0, length)).complete, `cut at ${length}`).toBe(false);
    }
    expect(jpegLayout(whole).complete).toBe(true);
  });
});

it('never throws and stays inside the file on 5 000 random ones', () => {
  // Mostly marker bytes, so that segments do come about.
  const byte = fc.oneof(
    fc.constant(0xff),
    fc.constantFrom(0xc0, 0xd8, 0xd9, 0xda, 0xdb, 0xe1, 0xfe, 0x00, 0xd0),
    fc.nat(12),
    fc.nat(255),
  );
  fc.assert(
    fc.property(fc.array(byte, { maxLength: 120 }), (rest) => {
      const bytes = Uint8Array.from([0xff, 0xd8, ...rest]);
      const { segments, end } = jpegLayout(bytes);
      let last = 2;
      for (const segment of segments) {
        expect(segment.start).toBeGreaterThanOrEqual(last);
        expect(segment.end).toBeGreaterThanOrEqual(segment.start + 4);
        last = segment.end;
      }
      expect(last).toBeLessThanOrEqual(bytes.length);
      expect(end).toBeLessThanOrEqual(bytes.length);
    }),
    { numRuns: 5000 },
  );
});
