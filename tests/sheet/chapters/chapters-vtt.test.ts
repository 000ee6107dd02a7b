import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chaptersVtt } from '../../../src/sheet/chapters/chapters-vtt.ts';
import { disclosureOf } from '../../../src/sheet/model/disclosure.ts';
import { hutRecord } from '../hut-pack.ts';
import { chaptersIn, filmed, markAt } from './film.ts';
import { readVtt } from './read-vtt.ts';

const DISCLOSURE = disclosureOf(hutRecord());
const head = { title: 'Wren 24, Take 1', disclosure: DISCLOSURE };

/** A title as it is to come back, character by character: written apart from the code under test. */
function inPlainLine(title: string): string {
  const kept = [...title].map((one) => {
    const code = one.codePointAt(0) ?? 0;
    if (code >= 0xd800 && code <= 0xdfff) return '\ufffd';
    const isControl = code < 32 || (code > 126 && code < 160) || code === 0x2028 || code === 0x2029 || code === 0xfeff;
    return isControl || one.trim() === '' ? ' ' : one;
  });
  const words = kept.join('').split('-->').join('\u2192').split(' ').filter(Boolean);
  return words.join(' ') || 'Mark';
}

describe('a WebVTT file of chapters', () => {
  it('is, for 2 marks in 75 s, this text to the letter (WebVTT, W3C Candidate Recommendation, 4.1 and 4.2.3)', () => {
    const made = chaptersIn(
      filmed([markAt(12.345, { label: 'Lid off' }), markAt(60, { label: 'a < b & c' })], { lastsS: 75 }),
    );
    expect(chaptersVtt(made, head)).toBe(
      [
        'WEBVTT',
        '',
        'NOTE',
        'Wren 24, Take 1',
        DISCLOSURE.line,
        '',
        '1',
        '00:00:00.000 --> 00:00:12.345',
        'Start',
        '',
        '2',
        '00:00:12.345 --> 00:01:00.000',
        'Lid off',
        '',
        '3',
        '00:01:00.000 --> 00:01:15.000',
        'a &lt; b &amp; c',
        '',
      ].join('\n'),
    );
  });

  it('says that the pack is an invented demo, and how the sample was obtained', () => {
    expect(DISCLOSURE.line).toMatch(/invented/i);
    expect(DISCLOSURE.line).toContain('a shop');
    expect(chaptersVtt(chaptersIn(filmed([])), head)).toContain(DISCLOSURE.line);
  });

  it('gives hours past 1 h: a mark at 3 723.004 s begins at 01:02:03.004', () => {
    const text = chaptersVtt(chaptersIn(filmed([markAt(3723.004)], { lastsS: 4000 })), head);
    expect(text).toContain('01:02:03.004 --> 01:06:40.000');
    expect(readVtt(text).chapters[1]?.startMs).toBe(3_723_004);
  });

  it('keeps an arrow, a blank line and a NOTE in words from breaking the file: 0 errors, 2 cues', () => {
    const label = 'a --> b\n\nNOTE c\r\r00:01.000 --> 00:02.000';
    const text = chaptersVtt(chaptersIn(filmed([markAt(5, { label })])), {
      title: 'x --> y\n\nz',
      disclosure: DISCLOSURE,
    });
    const { chapters, errors } = readVtt(text);
    expect(errors).toEqual([]);
    expect(chapters.map(({ title }) => title)).toEqual(['Start', 'a → b NOTE c 00:01.000 → 00:02.000']);
  });

  it('is read back by webvtt-parser 2.2.0 with 0 errors, every title whole, whatever is in the words', () => {
    const nasty = fc.constantFrom('-->', '--', '>', '<', '&', '&amp;', '<b>', '\n', '\r', '\n\n', '\0', '\t', 'NOTE', 'STYLE', '\u2028', '\ud800', 'é', '😀'); // biome-ignore format: one line
    const label = fc.array(fc.oneof(nasty, fc.string({ unit: 'binary', maxLength: 4 })), {
      minLength: 1,
      maxLength: 12,
    });
    const moment = fc.integer({ min: 0, max: 90_000_000 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(moment, label), { maxLength: 8 }),
        fc.integer({ min: -5000, max: 5000 }),
        label,
        (given, offsetMs, title) => {
          const marks = given
            .sort(([a], [b]) => a - b)
            .map(([ms, parts]) => markAt(ms / 1000, { label: parts.join('') }));
          const made = chaptersIn(filmed(marks, { offsetMs, lastsS: 1 }));
          const line = title.join('');
          const text = chaptersVtt(made, { title: line, disclosure: { ...DISCLOSURE, line } });
          const { chapters, errors } = readVtt(text);
          expect(errors).toEqual([]);
          expect(chapters.map(({ startMs }) => startMs)).toEqual(made.chapters.map(({ startMs }) => startMs));
          expect(chapters.map(({ endMs }) => endMs)).toEqual([
            ...made.chapters.slice(1).map(({ startMs }) => startMs),
            made.endMs,
          ]);
          expect(chapters.map(({ title }) => title)).toEqual(made.chapters.map(({ title }) => inPlainLine(title)));
        },
      ),
      { numRuns: 400 },
    );
  });

  it('the parser does find fault: 1 error where the arrow is put back', () => {
    const text = chaptersVtt(chaptersIn(filmed([])), head).replace('Start', 'a --> b');
    expect(readVtt(text).errors.length).toBeGreaterThan(0);
  });
});
