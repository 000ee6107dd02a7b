import { jpegSegment } from '../browser/photographs/camera-jpeg.ts';

/** The parts of a JPEG as a decoder needs them, with a nonsense scan: for readers that look at markers only. */
export const TABLES = jpegSegment(0xdb, Uint8Array.from([0, ...Array<number>(64).fill(1)]));
/** 640 × 480, one component. */
export const FRAME = jpegSegment(0xc0, Uint8Array.of(8, 0x01, 0xe0, 0x02, 0x80, 1, 1, 0x11, 0));
/** A scan with a stuffed 0xff, a restart and fill bytes in its data. */
export const SCAN = Buffer.concat([
  jpegSegment(0xda, Uint8Array.of(1, 1, 0, 0, 63, 0)),
  Uint8Array.of(0x12, 0xff, 0x00, 0x34, 0xff, 0xd0, 0x56, 0xff, 0xff, 0xd1, 0x78),
]);
export const SOI = Uint8Array.of(0xff, 0xd8);
export const EOI = Uint8Array.of(0xff, 0xd9);

export function jpegOf(...parts: Uint8Array[]): Uint8Array<ArrayBuffer> {
  return new Uint8Array(Buffer.concat([SOI, ...parts, EOI]));
}
