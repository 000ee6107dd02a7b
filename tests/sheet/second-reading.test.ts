import { describe, expect, it } from 'vitest';
import type { PackRecord } from '../../src/record/pack-record.ts';
import { figuresOf } from '../../src/sheet/model/sealed/figures-of.ts';
import { lineNames } from '../../src/sheet/model/sealed/line-names.ts';
import type { Block } from '../../src/sheet/model/sheet.ts';
import { HUT_CHECKLIST, hutPhoto, hutRecord, hutSheet, NEWEST_MS, stampAt } from './hut-pack.ts';

const graded = (grade: 'sound' | 'passable' | 'weak' | 'failed') => ({ kind: 'grade', grade }) as const;
type Reader = PackRecord['secondReaders'][number];
const reader = (given: Partial<Reader>): Reader => ({
  id: '1'.repeat(32),
  made: stampAt(NEWEST_MS),
  blind: true,
  finishedAtMs: NEWEST_MS,
  answers: {},
  ...given,
});

/**
 * The first reader (hut-pack.ts): lid not seen, label weak, lug failed, tidy sound, vents told passable, swollen sound;
 * the floor is excluded. The second: lid sound, label passable, lug failed, tidy weak, vents cannot be told.
 */
const READ = reader({
  label: 'M. R.',
  answers: {
    'case-lid': graded('sound'),
    'case-label': graded('passable'),
    'main-lug': graded('failed'),
    tidy: graded('weak'),
    'cell-vents': { kind: 'cannotTell' },
  },
});
const photos = ['enclosure', 'wiring', 'vents'].map((zone, place) => hutPhoto(place, { zone }));
const withReaders = (secondReaders: Reader[]) => hutRecord({ photos, secondReaders });
const blocksOf = (record: PackRecord): Block[] =>
  hutSheet(record).sections.find(({ id }) => id === 'secondReading')?.blocks ?? [];

describe('on the sheet', () => {
  const blocks = blocksOf(withReaders([READ]));

  // Pairs: label weak–passable, lug failed–failed, tidy sound–weak. Weights 2/3, 1, 1/3: found 2/3. Rows weak, failed,
  // sound and columns passable, failed, weak, a third each: by chance (2/3+2/3+1 + 1/3+1+2/3 + 2/3+0+1/3)/9 = 16/27.
  // Kappa (18 − 16)/(27 − 16) = 2/11 = 0.18.
  it('says kappa 0.18, the same grade on 1 of 3, and 1 two grades apart', () => {
    const figures = blocks.flatMap((block) => (block.kind === 'figures' ? block.figures : []));
    expect(figures.map(({ value }) => value)).toEqual(['0.18', '1 of 3', '1']);
  });

  it('names the reader, what the first gave against what the second gave, and both differences, the further first', () => {
    expect(blocks[0]).toEqual({ kind: 'subhead', text: 'Second reader 1: M. R.' });
    expect(blocks.flatMap((block) => (block.kind === 'list' ? block.items : []))).toEqual([
      { text: 'Tidy runs', detail: 'first sound, second weak · 2 grades apart' },
      { text: 'Label', detail: 'first weak, second passable' },
    ]);
    expect(blocks.flatMap((block) => (block.kind === 'table' ? block.rows : []))).toEqual([
      { label: 'sound', value: '1\u00a0weak' },
      { label: 'weak', value: '1\u00a0passable' },
      { label: 'failed', value: '1\u00a0failed' },
      { label: 'first reader: not seen', value: '1 item' },
      { label: 'second reader: cannot tell from the photos', value: '1 item' },
      { label: 'second reader: not answered', value: '1 item' },
    ]);
  });

  it('has 0 blocks of a reading that was begun and not finished, and of none', () => {
    const { finishedAtMs: _, ...begun } = READ;
    expect(blocksOf(withReaders([begun]))).toEqual([]);
    expect(blocksOf(withReaders([]))).toEqual([]);
  });

  it('keeps the number of the second of two, and says that it was not blind', () => {
    const { finishedAtMs: _, ...begun } = READ;
    const two = blocksOf(withReaders([begun, reader({ id: '2'.repeat(32), blind: false })]));
    expect(two[0]).toEqual({ kind: 'subhead', text: 'Second reader 2' });
    expect(JSON.stringify(two[1])).toContain('It was not said that the grades were unknown to them.');
    expect(two.flatMap((block) => (block.kind === 'figures' ? [block.figures[0]?.value] : []))).toEqual([
      'cannot be told',
    ]);
  });
});

describe('sealed', () => {
  const figuresFor = (record: PackRecord) => figuresOf({ definition: HUT_CHECKLIST, earlier: null, record });
  const own = (record: PackRecord) =>
    Object.entries(figuresFor(record)).filter(([path]) => path.startsWith('secondReaders'));

  it('adds no line where no reading is finished: sheets sealed before recheck the same', () => {
    const { finishedAtMs: _, ...begun } = READ;
    expect(own(withReaders([begun]))).toEqual([]);
    expect(Object.keys(figuresFor(withReaders([begun])))).toEqual(Object.keys(figuresFor(hutRecord())));
  });

  it('holds kappa 2/11, counts and differences by the reader’s number', () => {
    const lines = Object.fromEntries(own(withReaders([READ])));
    expect(lines).toMatchObject({
      secondReaders: '1',
      'secondReaders/1/shownCount': 6,
      'secondReaders/1/pairCount': 3,
      'secondReaders/1/counts/weak/passable': 1,
      'secondReaders/1/differences': 'tidy, case-label',
      'secondReaders/1/differences/tidy/second': 'weak',
      'secondReaders/1/leftOut/firstNotSeen': 1,
    });
    expect(lines['secondReaders/1/kappa']).toBeCloseTo(2 / 11, 12);
  });

  it('is named in words', () => {
    const names = lineNames([HUT_CHECKLIST], hutRecord().tests);
    expect(names.path('secondReaders/1/kappa')).toBe('Second reader 1, kappa');
    expect(names.path('secondReaders/1/interval/low')).toBe('Second reader 1, interval low');
    expect(names.path('secondReaders/1/counts/weak/passable')).toBe('Second reader 1, first reader, weak, passable');
    expect(names.path('secondReaders/1/differences/tidy/second')).toBe('Second reader 1, differs on Tidy runs, second');
  });
});
