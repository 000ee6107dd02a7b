import { describe, expect, it } from 'vitest';
import { fileRefusal } from '../../../src/app/logs/file-refusal.ts';

const MB = 1024 * 1024;
const text = (words: string) => new TextEncoder().encode(words);
const wide = (words: string, mark: readonly number[] = []) =>
  Uint8Array.from([...mark, ...[...words].flatMap((character) => [character.charCodeAt(0), 0])]);
const of = (head: Uint8Array, byteCount = head.length) => fileRefusal({ byteCount, head });

describe('a file that is picked as a log', () => {
  it.each([
    ['plain text', text('Time,V\n0,13.2\n')],
    ['text with a byte order mark', text('\ufeffTime;V\n0;13,2\n')],
    ['Latin-1 with a degree sign', Uint8Array.from([0x54, 0xb0, 0x43, 0x0a, 0x31, 0x3b, 0x32, 0x0a])],
    ['UTF-16 with its mark', wide('Time\t°C\n', [0xff, 0xfe])],
    ['UTF-16 without a mark', wide('Time;V;A\n0;13.2;20\n')],
    ['one control character in 40', text(`${'\u0001'}${'1,2,3\n'.repeat(7)}`)],
  ])('is taken: %s', (_, head) => {
    expect(of(head)).toBeNull();
  });

  it.each([
    ['empty', 'empty', new Uint8Array(0)],
    // APPNOTE.TXT 4.3.7 (local file header), [MS-CFB] 2.2, RFC 1952 2.3.1
    ['a ZIP, as workbooks are', 'spreadsheet', Uint8Array.from([0x50, 0x4b, 3, 4, 20, 0, 6, 0])],
    ['a compound file, as old workbooks are', 'spreadsheet', Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1])],
    ['gzip', 'spreadsheet', Uint8Array.from([0x1f, 0x8b, 8, 0])],
    ['zeros', 'binary', new Uint8Array(512)],
    ['control characters', 'binary', new Uint8Array(512).fill(2)],
    ['an instrument record of 32-bit numbers', 'binary', new Uint8Array(new Uint32Array(128).fill(20).buffer)],
  ])('is refused: %s as %s', (_, because, head) => {
    expect(of(head)).toBe(because);
  });

  it('may have 64 MB and not a byte more', () => {
    expect(of(text('1,2\n'), 64 * MB)).toBeNull();
    expect(of(text('1,2\n'), 64 * MB + 1)).toBe('tooLarge');
  });
});
