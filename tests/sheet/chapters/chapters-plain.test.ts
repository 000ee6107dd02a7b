import fc from 'fast-check';
import { expect, it } from 'vitest';
import { chaptersPlain } from '../../../src/sheet/chapters/chapters-plain.ts';
import { disclosureOf } from '../../../src/sheet/model/disclosure.ts';
import { hutRecord } from '../hut-pack.ts';
import { chaptersIn, filmed, markAt } from './film.ts';

const DISCLOSURE = disclosureOf(hutRecord());
/** m:ss or h:mm:ss, one space, words: written apart from the code under test. */
const LINE = /^(?:(\d+):([0-5]\d)|(\d?\d)):([0-5]\d) (\S.*)$/;

it('writes 0:00 first, minutes without a leading nought, h:mm:ss past 1 h, the disclosure last', () => {
  const marks = [markAt(61.9, { label: 'Lid off' }), markAt(3723, { label: 'Vents' })];
  expect(chaptersPlain(chaptersIn(filmed(marks, { lastsS: 4000 })), DISCLOSURE)).toBe(
    `0:00 Start\n1:01 Lid off\n1:02:03 Vents\n\n${DISCLOSURE.line}\n`,
  );
});

it('is read back by a pattern: each start to the whole second, each line one chapter, whatever is in the words', () => {
  const label = fc.string({ unit: 'binary', minLength: 1, maxLength: 20 });
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.integer({ min: 0, max: 40_000_000 }), label), { maxLength: 8 }), (given) => {
      const marks = given.sort(([a], [b]) => a - b).map(([ms, words]) => markAt(ms / 1000, { label: words }));
      const made = chaptersIn(filmed(marks));
      const lines = chaptersPlain(made, DISCLOSURE).trimEnd().split('\n');
      expect(lines.slice(-2)).toEqual(['', DISCLOSURE.line]);
      const seconds = lines.slice(0, -2).map((line) => {
        const [, hours, minutesOfHour, minutes, second] = LINE.exec(line) ?? [];
        return Number(hours ?? 0) * 3600 + Number(minutesOfHour ?? minutes) * 60 + Number(second);
      });
      expect(seconds).toEqual(made.chapters.map(({ startMs }) => Math.floor(startMs / 1000)));
      expect(new Set(seconds).size).toBe(seconds.length);
    }),
    { numRuns: 300 },
  );
});
