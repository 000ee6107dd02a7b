/** Files a tester may pick that are not a sound picture, each as [name, bytes]. */
import { cameraJpeg } from './camera-jpeg.ts';

/** A 12 megapixel photograph of which only the first 60 % arrived. */
export function truncated(): Uint8Array<ArrayBuffer> {
  const whole = cameraJpeg({ megapixels: 12, orientation: 1, gps: true, takenAt: '2024-05-03T10:11:12+02:00' });
  return whole.slice(0, Math.floor(whole.length * 0.6));
}

/** The start of an HEIC file, 4032 × 3024, with content that no decoder can make a picture of (boxes of ISO/IEC 14496-12). */
export function heicStub(): Uint8Array<ArrayBuffer> {
  const box = (type: string, ...content: Uint8Array[]) => {
    const inside = Buffer.concat(content);
    const head = Buffer.alloc(8);
    head.writeUInt32BE(inside.length + 8);
    head.write(type, 4, 'latin1');
    return Buffer.concat([head, inside]);
  };
  const versionAndFlags = Buffer.alloc(4);
  const size = Buffer.alloc(8);
  size.writeUInt32BE(4032, 0);
  size.writeUInt32BE(3024, 4);
  const properties = box('iprp', box('ipco', box('ispe', versionAndFlags, size)));
  return new Uint8Array(
    Buffer.concat([
      box('ftyp', Buffer.from('heic\0\0\0\0mif1heic', 'latin1')),
      box(
        'meta',
        versionAndFlags,
        box('hdlr', Buffer.from('\0\0\0\0\0\0\0\0pict\0\0\0\0\0\0\0\0\0\0\0\0\0', 'latin1')),
        properties,
      ),
      box('mdat', Buffer.alloc(2000, 0x5a)),
    ]),
  );
}

/** A small PDF; its name ending in .jpg is up to the test. */
export function pdfAsJpeg(): Uint8Array<ArrayBuffer> {
  const text =
    '%PDF-1.4\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n2 0 obj<</Type/Pages/Kids[]/Count 0>>endobj\ntrailer<</Root 1 0 R>>\n%%EOF\n';
  return new Uint8Array(Buffer.from(text, 'latin1'));
}

export function empty(): Uint8Array<ArrayBuffer> {
  return new Uint8Array(0);
}
