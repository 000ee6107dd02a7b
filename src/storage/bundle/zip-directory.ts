import { MAX_FILES, MAX_RATIO, MAX_UNPACKED_BYTES, RATIO_FROM_BYTES } from './bundle-limits.ts';
import { readSlice } from './read-slice.ts';
import { RefusedBundle } from './refused-bundle.ts';

/** One file of a zip as its central directory tells it; `read-member.ts` holds it against its local header. */
export interface ZipMember {
  path: string;
  deflated: boolean;
  packedBytes: number;
  byteCount: number;
  crc32: number;
  /** Where its local header begins … */
  from: number;
  /** … and where the next file's does, or the directory: it must end before. */
  limit: number;
}

/** Records of a zip file and the lengths of their fixed parts: APPNOTE.TXT 6.3, sections 4.3.7, 4.3.12 and 4.3.16. */
export const LOCAL = { signature: 0x04034b50, bytes: 30 };
const CENTRAL = { signature: 0x02014b50, bytes: 46 };
const END = { signature: 0x06054b50, bytes: 22 };
export const STORED = 0;
export const DEFLATED = 8;

/** A comment may stand behind the end record: 16 bits of length. */
const TAIL_BYTES = END.bytes + 0xffff;

/** Our choice: 60 000 lines with names of 200 characters take 15 MB. */
const MAX_DIRECTORY_BYTES = 24 * 1024 * 1024;

/**
 * Lists the files of a zip from its tail, trusting nothing: one disk, no encryption, no zip64, every file inside the zip,
 * none over another, none twice (letter case aside), sizes and ratios within limits.
 *
 * Throws  RefusedBundle
 */
export async function readZipDirectory(file: Blob): Promise<ZipMember[]> {
  const { directoryAt, directoryBytes, fileCount } = await readEnd(file);
  const bytes = await readSlice(file, directoryAt, directoryAt + directoryBytes);
  const view = new DataView(bytes.buffer);
  const members: ZipMember[] = [];
  let at = 0;
  for (let i = 0; i < fileCount; i += 1) {
    if (at + CENTRAL.bytes > bytes.byteLength || view.getUint32(at, true) !== CENTRAL.signature) {
      damaged('its list is broken');
    }
    const nameLength = view.getUint16(at + 28, true);
    const next = at + CENTRAL.bytes + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (next > bytes.byteLength) damaged('its list is broken');
    const member = memberAt(view, { at, nameLength, directoryAt });
    if (!member.path.endsWith('/') || member.byteCount > 0) members.push(member);
    at = next;
  }
  if (at !== bytes.byteLength) damaged('its list is longer than it says');
  refuseOverlaps(members);
  refuseTwice(members);
  refuseBombs(members);
  return members;
}

/** One character a byte: a name with anything but plain ASCII is refused later as a path. */
export function nameAt(view: DataView, at: number, length: number): string {
  return String.fromCharCode(...new Uint8Array(view.buffer, view.byteOffset + at, Math.min(length, 1000)));
}

export function damaged(detail: string): never {
  throw new RefusedBundle('damagedZip', detail);
}

async function readEnd(file: Blob) {
  const tailAt = Math.max(0, file.size - TAIL_BYTES);
  const tail = await readSlice(file, tailAt, file.size);
  const view = new DataView(tail.buffer);
  for (let at = view.byteLength - END.bytes; at >= 0; at -= 1) {
    if (view.getUint32(at, true) !== END.signature) continue;
    if (at + END.bytes + view.getUint16(at + 20, true) !== view.byteLength) continue;
    const fileCount = view.getUint16(at + 10, true);
    const directoryBytes = view.getUint32(at + 12, true);
    const directoryAt = view.getUint32(at + 16, true);
    const wholeOnOneDisk = view.getUint32(at + 4, true) === 0 && view.getUint16(at + 8, true) === fileCount;
    if (!wholeOnOneDisk) damaged('it is one of several disks');
    if (directoryAt + directoryBytes !== tailAt + at) damaged('its list is not where it says');
    if (fileCount > MAX_FILES + 1) throw new RefusedBundle('tooLarge', `${fileCount} files`);
    if (directoryBytes > MAX_DIRECTORY_BYTES) throw new RefusedBundle('tooLarge', `a list of ${directoryBytes} bytes`);
    return { fileCount, directoryAt, directoryBytes };
  }
  throw new RefusedBundle('notAZip', 'no end of a zip was found');
}

function memberAt(
  view: DataView,
  { at, nameLength, directoryAt }: Record<'at' | 'nameLength' | 'directoryAt', number>,
) {
  const flags = view.getUint16(at + 8, true);
  const method = view.getUint16(at + 10, true);
  const packedBytes = view.getUint32(at + 20, true);
  const byteCount = view.getUint32(at + 24, true);
  const from = view.getUint32(at + 42, true);
  const path = nameAt(view, at + CENTRAL.bytes, nameLength);
  // Bit 0: encrypted; bit 6: strong encryption; bit 13: masked headers (4.4.4).
  if ((flags & 0x2041) !== 0) throw new RefusedBundle('encrypted', path);
  if (method !== STORED && method !== DEFLATED) damaged(`${path} is packed in a way we do not know (${method})`);
  if (method === STORED && packedBytes !== byteCount) damaged(`${path} has two sizes`);
  // Deflate adds 5 bytes a block (RFC 1951, section 3.2.4); more is padding we would have to hold.
  if (packedBytes > byteCount + byteCount / 100 + 1024) damaged(`${path} is larger packed than unpacked`);
  if (endOf({ from, path, packedBytes }) > directoryAt) damaged(`${path} ends outside the zip`);
  const crc32 = view.getUint32(at + 16, true);
  return { path, deflated: method === DEFLATED, packedBytes, byteCount, crc32, from, limit: directoryAt };
}

/** Where a file ends at the earliest: its local header may hold an extra field as well. */
function endOf({ from, path, packedBytes }: Pick<ZipMember, 'from' | 'path' | 'packedBytes'>): number {
  return from + LOCAL.bytes + path.length + packedBytes;
}

function refuseOverlaps(members: readonly ZipMember[]): void {
  let before: ZipMember | null = null;
  for (const member of [...members].sort((a, b) => a.from - b.from)) {
    if (before !== null) {
      if (member.from < endOf(before)) damaged(`${member.path} lies over another file`);
      before.limit = member.from;
    }
    before = member;
  }
}

function refuseTwice(members: readonly ZipMember[]): void {
  const seen = new Set<string>();
  for (const { path } of members) {
    if (seen.has(path.toLowerCase())) throw new RefusedBundle('duplicatePath', path);
    seen.add(path.toLowerCase());
  }
}

function refuseBombs(members: readonly ZipMember[]): void {
  const totalBytes = members.reduce((sum, { byteCount }) => sum + byteCount, 0);
  if (totalBytes > MAX_UNPACKED_BYTES) throw new RefusedBundle('tooLarge', `${totalBytes} bytes unpacked`);
  for (const { path, byteCount, packedBytes } of members) {
    if (byteCount > RATIO_FROM_BYTES && byteCount > MAX_RATIO * packedBytes) {
      throw new RefusedBundle('tooLarge', `${path} grows ${Math.round(byteCount / packedBytes)} times`);
    }
  }
}
