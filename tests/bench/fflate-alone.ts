import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

/** Brings the zip library into the page by itself, past the content policy, which lets no script of a test in. */
export async function bringFflate(page: Page): Promise<void> {
  const path = createRequire(import.meta.url)
    .resolve('fflate')
    .replace(/\/(lib|esm)\/[^/]+$/, '/umd/index.js');
  await page.evaluate(`${readFileSync(path, 'utf8')};0`);
}

/** `file`: read from the database, streamed into a file. `nothing`: from memory, each chunk dropped. */
export type Way = 'file' | 'nothing';

/**
 * The library alone zips the photos and thumbnails that lie in the database, stored, in this page. Returns ms and bytes.
 * From memory it is given the first hundred of them over and over, as often as there are photos.
 */
export function zipByFflate(page: Page, way: Way): Promise<{ ms: number; bytes: number }> {
  return page.evaluate(async (into) => {
    const { Zip, ZipPassThrough } = Reflect.get(globalThis, 'fflate') as typeof import('fflate');
    const open = indexedDB.open('underlid');
    await new Promise((resolve) => open.addEventListener('success', resolve));
    const db = open.result;
    const asked = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const shelf = (name: string) => db.transaction(name).objectStore(name);
    const content = async (name: string, key: IDBValidKey) => {
      const found = (await asked(shelf(name).get(key))) as { bytes: ArrayBuffer };
      return new Uint8Array(found.bytes);
    };
    const keys = await asked(shelf('photos').getAllKeys());
    const held = new Map<string, Uint8Array<ArrayBuffer>>();
    if (into === 'nothing') {
      for (const key of keys.slice(0, 100)) {
        for (const name of ['photos', 'thumbs']) held.set(`${name}/${String(key)}`, await content(name, key));
      }
    }
    const folder = await navigator.storage.getDirectory();
    const file = await folder.getFileHandle('fflate-alone.zip', { create: true });
    const writable = into === 'file' ? await file.createWritable() : null;

    const began = performance.now();
    let bytes = 0;
    let chunks: Uint8Array<ArrayBuffer>[] = [];
    let chunkBytes = 0;
    const zip = new Zip((error, chunk) => {
      if (error) throw error;
      bytes += chunk.byteLength;
      if (writable === null) return;
      chunks.push(chunk);
      chunkBytes += chunk.byteLength;
    });
    const handOn = async () => {
      await writable?.write(new Blob(chunks));
      chunks = [];
      chunkBytes = 0;
    };
    const add = async (path: string, content: Uint8Array<ArrayBuffer>) => {
      const member = new ZipPassThrough(path);
      zip.add(member);
      member.push(content, true);
      // The same pieces as the app hands on.
      if (chunkBytes >= 8 * 1024 * 1024) await handOn();
    };
    for (const [place, key] of keys.entries()) {
      const source = into === 'nothing' ? keys[place % 100] : key;
      for (const name of ['photos', 'thumbs']) {
        const path = `${name}/${String(key)}.jpg`;
        await add(path, held.get(`${name}/${String(source)}`) ?? (await content(name, key)));
      }
    }
    zip.end();
    await handOn();
    await writable?.close();
    const ms = performance.now() - began;
    db.close();
    await folder.removeEntry('fflate-alone.zip');
    return { ms, bytes };
  }, way);
}

/** The library alone unpacks a zip that lies among the page's files, each file's bytes dropped. */
export function unzipByFflate(page: Page, fileName: string): Promise<{ ms: number; bytes: number }> {
  return page.evaluate(async (name) => {
    const { Unzip, UnzipInflate } = Reflect.get(globalThis, 'fflate') as typeof import('fflate');
    const folder = await navigator.storage.getDirectory();
    const file = await (await folder.getFileHandle(name)).getFile();
    const began = performance.now();
    let bytes = 0;
    const unzip = new Unzip((member) => {
      member.ondata = (error, chunk) => {
        if (error) throw error;
        bytes += chunk.byteLength;
      };
      member.start();
    });
    unzip.register(UnzipInflate);
    const reader = file.stream().getReader();
    for (let next = await reader.read(); !next.done; next = await reader.read()) unzip.push(next.value);
    unzip.push(new Uint8Array(0), true);
    return { ms: performance.now() - began, bytes };
  }, fileName);
}
