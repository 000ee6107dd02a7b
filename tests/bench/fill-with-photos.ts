import type { Page } from 'playwright-core';
import { baselineJpeg } from '../browser/photographs/baseline-jpeg.ts';

export interface PhotoFill {
  packCount: number;
  photosPerPack: number;
  /** Bytes of a photo and of its thumbnail, of which each photo has one. */
  photoBytes: number;
  thumbBytes: number;
}

/** As intake keeps them. */
const SIZE = { widthPx: 2048, heightPx: 1536 };
const THUMB_SIZE = { widthPx: 320, heightPx: 240 };
const TILE_PX = 16;

/**
 * Fills the phone with copies of its one pack, each with photos of its own, written past the app into its own stores as
 * the app would. A photo has a JPEG's true markers and noise for its scan, which does not deflate, as a real one.
 */
export async function fillWithPhotos(page: Page, fill: PhotoFill): Promise<{ photoCount: number; totalBytes: number }> {
  const heads = { photo: jpegHead(SIZE), thumb: jpegHead(THUMB_SIZE) };
  return page.evaluate(
    async ({ packCount, photosPerPack, photoBytes, thumbBytes, size, heads }) => {
      const open = indexedDB.open('underlid');
      await new Promise((resolve, reject) => {
        open.onsuccess = resolve;
        open.onerror = reject;
      });
      const db = open.result;
      const all = <T>(name: string) =>
        new Promise<T[]>((resolve) => {
          const request: IDBRequest<T[]> = db.transaction(name).objectStore(name).getAll();
          request.onsuccess = () => resolve(request.result);
        });
      type Row = { key: [string, string, string]; at: string; by: string };
      const seed = await all<Row>('entries');
      const [card] = await all<{ packId: string }>('cards');
      const newest = seed.map(({ at }) => at).sort().at(-1); // biome-ignore format: one line
      if (card === undefined || newest === undefined) throw new Error('fillWithPhotos: the phone must hold a pack');

      /** Start of image to scan header, noise with every FF stuffed (ITU-T T.81 B.1.1.5), end of image. */
      const picture = (head: number[], length: number) => {
        const bytes = new Uint8Array(length);
        for (let at = 0; at < length; at += 65_536) crypto.getRandomValues(bytes.subarray(at, at + 65_536));
        for (let at = head.length; at < length; at += 1) if (bytes[at - 1] === 0xff) bytes[at] = 0;
        bytes.set(head);
        bytes.set([0, 0xff, 0xd9], length - 3);
        return bytes;
      };
      const [photo, thumb] = [picture(heads.photo, photoBytes), picture(heads.thumb, thumbBytes)];
      /** The same noise with a number of its own before its end. */
      const numbered = (bytes: Uint8Array<ArrayBuffer>, number: number) => {
        const copy = bytes.slice();
        copy.set(new TextEncoder().encode(String(number).padStart(8, '0')), copy.length - 11);
        return copy.buffer;
      };
      const hashOf = async (bytes: ArrayBuffer) =>
        [...new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))]
          .map((byte) => byte.toString(16).padStart(2, '0'))
          .join('');
      let number = 0;
      let totalBytes = 0;
      for (let pack = 0; pack < packCount; pack += 1) {
        const packId = pack === 0 ? card.packId : card.packId.slice(0, 28) + pack.toString(16).padStart(4, '0');
        const photos: { sha256: string; bytes: ArrayBuffer; thumb: ArrayBuffer }[] = [];
        for (let place = 0; place < photosPerPack; place += 1) {
          number += 1;
          const bytes = numbered(photo, number);
          photos.push({ sha256: await hashOf(bytes), bytes, thumb: numbered(thumb, number) });
          totalBytes += photoBytes + thumbBytes;
        }
        const tx = db.transaction(['entries', 'cards', 'photos', 'thumbs', 'uses'], 'readwrite');
        const type = 'image/jpeg';
        for (const row of seed) {
          const key = [packId, row.key[1], row.key[2]];
          tx.objectStore('entries').put({ ...row, key }, key);
        }
        for (const { sha256, bytes, thumb: small } of photos) {
          const key = [packId, 'photo', sha256];
          const v = { zone: 'cells', ...size, byteCount: photoBytes, originalSha256: sha256, made: newest };
          tx.objectStore('entries').put({ key, v, at: newest, by: newest.slice(-32) }, key);
          tx.objectStore('photos').put({ type, bytes }, sha256);
          tx.objectStore('thumbs').put({ type, bytes: small }, sha256);
          tx.objectStore('uses').put(0, [sha256, packId]);
        }
        tx.objectStore('cards').put({ ...card, packId, photoCount: photosPerPack }, packId);
        await new Promise((resolve, reject) => {
          tx.oncomplete = resolve;
          tx.onabort = () => reject(tx.error);
        });
      }
      db.close();
      return { photoCount: number, totalBytes };
    },
    { ...fill, size: SIZE, heads },
  );
}

/** Everything of a JPEG before its first scan's data. */
function jpegHead({ widthPx, heightPx }: typeof SIZE): number[] {
  const tile = { luma: new Uint8Array(256).fill(90), cb: 128, cr: 128 };
  const [columns, rows] = [widthPx / TILE_PX, heightPx / TILE_PX];
  const jpeg = Buffer.from(baselineJpeg({ columns, rows, tiles: [tile], tileAt: () => 0 }));
  const scan = jpeg.indexOf(Buffer.from([0xff, 0xda]));
  return [...jpeg.subarray(0, scan + 2 + jpeg.readUInt16BE(scan + 2))];
}
