import { expect, it } from 'vitest';
import { voiceTypeOf } from '../../src/storage/voice-type.ts';
import { voiceBytes } from './made-voice.ts';

const of = (...bytes: (number | string)[]) =>
  voiceTypeOf(
    Uint8Array.from(bytes.flatMap((one) => (typeof one === 'string' ? [...Buffer.from(one, 'latin1')] : [one]))),
  );

it.each(['audio/webm', 'audio/mp4', 'audio/ogg'] as const)('tells %s by its first bytes', (type) => {
  expect(voiceTypeOf(new Uint8Array(voiceBytes(type)))).toBe(type);
});

it('tells an MP4 by its fifth to eighth byte, whatever the size of the box before them', () => {
  expect([of(0, 0, 0, 32, 'ftypM4A '), of(0xff, 0xff, 0xff, 0xff, 'ftyp')]).toEqual(['audio/mp4', 'audio/mp4']);
});

it.each([
  ['nothing', of()],
  ['three bytes of WebM', of(0x1a, 0x45, 0xdf)],
  ['WebM one byte late', of(0, 0x1a, 0x45, 0xdf, 0xa3)],
  ['"ftyp" at the start', of('ftypM4A ')],
  ['OGGS in capitals', of('OGGS')],
  ['WAVE', of('RIFF', 0, 0, 0, 0, 'WAVEfmt ')],
  ['MP3', of('ID3', 4, 0)],
  ['a page', of('<html><script>alert(1)</script>')],
  ['a JPEG', of(0xff, 0xd8, 0xff, 0xe0)],
])('takes %s for no recording', (_, type) => {
  expect(type).toBeNull();
});
