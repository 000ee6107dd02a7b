/** What the first bytes say a file is; its name and its stated type are not asked. */
export type FileFormat = 'empty' | 'jpeg' | 'png' | 'webp' | 'gif' | 'heic' | 'avif' | 'pdf' | 'other';
export type PictureFormat = Exclude<FileFormat, 'empty' | 'pdf' | 'other'>;

/** Enough for the signature and the brands of an ISO base media file. */
export const HEAD_BYTES = 64;

/** Signatures: ISO/IEC 10918-1 (JPEG), PNG 3rd ed. §5.2, RFC 9649 (WebP), GIF89a, ISO 32000 (PDF), ISO/IEC 14496-12 `ftyp`. */
export function sniffFormat(head: Uint8Array): FileFormat {
  if (head.length === 0) return 'empty';
  if (head[0] === 0xff && head[1] === 0xd8) return 'jpeg';
  if (textAt(head, 0, 8) === '\x89PNG\r\n\x1a\n') return 'png';
  if (textAt(head, 0, 4) === 'RIFF' && textAt(head, 8, 4) === 'WEBP') return 'webp';
  if (textAt(head, 0, 4) === 'GIF8') return 'gif';
  if (textAt(head, 0, 5) === '%PDF-') return 'pdf';
  if (textAt(head, 4, 4) === 'ftyp') return formatOfBrands(head);
  return 'other';
}

/** The bytes as Latin-1 text; shorter where the file ends. */
export function textAt(bytes: Uint8Array, start: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(start, start + length));
}

const HEIC_BRANDS = ['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'mif1', 'msf1'];

/** A film in the same container (mp4, mov) has none of these brands and is no picture. */
function formatOfBrands(head: Uint8Array): FileFormat {
  const boxEnd = Math.min(head.length, new DataView(head.buffer, head.byteOffset).getUint32(0));
  const brands = [textAt(head, 8, 4)];
  for (let at = 16; at + 4 <= boxEnd; at += 4) brands.push(textAt(head, at, 4));
  if (brands.includes('avif') || brands.includes('avis')) return 'avif';
  return brands.some((brand) => HEIC_BRANDS.includes(brand)) ? 'heic' : 'other';
}
