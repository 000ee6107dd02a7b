import { deflateSync } from 'node:zlib';
import { crc32Of } from '../../src/storage/bundle/crc32-of.ts';
import { baselineJpeg, TILE_PX } from '../browser/photographs/baseline-jpeg.ts';

/** A real baseline JPEG of 64 × 48 px in under 1.5 kB; another picture for each seed. */
export function tinyJpeg(seed: number): Uint8Array<ArrayBuffer> {
  const luma = (light: number) => new Uint8Array(TILE_PX * TILE_PX).fill(light);
  const tiles = [
    { luma: luma(60 + seed * 17), cb: 128, cr: 128 },
    { luma: luma(200 - seed * 9), cb: 110, cr: 140 },
  ];
  return baselineJpeg({ columns: 4, rows: 3, tileAt: (column, row) => (column + row) % 2, tiles });
}

/** With another size in its frame header (ITU-T T.81, B.2.2): height, then width, five bytes after the marker. */
export function sayingSize(jpeg: Uint8Array, widthPx: number, heightPx: number): Uint8Array<ArrayBuffer> {
  const copy = Uint8Array.from(jpeg);
  const at = copy.findIndex((byte, i) => byte === 0xff && copy[i + 1] === 0xc0);
  new DataView(copy.buffer).setUint16(at + 5, heightPx);
  new DataView(copy.buffer).setUint16(at + 7, widthPx);
  return copy;
}

/** A true PNG (PNG 3rd ed., 5.2 and 11.2.1) of one bit a pixel, all black: 30 000 × 30 000 px take 110 kB. */
export function blackPng(widthPx: number, heightPx: number): Uint8Array<ArrayBuffer> {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(widthPx, 0);
  header.writeUInt32BE(heightPx, 4);
  header[8] = 1;
  const rows = Buffer.alloc((Math.ceil(widthPx / 8) + 1) * heightPx);
  const chunks = [
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ];
  return new Uint8Array(Buffer.concat([Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'), ...chunks]));
}

function chunk(type: string, content: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), content]);
  const whole = Buffer.alloc(named.length + 8);
  whole.writeUInt32BE(content.length, 0);
  named.copy(whole, 4);
  whole.writeUInt32BE(crc32Of(named), named.length + 4);
  return whole;
}
