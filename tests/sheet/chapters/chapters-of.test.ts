import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../../src/grading/grade-record.ts';
import { NO_LIVE_TESTS } from '../../../src/record/fold-live-tests.ts';
import { LIVE_TEST_SUBJECTS } from '../../../src/schema/live-tests/live-tests.ts';
import { chaptersOf } from '../../../src/sheet/chapters/chapters-of.ts';
import { MARKED_TESTS } from '../../../src/sheet/chapters/marked-tests.ts';
import { takeTitle } from '../../../src/sheet/chapters/take-title.ts';
import { testTitle } from '../../../src/sheet/chapters/test-title.ts';
import { HUT_CHECKLIST, hutPhoto, stampAt } from '../hut-pack.ts';
import { BEGAN_MS, chaptersIn, filmed, markAt, TAKE_ID } from './film.ts';

const told = (record: ReturnType<typeof filmed>) =>
  chaptersIn(record).chapters.map(({ startMs, title }) => `${startMs / 1000} ${title}`);
const made = stampAt(BEGAN_MS);

describe('chaptersOf', () => {
  it('names answer, photo and trip as the record has them now: 4 chapters from 0 s, the last until 600 s', () => {
    const tripId = 'b'.repeat(32);
    const record = filmed(
      [
        markAt(61.5, { subject: 'answer', part: 'cell-vents' }),
        markAt(125, { subject: 'photo', part: hutPhoto(2).id }),
        markAt(300, { subject: 'trip', part: tripId }),
      ],
      {
        record: {
          photos: [hutPhoto(1), hutPhoto(2)],
          tests: { ...NO_LIVE_TESTS, trips: [{ id: tripId, currentA: 150, heldForS: 60, opened: false, made }] },
        },
      },
    );
    // The vents were told sound or passable: a safety item, passable by the told rule.
    expect(told(record)).toEqual([
      '0 Start',
      '61.5 Cell vents: passable',
      '125 Photo 2',
      '300 Over-current trip: 150\u00a0A',
    ]);
    expect(chaptersIn(record)).toMatchObject({ endMs: 600_000, beforeStartCount: 0, goneCount: 0, shortCount: 0 });
  });

  it('follows a grade that was corrected after the take: failed, then not seen, then left out once it is gone', () => {
    const marks = [markAt(30, { subject: 'answer', part: 'tidy' })];
    const graded = { kind: 'grade', grade: 'failed', evidence: 'seen' } as const;
    expect(told(filmed(marks, { record: { answers: { tidy: graded } } }))[1]).toBe('30 Tidy runs: failed');
    const notSeen = { kind: 'notSeen', reason: 'dark' } as const;
    expect(told(filmed(marks, { record: { answers: { tidy: notSeen } } }))[1]).toBe('30 Tidy runs: not seen');
    const none = filmed(marks, { record: { answers: {} } });
    expect(told(none)).toEqual(['0 Start']);
    expect(chaptersIn(none).goneCount).toBe(1);
  });

  it('moves every mark by the offset: −30 s puts those of 12 s and 20 s at 0 and says 2, +2.5 s moves all later', () => {
    const marks = [markAt(12, { label: 'one' }), markAt(20, { label: 'two' }), markAt(90, { label: 'three' })];
    const earlier = filmed(marks, { offsetMs: -30_000 });
    expect(told(earlier)).toEqual(['0 one · two', '60 three']);
    expect(chaptersIn(earlier)).toMatchObject({ beforeStartCount: 2, endMs: 570_000 });
    expect(told(filmed(marks, { offsetMs: 2500 }))).toEqual(['0 Start', '14.5 one', '22.5 two', '92.5 three']);
  });

  it('joins marks nearer than 1 s to the chapter’s start into one title; at 1 s sharp it is a chapter of its own', () => {
    const marks = [10, 10.4, 10.999, 11, 11.5].map((seconds) => markAt(seconds, { label: `m${seconds}` }));
    expect(told(filmed(marks))).toEqual(['0 Start', '10 m10 · m10.4 · m10.999', '11 m11 · m11.5']);
    expect(told(filmed([markAt(0.999, { label: 'at once' })]))).toEqual(['0 at once']);
    expect(told(filmed([markAt(1, { label: 'soon' })]))).toEqual(['0 Start', '1 soon']);
  });

  it('counts the chapters shorter than 10 s, the last by the end of the take: 3 of 4', () => {
    const marks = [markAt(9.999), markAt(20), markAt(25)];
    const short = chaptersIn(filmed(marks, { lastsS: 34.999 }));
    expect(short.chapters).toHaveLength(4);
    expect(short.shortCount).toBe(3);
    expect(chaptersIn(filmed(marks, { lastsS: 35 })).shortCount).toBe(2);
  });

  it('a take that ends before its last mark lasts a second past it; one without marks is one chapter “Start”', () => {
    expect(chaptersIn(filmed([markAt(50)], { lastsS: 40 })).endMs).toBe(51_000);
    expect(told(filmed([]))).toEqual(['0 Start']);
  });

  it('gives null for a take that is not there, and for one that still runs', () => {
    const record = filmed([]);
    const titled = { definition: HUT_CHECKLIST, grading: gradeRecord(HUT_CHECKLIST, record) };
    expect(chaptersOf(record, titled, 'f'.repeat(32))).toBeNull();
    const { endedAtMs, ...running } = record.takes[0] ?? { id: '', startedAtMs: 0, made, marks: [] };
    expect(chaptersOf({ ...record, takes: [running] }, titled, TAKE_ID)).toBeNull();
    expect(endedAtMs).toBe(BEGAN_MS + 600_000);
  });

  it('numbers the tester’s marks without a label among themselves: Mark 1, Mark 2', () => {
    expect(told(filmed([markAt(20), markAt(40, { label: 'Lid' }), markAt(60)]))).toEqual([
      '0 Start',
      '20 Mark 1',
      '40 Lid',
      '60 Mark 2',
    ]);
  });

  it('for any marks and offset: first at 0, starts at least 1 s apart, the end after the last, no mark lost', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 0, max: 600_000 }), { maxLength: 30 }),
        fc.integer({ min: -400_000, max: 400_000 }),
        (momentsMs, offsetMs) => {
          const marks = momentsMs.sort((a, b) => a - b).map((ms, place) => markAt(ms / 1000, { label: `<${place}>` }));
          const { chapters, endMs } = chaptersIn(filmed(marks, { offsetMs }));
          expect(chapters[0]?.startMs).toBe(0);
          chapters.slice(1).forEach(({ startMs }, place) => {
            expect(startMs - (chapters[place]?.startMs ?? Number.NaN)).toBeGreaterThanOrEqual(1000);
          });
          expect(endMs).toBeGreaterThan(chapters.at(-1)?.startMs ?? Number.NaN);
          const titles = chapters.map(({ title }) => title).join(' ');
          for (const place of marks.keys()) expect(titles).toContain(`<${place}>`);
        },
      ),
    );
  });
});

describe('what a test is called', () => {
  const id = 'b'.repeat(32);
  const tests = {
    ...NO_LIVE_TESTS,
    runs: [{ id, made, label: '0.2C first', currentA: 20 }],
    cutOffs: [{ id, made, kind: 'hotCharge' as const, acted: true }],
    drains: [{ id, made, currentMa: 9.5 }],
    resistances: [{ id, made, method: 'pulse' as const, of: 'cell' as const, cellNumber: 3 }],
    readOuts: [{ id, made, way: 'cable' as const }],
  };
  it.each([
    ['run', 'Capacity run: 0.2C first'],
    ['cutOff', 'Cut-off test: hot, charging'],
    ['drain', 'Standby drain: 9.5\u00a0mA'],
    ['resistance', 'DC resistance: cell 3'],
    ['readOut', 'BMS read-out'],
    ['trip', null],
    ['instrument', null],
  ])('%s is “%s”', (subject, title) => {
    expect(testTitle({ subject, part: id }, tests)).toBe(title);
  });

  it('12 subjects have a name, each a subject of live tests', () => {
    expect(MARKED_TESTS).toHaveLength(12);
    for (const subject of MARKED_TESTS) expect(Object.keys(LIVE_TEST_SUBJECTS)).toContain(subject);
  });
});

it('a take is called by its label, else by its number: Take 2', () => {
  const takes = [{ id: 'a' }, { id: 'b' }];
  expect(takeTitle({ id: 'b' }, takes)).toBe('Take 2');
  expect(takeTitle({ id: 'b', label: 'Lid off' }, takes)).toBe('Lid off');
});
