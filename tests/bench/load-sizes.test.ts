import { expect, it } from 'vitest';
import { precachedFiles } from './load-sizes.ts';

it('reads 2 files out of a service worker, with a revision and without', () => {
  const worker =
    'let n={revision:r};precache([{"revision":"06f1","url":"index.html"},{"revision":null,"url":"assets/a-1.js"}]||[]);';
  expect(precachedFiles(worker)).toEqual(['index.html', 'assets/a-1.js']);
});

it('throws when there is no list, instead of counting 0 bytes', () => {
  expect(() => precachedFiles('addEventListener("fetch",()=>{})')).toThrow(/no list of files/);
});
