import { describe, expect, it } from 'vitest';
import { fileName } from '../../src/app/file-name.ts';
import { chapterWords } from '../../src/text/shoot-clock.ts';
import { words } from '../../src/text/words.ts';

const wren = words.packLabel('Wren 24', '1');

describe('the name of a file that is taken away', () => {
  it('keeps case for all 4 kinds: sheet, findings, letter and chapters', () => {
    const names = [
      fileName({ title: wren, revision: 2, what: null, ending: 'pdf' }),
      fileName({ title: wren, revision: null, what: 'findings', ending: 'csv' }),
      fileName({ title: `Letter to the maker · ${wren}`, revision: 1, what: null, ending: 'txt' }),
      fileName({ title: wren, revision: null, what: chapterWords.fileEnd(1), ending: 'vtt' }),
    ];
    expect(names).toEqual([
      'underlid-Wren-24-sample-1-revision-2.pdf',
      'underlid-Wren-24-sample-1-findings.csv',
      'underlid-Letter-to-the-maker-Wren-24-sample-1-revision-1.txt',
      'underlid-Wren-24-sample-1-take-1.vtt',
    ]);
  });

  it('writes an accented letter without its accent, and pack where no Latin letter or digit is left', () => {
    const of = (title: string) => fileName({ title, revision: null, what: null, ending: 'pdf' });
    expect(of('Écluse/àé 24²')).toBe('underlid-Ecluse-ae-242.pdf');
    expect(of('電池 · パック')).toBe('underlid-pack.pdf');
    expect(of('../..\\ "')).toBe('underlid-pack.pdf');
  });

  it('takes 100 letters of a title, and ends none with a dash', () => {
    // 255 bytes at most: NAME_MAX of Linux's limits.h; the same number of UTF-16 units on NTFS.
    const long = fileName({ title: 'W'.repeat(240), revision: 123, what: 'findings', ending: 'json' });
    expect(long).toBe(`underlid-${'W'.repeat(100)}-revision-123-findings.json`);
    expect(fileName({ title: `${'W'.repeat(99)} and more`, revision: null, what: null, ending: 'pdf' })).toBe(
      `underlid-${'W'.repeat(99)}.pdf`,
    );
  });
});
