import { readSlice } from './read-slice.ts';
import { unpackBytes } from './unpack-bytes.ts';
import { DEFLATED, damaged, LOCAL, nameAt, STORED, type ZipMember } from './zip-directory.ts';

/** Longest extra field of a local header that is read. Our choice: time stamps and owners of other programs take 60. */
const MAX_EXTRA_BYTES = 1024;

/**
 * The bytes of one file of a zip, in one slice: held against its local header, unpacked where deflated.
 *
 * Throws  RefusedBundle
 */
export async function readMember(file: Blob, member: ZipMember): Promise<Uint8Array<ArrayBuffer>> {
  const { path, from, limit, packedBytes, deflated, byteCount } = member;
  const most = from + LOCAL.bytes + path.length + MAX_EXTRA_BYTES + packedBytes;
  const bytes = await readSlice(file, from, Math.min(limit, most));
  const view = new DataView(bytes.buffer);
  if (view.getUint32(0, true) !== LOCAL.signature) damaged(`${path} does not begin where the list says`);
  const nameLength = view.getUint16(26, true);
  const dataAt = LOCAL.bytes + nameLength + view.getUint16(28, true);
  if (nameLength !== path.length || nameAt(view, LOCAL.bytes, nameLength) !== path) damaged(`${path} has two names`);
  if (view.getUint16(8, true) !== (deflated ? DEFLATED : STORED)) damaged(`${path} is packed in two ways`);
  if (dataAt + packedBytes > bytes.byteLength) damaged(`${path} lies over another file`);
  const packed = bytes.subarray(dataAt, dataAt + packedBytes);
  return deflated ? unpackBytes({ path, packed, byteCount }) : packed;
}
