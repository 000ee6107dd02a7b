import { describe, expect, it } from 'vitest';
import { nextRevision } from '../../src/record/fold-closings.ts';
import { foldRecord } from '../../src/record/fold-record.ts';
import type { Entry } from '../../src/schema/entry.ts';
import {
  attachmentValue,
  closingValue,
  entry,
  HASH_1,
  HASH_2,
  HASH_3,
  OTHER_DEVICE,
  PACK,
  stampAt,
  tombstone,
} from './made-entries.ts';

const ID_1 = '1'.repeat(32);
const ID_2 = '2'.repeat(32);
const ID_3 = '3'.repeat(32);

const made = entry('pack', 'made', {}, 1000);
const first = entry('closing', HASH_1, closingValue(1), 10_000);
const second = entry('closing', HASH_2, closingValue(2, { after: HASH_1, reason: 'A photo was found.' }), 20_000);
const opened = (id: string, after: string, ms: number, reason = 'A photo was found.') =>
  entry('reopening', id, { after, reason, openedAtMs: ms }, ms);
const fold = (...entries: Entry[]) => foldRecord(PACK, Object.freeze([made, ...entries]) as Entry[]);

describe('how a sheet stands', () => {
  it('never closed is open, and the next closing is revision 1', () => {
    const record = fold();
    expect(record.sheet).toEqual({ now: 'open' });
    expect(nextRevision(record)).toBe(1);
  });

  it('closed once is closed as revision 1; the next is 2', () => {
    const record = fold(first);
    expect(record.sheet).toEqual({ now: 'closed', sha256: HASH_1, revision: 1 });
    expect(nextRevision(record)).toBe(2);
  });

  it('closed by two phones at 10000 and 10500 ms counts as the later one; both stay listed, and the next is 2', () => {
    const other = { ...entry('closing', HASH_3, closingValue(1)), at: stampAt(10_500, OTHER_DEVICE), by: OTHER_DEVICE };
    for (const record of [fold(first, other), fold(other, first)]) {
      expect(record.sheet).toEqual({ now: 'closed', sha256: HASH_3, revision: 1 });
      expect(record.closings.map(({ sha256 }) => sha256)).toEqual([HASH_1, HASH_3]);
      expect(nextRevision(record)).toBe(2);
    }
  });

  it('closed by two phones in the same millisecond counts as that of the higher device, however they come in', () => {
    const other = { ...entry('closing', HASH_3, closingValue(1)), at: stampAt(10_000, OTHER_DEVICE), by: OTHER_DEVICE };
    expect(fold(first, other).sheet).toMatchObject({ sha256: HASH_3 });
    expect(fold(other, first).sheet).toMatchObject({ sha256: HASH_3 });
  });

  it('opened again is being revised, with reason and time', () => {
    expect(fold(first, opened(ID_1, HASH_1, 15_000)).sheet).toEqual({
      now: 'revising',
      sha256: HASH_1,
      revision: 1,
      reason: 'A photo was found.',
      openedAtMs: 15_000,
    });
  });

  it('opened again twice, by two phones, gives the later reason', () => {
    const record = fold(first, opened(ID_2, HASH_1, 16_000, 'The mass was wrong.'), opened(ID_1, HASH_1, 15_000));
    expect(record.sheet).toMatchObject({ now: 'revising', reason: 'The mass was wrong.', openedAtMs: 16_000 });
    expect(record.reopenings.map(({ id }) => id)).toEqual([ID_1, ID_2]);
  });

  it('opened again and closed as revision 2 is closed', () => {
    const record = fold(first, opened(ID_1, HASH_1, 15_000), second);
    expect(record.sheet).toEqual({ now: 'closed', sha256: HASH_2, revision: 2 });
    expect(record.closings.map(({ revision, after }) => [revision, after])).toEqual([
      [1, undefined],
      [2, HASH_1],
    ]);
    expect(nextRevision(record)).toBe(3);
  });

  it('stays closed as revision 2 when another phone opened revision 1 later', () => {
    const record = fold(first, second, opened(ID_1, HASH_1, 25_000));
    expect(record.sheet).toEqual({ now: 'closed', sha256: HASH_2, revision: 2 });
    expect(record.reopenings).toHaveLength(1);
  });

  it('with revision 2 opened is being revised after revision 2', () => {
    expect(fold(first, second, opened(ID_1, HASH_2, 25_000)).sheet).toMatchObject({ now: 'revising', revision: 2 });
  });
});

describe('attachments', () => {
  const attached = (id: string, ms: number) => entry('attachment', id, attachmentValue('correction', HASH_1), ms);

  it('stand in the order in which they were made, not that of their ids', () => {
    const record = fold(first, attached(ID_1, 13_000), attached(ID_3, 11_000), attached(ID_2, 12_000));
    expect(record.attachments.map(({ id }) => id)).toEqual([ID_3, ID_2, ID_1]);
    expect(record.attachments[0]).toEqual({ ...attachmentValue('correction', HASH_1), id: ID_3 });
  });

  it('that were taken away are gone, and the sheet stays closed', () => {
    const record = fold(first, attached(ID_1, 11_000), attached(ID_2, 12_000), tombstone('attachment', ID_1, 13_000));
    expect(record.attachments.map(({ id }) => id)).toEqual([ID_2]);
    expect(record.sheet).toEqual({ now: 'closed', sha256: HASH_1, revision: 1 });
  });
});

describe('the date of the sheet', () => {
  const graded = entry('words', 'opinion', 'Neat work.', 5000);

  it('is that of what it says, 5000 ms: closing, opening, attaching and putting away do not move it', () => {
    const record = fold(
      graded,
      first,
      opened(ID_1, HASH_1, 15_000),
      entry('attachment', ID_1, attachmentValue('makerReply', HASH_1), 16_000),
      { ...made, at: stampAt(17_000) },
    );
    expect([record.sheetAt, record.newestAt]).toEqual([stampAt(5000), stampAt(17_000)]);
  });

  it('moves to 18000 ms with a change, and with a change that takes something away', () => {
    expect(fold(graded, first, entry('words', 'opinion', 'Poor.', 18_000)).sheetAt).toBe(stampAt(18_000));
    expect(fold(graded, first, tombstone('words', 'opinion', 18_000)).sheetAt).toBe(stampAt(18_000));
  });
});
