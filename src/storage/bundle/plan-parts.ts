import { MAX_FILES } from './bundle-limits.ts';
import type { GatheredPack, PlannedFile } from './gather-pack.ts';

export interface PlannedPart {
  packIds: string[];
  /** By path: a photo two packs share lies there once. */
  files: Map<string, PlannedFile>;
  /** Most that the part can take as a zip. */
  boundBytes: number;
}

/** End record, manifest without its lines, and slack. */
const FIXED_BYTES = 4096;

/**
 * Lays packs out over parts of at most `maxBytes`. Each part stands alone: whenever a pack goes on into another part,
 * its entries, annotations and definition go with it again. A photo, its thumbnail and original stay together.
 */
export function planParts(packs: readonly GatheredPack[], maxBytes: number): PlannedPart[] {
  const parts: PlannedPart[] = [];
  for (const pack of packs) {
    let part = parts.at(-1);
    const [firstGroup = []] = pack.groups;
    if (part === undefined || !fits(part, [...pack.core, ...firstGroup], maxBytes)) part = newPart(parts);
    begin(part, pack);
    for (const group of pack.groups) {
      if (!fits(part, group, maxBytes)) {
        part = newPart(parts);
        begin(part, pack);
      }
      add(part, group);
    }
  }
  return parts;
}

function newPart(parts: PlannedPart[]): PlannedPart {
  const part: PlannedPart = { packIds: [], files: new Map(), boundBytes: FIXED_BYTES };
  parts.push(part);
  return part;
}

function begin(part: PlannedPart, pack: GatheredPack): void {
  part.packIds.push(pack.packId);
  add(part, pack.core);
}

function add(part: PlannedPart, files: readonly PlannedFile[]): void {
  for (const file of files) {
    if (part.files.has(file.path)) continue;
    part.files.set(file.path, file);
    part.boundBytes += boundBytesOf(file);
  }
}

function fits(part: PlannedPart, files: readonly PlannedFile[], maxBytes: number): boolean {
  const extra = files.filter(({ path }) => !part.files.has(path));
  const extraBytes = extra.reduce((sum, file) => sum + boundBytesOf(file), 0);
  return part.files.size + extra.length <= MAX_FILES && part.boundBytes + extraBytes <= maxBytes;
}

/**
 * Most that a file can take: local header 30, descriptor 16, central header 46 and the name twice (APPNOTE.TXT 4.3.7,
 * 4.3.9, 4.3.12), its line in the manifest; deflate adds 5 bytes a 64 kB block at worst (RFC 1951, section 3.2.4).
 */
function boundBytesOf({ path, byteCount }: PlannedFile): number {
  const manifestLine = path.length + 200;
  return byteCount + Math.ceil(byteCount / 8192) + 92 + 2 * path.length + manifestLine;
}
