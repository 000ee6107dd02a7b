import type { VoiceType } from '../schema/voice-note.ts';

/** Where a container names itself, and with which bytes. */
const SIGNATURES: readonly (readonly [type: VoiceType, at: number, bytes: readonly number[]])[] = [
  // EBML header (RFC 8794, section 8.1; RFC 9559 for Matroska, of which WebM is a part).
  ['audio/webm', 0, [0x1a, 0x45, 0xdf, 0xa3]],
  // "ftyp", the type of the first box (ISO/IEC 14496-12, section 4.3).
  ['audio/mp4', 4, [0x66, 0x74, 0x79, 0x70]],
  // "OggS", the capture pattern (RFC 3533, section 6).
  ['audio/ogg', 0, [0x4f, 0x67, 0x67, 0x53]],
];

/**
 * What a recording is, by its first bytes alone: a type that a file or an entry claims could turn it into a page that
 * runs. Null for anything that no recorder of a browser writes.
 */
export function voiceTypeOf(bytes: Uint8Array): VoiceType | null {
  const found = SIGNATURES.find(([, at, signature]) => signature.every((byte, i) => bytes[at + i] === byte));
  return found?.[0] ?? null;
}
