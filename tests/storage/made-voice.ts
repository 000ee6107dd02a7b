import type { VoiceType } from '../../src/schema/voice-note.ts';

/** First bytes as the standards print them: RFC 8794, 8.1; ISO/IEC 14496-12, 4.3 with a size of 24; RFC 3533, 6. */
const HEADS: Readonly<Record<VoiceType, readonly number[]>> = {
  'audio/webm': [0x1a, 0x45, 0xdf, 0xa3],
  'audio/mp4': [0, 0, 0, 24, ...Buffer.from('ftyp')],
  'audio/ogg': [...Buffer.from('OggS')],
};

/** So many bytes that begin as a recording does, different for each seed. */
export function voiceBytes(type: VoiceType, length = 300, seed = 1): ArrayBuffer {
  const bytes = Uint8Array.from({ length }, (_, i) => (i * 31 + seed * 17) % 251);
  bytes.set(HEADS[type]);
  return bytes.buffer;
}
