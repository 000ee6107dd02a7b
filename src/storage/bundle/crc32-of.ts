/** CRC-32 as zip uses it: reflected polynomial 0xEDB88320 (APPNOTE.TXT 4.4.7; ITU-T V.42, section 8.1.1.6.2). */
export function crc32Of(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (crc ^ 0xffffffff) >>> 0;
}
