import type { BundleRefusal } from '../../schema/bundle.ts';
import { MAX_FILES, MAX_RATIO, MAX_UNPACKED_BYTES, RATIO_FROM_BYTES } from './bundle-limits.ts';

/** One file of a zip as its central directory tells it, checked against its local header. */
export interface ZipMember {
  path: string;
  deflated: boolean;
  /** Still packed: a view into the zip, no copy. */
  packed: Uint8Array;
  byteCount: number;
  crc32: number;
}

export class RefusedBundle extends Error {
  constructor(
    readonly refusal: BundleRefusal,
    detail: string,
  ) {
    super(detail);
  }
}

/** Records of a zip file and the lengths of their fixed parts: APPNOTE.TXT 6.3, sections 4.3.7, 4.3.12 and 4.3.16. */
const LOCAL = { signature: 0x04034b50, bytes: 30 };
const CENTRAL = { signature: 0x02014b50, bytes: 46 };
const END = { signature: 0x06054b50, bytes: 22 };
const STORED = 0;
const DEFLATED = 8;

/**
 * Lists the files of a zip, trusting nothing: one disk, no encryption, no zip64, every file inside the zip, none over
 * another, names the same in both headers and none twice (letter case aside), sizes and ratios within limits.
 *
 * Throws  RefusedBundle
 */
export function readZipDirectory(bytes: Uint8Array): ZipMember[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOf(view);
  const members: (ZipMember & { from: number; to: number })[] = [];
  let at = end.directoryAt;
  for (let i = 0; i < end.fileCount; i += 1) {
    if (at + CENTRAL.bytes > end.at || view.getUint32(at, true) !== CENTRAL.signature) damaged('its list is broken');
    const nameLength = view.getUint16(at + 28, true);
    const next = at + CENTRAL.bytes + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (next > end.at) damaged('its list is broken');
    const member = memberAt(view, { at, nameLength, limit: end.directoryAt });
    if (!member.path.endsWith('/') || member.byteCount > 0) members.push(member);
    at = next;
  }
  if (at !== end.at) damaged('its list is longer than it says');
  refuseOverlaps(members);
  refuseTwice(members);
  refuseBombs(members);
  return members.map(({ from: _from, to: _to, ...member }) => member);
}

function endOf(view: DataView) {
  const lowest = Math.max(0, view.byteLength - END.bytes - 0xffff);
  for (let at = view.byteLength - END.bytes; at >= lowest; at -= 1) {
    if (view.getUint32(at, true) !== END.signature) continue;
    if (at + END.bytes + view.getUint16(at + 20, true) !== view.byteLength) continue;
    const fileCount = view.getUint16(at + 10, true);
    const directoryAt = view.getUint32(at + 16, true);
    const wholeOnOneDisk = view.getUint32(at + 4, true) === 0 && view.getUint16(at + 8, true) === fileCount;
    if (!wholeOnOneDisk) damaged('it is one of several disks');
    if (directoryAt + view.getUint32(at + 12, true) !== at) damaged('its list is not where it says');
    if (fileCount > MAX_FILES + 1) throw new RefusedBundle('tooLarge', `${fileCount} files`);
    return { at, fileCount, directoryAt };
  }
  throw new RefusedBundle('notAZip', 'no end of a zip was found');
}

function memberAt(view: DataView, { at, nameLength, limit }: { at: number; nameLength: number; limit: number }) {
  const flags = view.getUint16(at + 8, true);
  const method = view.getUint16(at + 10, true);
  const packedBytes = view.getUint32(at + 20, true);
  const byteCount = view.getUint32(at + 24, true);
  const localAt = view.getUint32(at + 42, true);
  const path = nameAt(view, at + CENTRAL.bytes, nameLength);
  // Bit 0: encrypted; bit 6: strong encryption; bit 13: masked headers (4.4.4).
  if ((flags & 0x2041) !== 0) throw new RefusedBundle('encrypted', path);
  if (method !== STORED && method !== DEFLATED) damaged(`${path} is packed in a way we do not know (${method})`);
  if (method === STORED && packedBytes !== byteCount) damaged(`${path} has two sizes`);
  if (localAt + LOCAL.bytes > limit || view.getUint32(localAt, true) !== LOCAL.signature) {
    damaged(`${path} does not begin where the list says`);
  }
  const localNameLength = view.getUint16(localAt + 26, true);
  const from = localAt + LOCAL.bytes + localNameLength + view.getUint16(localAt + 28, true);
  const to = from + packedBytes;
  if (to > limit) damaged(`${path} ends outside the zip`);
  if (nameAt(view, localAt + LOCAL.bytes, localNameLength) !== path) damaged(`${path} has two names`);
  if (view.getUint16(localAt + 8, true) !== method) damaged(`${path} is packed in two ways`);
  const packed = new Uint8Array(view.buffer, view.byteOffset + from, packedBytes);
  const crc32 = view.getUint32(at + 16, true);
  return { path, deflated: method === DEFLATED, packed, byteCount, crc32, from: localAt, to };
}

/** One character a byte: a name with anything but plain ASCII is refused later as a path. */
function nameAt(view: DataView, at: number, length: number): string {
  return String.fromCharCode(...new Uint8Array(view.buffer, view.byteOffset + at, Math.min(length, 1000)));
}

function refuseOverlaps(members: readonly { path: string; from: number; to: number }[]): void {
  let end = 0;
  for (const { path, from, to } of [...members].sort((a, b) => a.from - b.from)) {
    if (from < end) damaged(`${path} lies over another file`);
    end = to;
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
  for (const { path, byteCount, packed } of members) {
    if (byteCount > RATIO_FROM_BYTES && byteCount > MAX_RATIO * packed.byteLength) {
      throw new RefusedBundle('tooLarge', `${path} grows ${Math.round(byteCount / packed.byteLength)} times`);
    }
  }
}

function damaged(detail: string): never {
  throw new RefusedBundle('damagedZip', detail);
}
