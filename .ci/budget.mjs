// Bundle budget: what the first visit must load before anything is shown, gzipped, against what we allow ourselves.
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { firstLoad } from './first-load.mjs';

const BUDGET = { js: 45_000, css: 12_000 }; // bytes gz, from the project's own aim
const found = firstLoad('dist');
let over = false;
for (const kind of ['js', 'css']) {
  const size = found[kind].reduce((sum, file) => sum + gzipSync(readFileSync(join('dist', file))).length, 0);
  over ||= size > BUDGET[kind] || size === 0;
  console.log(
    `first-load ${kind}: ${(size / 1000).toFixed(1)} kB gz of ${BUDGET[kind] / 1000} kB (${found[kind].join(', ')})`,
  );
}
const everything = readdirSync('dist', { recursive: true })
  .map((name) => join('dist', name))
  .filter((path) => statSync(path).isFile());
const bytes = everything.reduce((sum, path) => sum + statSync(path).size, 0);
console.log(`dist: ${everything.length} files, ${(bytes / 1000).toFixed(0)} kB`);
for (const path of everything.filter((name) => /\.(js|css|html)$/.test(name))) {
  const strange = [
    ...readFileSync(path, 'utf8').matchAll(/@import\s+url|fonts\.googleapis|cdn\.jsdelivr\.net\/npm\/browser-image/g),
  ];
  if (strange.length && !path.includes('browser-image')) console.log(`note: ${path} holds ${strange[0][0]}`);
}
process.exit(over ? 1 : 0);
