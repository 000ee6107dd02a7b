import { describe, expect, it } from 'vitest';
import { jpegPicture } from '../../src/schema/jpeg-picture.ts';
import { genuinePhoto } from '../browser/photographs/genuine-photo.ts';
import { FRAME, jpegOf, SCAN, SOI, TABLES } from '../photos/hand-built-jpeg.ts';

// Markers and header lengths: ITU-T T.81, B.1.1.3, B.2.2 and B.2.3. FRAME says 640 × 480, one component.

const limits = { sidePx: 20_000, pixels: 200e6 };
const problemOf = (bytes: Uint8Array) => {
  const picture = jpegPicture(bytes, limits);
  return picture.ok ? null : picture.problem;
};
const text = (words: string) => new TextEncoder().encode(words);

/** FRAME with another size. */
function frameOf(widthPx: number, heightPx: number): Uint8Array {
  const frame = Uint8Array.from(FRAME);
  new DataView(frame.buffer).setUint16(5, heightPx);
  new DataView(frame.buffer).setUint16(7, widthPx);
  return frame;
}

it('reads 640 × 480 px of a hand-built picture and 807 × 1024 px of a genuine photograph', () => {
  expect(jpegPicture(jpegOf(TABLES, FRAME, SCAN), limits)).toMatchObject({ ok: true, widthPx: 640, heightPx: 480 });
  expect(jpegPicture(genuinePhoto(), limits)).toMatchObject({ ok: true, widthPx: 807, heightPx: 1024 });
});

it('takes a photograph that breaks off in its scan: what is there can be seen', () => {
  const whole = genuinePhoto();
  expect(problemOf(whole.subarray(0, Math.floor(whole.length * 0.8)))).toBeNull();
});

it('refuses 30 000 × 30 000 px, 20 001 px a side and one pixel over the area, and takes what just fits', () => {
  const sized = (widthPx: number, heightPx: number) => problemOf(jpegOf(TABLES, frameOf(widthPx, heightPx), SCAN));
  expect(sized(30_000, 30_000)).toBe('tooLarge');
  expect(sized(20_001, 1)).toBe('tooLarge');
  expect(sized(1, 20_001)).toBe('tooLarge');
  expect(sized(20_000, 10_000)).toBeNull();
  expect(sized(20_000, 10_001)).toBe('tooLarge');
});

describe('no JPEG picture', () => {
  const longFrame = Uint8Array.from([...FRAME, 0]);
  new DataView(longFrame.buffer).setUint16(2, 12);
  const longScan = Uint8Array.from(SCAN);
  new DataView(longScan.buffer).setUint16(2, 7);
  it.each<[string, Uint8Array]>([
    ['nothing', new Uint8Array()],
    ['SVG with script', text('<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>')],
    ['HTML', text('<!doctype html><script>alert(1)</script>')],
    ['PNG', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)],
    ['GIF', text('GIF89a')],
    ['HTML behind the first bytes of a JPEG', Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, ...text('<html><script>')])],
    ['HTML in a comment, and nothing else', jpegOf(Uint8Array.from([0xff, 0xfe, 0, 8, ...text('<html>')]))],
    ['the first three bytes', Uint8Array.of(0xff, 0xd8, 0xff)],
    ['start and end', jpegOf()],
    ['without frame', jpegOf(TABLES, SCAN)],
    ['without scan', jpegOf(TABLES, FRAME)],
    ['frame behind the scan', jpegOf(TABLES, SCAN, FRAME)],
    ['cut before its scan', Buffer.concat([SOI, TABLES, FRAME])],
    ['width 0', jpegOf(TABLES, frameOf(0, 480), SCAN)],
    ['height 0', jpegOf(TABLES, frameOf(640, 0), SCAN)],
    ['a frame header of a byte too many', jpegOf(TABLES, longFrame, SCAN)],
    ['a scan header of another length', jpegOf(TABLES, FRAME, longScan)],
  ])('%s', (_, bytes) => {
    expect(problemOf(bytes)).toBe('notJpeg');
  });
});
