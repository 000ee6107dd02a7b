import { expect, it } from 'vitest';
import { sniffFormat } from '../../src/photos/sniff-format.ts';
import { heicStub, pdfAsJpeg } from '../browser/photographs/broken-files.ts';

const text = (latin1: string) => new Uint8Array(Buffer.from(latin1, 'latin1'));

// Signatures as printed in the standards named in sniff-format.ts.
it.each([
  ['no bytes', new Uint8Array(0), 'empty'],
  ['FF D8 FF', Uint8Array.of(0xff, 0xd8, 0xff, 0xe0), 'jpeg'],
  ['FF D8 and no more', Uint8Array.of(0xff, 0xd8), 'jpeg'],
  ['the PNG signature', text('\x89PNG\r\n\x1a\n\0\0\0\rIHDR'), 'png'],
  ['a PNG signature spoilt by a text transfer', text('\x89PNG\n\x1a\n\0\0\0\rIHDR'), 'other'],
  ['RIFF … WEBP', text('RIFF\x10\0\0\0WEBPVP8 '), 'webp'],
  ['RIFF … WAVE', text('RIFF\x10\0\0\0WAVEfmt '), 'other'],
  ['GIF89a', text('GIF89a\x01\0\x01\0'), 'gif'],
  ['ftyp heic', heicStub(), 'heic'],
  ['ftyp mif1 with heic among its brands', text('\0\0\0\x18ftypmif1\0\0\0\0heic'), 'heic'],
  ['ftyp avif', text('\0\0\0\x18ftypavif\0\0\0\0mif1'), 'avif'],
  ['ftyp mif1 with avif among its brands', text('\0\0\0\x18ftypmif1\0\0\0\0avif'), 'avif'],
  ['a film: ftyp isom', text('\0\0\0\x18ftypisom\0\0\0\0mp41'), 'other'],
  ['a film followed by the letters heic', text('\0\0\0\x10ftypqt  \0\0\0\0heic'), 'other'],
  ['%PDF-', pdfAsJpeg(), 'pdf'],
  ['words', text('This is not a picture.'), 'other'],
  ['one byte', Uint8Array.of(0xff), 'other'],
] as const)('%s is told by its bytes', (_, bytes, format) => {
  expect(sniffFormat(bytes.subarray(0, 64))).toBe(format);
});
