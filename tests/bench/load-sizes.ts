import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { firstLoad } from '../../.ci/first-load.mjs';

export interface Size {
  files: number;
  rawBytes: number;
  /** Each file gzipped by itself, as a server sends it. */
  gzBytes: number;
}

/** What the first screen loads before anything lazy. */
export function firstLoadSizes(folder: string): { js: Size; css: Size } {
  const { js, css } = firstLoad(folder);
  const named = (files: (string | undefined)[]) => files.filter((file) => file !== undefined);
  return { js: sizeOf(folder, named(js)), css: sizeOf(folder, named(css)) };
}

/** What the service worker fetches in the background on the first visit: the files its own list names. */
export function precacheSize(folder: string): Size {
  return sizeOf(folder, precachedFiles(readFileSync(join(folder, 'sw.js'), 'utf8')));
}

/** The addresses in the list that the build writes into the service worker. */
export function precachedFiles(serviceWorker: string): string[] {
  const entries = serviceWorker.matchAll(/\{"revision":(?:null|"[0-9a-f]*"),"url":"([^"]+)"\}/g);
  const files = [...entries].flatMap(([, url]) => (url === undefined ? [] : [url]));
  if (files.length === 0) throw new Error('precachedFiles: the service worker holds no list of files');
  return files;
}

function sizeOf(folder: string, files: readonly string[]): Size {
  const contents = files.map((file) => readFileSync(join(folder, file)));
  const sum = (sizes: number[]) => sizes.reduce((a, b) => a + b, 0);
  return {
    files: files.length,
    rawBytes: sum(contents.map((content) => content.length)),
    gzBytes: sum(contents.map((content) => gzipSync(content).length)),
  };
}
