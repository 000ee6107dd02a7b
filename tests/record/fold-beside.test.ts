import { describe, expect, it } from 'vitest';
import { foldRecord } from '../../src/record/fold-record.ts';
import { entriesText, isOfTheSheet } from '../../src/record/sealed-entries.ts';
import type { Entry } from '../../src/schema/entry.ts';
import { entry, HASH_1, HASH_2, HASH_3, PACK, stampAt, tombstone, voiceValue } from './made-entries.ts';

const ID_1 = '1'.repeat(32);
const ID_2 = '2'.repeat(32);
const ID_3 = '3'.repeat(32);
const fold = (...entries: Entry[]) => foldRecord(PACK, entries);

const price = (made = stampAt(1000)) => ({ kind: 'price', price: 399, currency: 'EUR', made });
const take = (made = stampAt(1000)) => ({ startedAtMs: 5000, endedAtMs: 9000, offsetMs: -250, made });
const word = (atMs: number) => ({ kind: 'word', label: 'the lid', atMs });
const reader = (made = stampAt(1000)) => ({ blind: true, made });
const weak = { kind: 'grade', grade: 'weak' };
const ids = (named: readonly { id: string }[]) => named.map(({ id }) => id);

describe('order', () => {
  it('is that in which they were made, of 3 offers, takes, readers and voices, whatever their ids and stamps', () => {
    const made = [stampAt(3000), stampAt(1000), stampAt(2000)];
    const each = (subject: string, parts: string[], value: (made: string | undefined) => unknown) =>
      parts.map((part, i) => entry(subject, part, value(made[i]), 9000 - i));
    const record = fold(
      ...each('offer', [ID_1, ID_2, ID_3], price),
      ...each('take', [ID_1, ID_2, ID_3], take),
      ...each('secondReader', [ID_1, ID_2, ID_3], reader),
      ...each('voice', [HASH_1, HASH_2, HASH_3], voiceValue),
    );
    for (const named of [record.offers, record.takes, record.secondReaders]) expect(ids(named)).toEqual([ID_2, ID_3, ID_1]); // biome-ignore format: one line
    expect(ids(record.voices)).toEqual([HASH_2, HASH_3, HASH_1]);
  });

  it('is that of their ids where two were made under one stamp', () => {
    const both = [entry('offer', ID_2, price()), entry('offer', ID_1, price())];
    expect(ids(fold(...both).offers)).toEqual([ID_1, ID_2]);
    expect(fold(...both)).toEqual(fold(...both.toReversed()));
  });

  it('of marks is that of their time, then of their ids: 6000, 7000 with two ids', () => {
    const { takes } = fold(
      entry('takeMark', `${ID_1}/${ID_3}`, word(7000)),
      entry('takeMark', `${ID_1}/${ID_2}`, word(7000)),
      entry('takeMark', `${ID_1}/${ID_1}`, word(6000)),
      entry('take', ID_1, take()),
    );
    expect(takes[0]?.marks.map(({ id, atMs }) => [id, atMs])).toEqual([
      [ID_1, 6000],
      [ID_2, 7000],
      [ID_3, 7000],
    ]);
  });
});

describe('members', () => {
  it('lie each under its own: 1 mark in one take, 2 in the other; 1 answer of one reader, 2 of the other', () => {
    const record = fold(
      entry('take', ID_1, take()),
      entry('take', ID_2, take()),
      entry('takeMark', `${ID_1}/${ID_1}`, word(6000)),
      entry('takeMark', `${ID_2}/${ID_1}`, word(6000)),
      entry('takeMark', `${ID_2}/${ID_2}`, word(7000)),
      entry('secondReader', ID_1, reader()),
      entry('secondReader', ID_2, reader()),
      entry('secondAnswer', `${ID_1}/cell-vents`, weak),
      entry('secondAnswer', `${ID_2}/cell-vents`, { kind: 'cannotTell' }),
      entry('secondAnswer', `${ID_2}/bus-bars`, weak),
    );
    expect(record.takes.map(({ id, marks }) => [id, marks.length])).toEqual([
      [ID_1, 1],
      [ID_2, 2],
    ]);
    expect(record.secondReaders.map(({ id, answers }) => [id, answers])).toEqual([
      [ID_1, { 'cell-vents': weak }],
      [ID_2, { 'cell-vents': { kind: 'cannotTell' }, 'bus-bars': weak }],
    ]);
  });

  it('of a take or a reader that is gone, or has not come, are left alone: 0 takes, 0 readers, none set aside', () => {
    const record = fold(
      tombstone('take', ID_1),
      entry('takeMark', `${ID_1}/${ID_2}`, word(6000)),
      entry('takeMark', `${ID_3}/${ID_2}`, word(6000)),
      entry('secondAnswer', `${ID_3}/cell-vents`, weak),
    );
    expect(record).toMatchObject({ takes: [], secondReaders: [], setAside: [] });
  });

  it('that are deleted go alone', () => {
    const { takes, secondReaders } = fold(
      entry('take', ID_1, take()),
      tombstone('takeMark', `${ID_1}/${ID_2}`),
      entry('secondReader', ID_1, reader()),
      tombstone('secondAnswer', `${ID_1}/cell-vents`),
    );
    expect([takes[0]?.marks, secondReaders[0]?.answers]).toEqual([[], {}]);
  });
});

describe('names', () => {
  it('of a remedy and an item may be "constructor": absent ones stay absent, and neither is a function', () => {
    const without = fold(entry('secondReader', ID_1, reader()));
    expect([without.remedyNotes.constructor, without.secondReaders[0]?.answers.constructor]).toEqual([undefined, undefined]); // biome-ignore format: one line
    const { remedyNotes, secondReaders } = fold(
      entry('remedyNote', 'constructor', { timeMin: 5 }),
      entry('secondReader', ID_1, reader()),
      entry('secondAnswer', `${ID_1}/constructor`, weak),
    );
    expect(remedyNotes.constructor).toEqual({ timeMin: 5 });
    expect(secondReaders[0]?.answers.constructor).toEqual(weak);
  });
});

describe('what is sealed', () => {
  it('leaves out offers, takes and their marks: the text is the same with and without', () => {
    const sheet = [entry('nameplate', 'name', 'Wren 24'), entry('voice', HASH_1, voiceValue())];
    const around = [
      entry('offer', ID_1, price()),
      entry('take', ID_1, take()),
      entry('takeMark', `${ID_1}/${ID_1}`, word(6000)),
    ];
    expect(entriesText([...sheet, ...around])).toBe(entriesText(sheet));
  });

  it.each([
    ['remedyNote', 'turn-lug'],
    ['secondReader', ID_1],
    ['secondAnswer', `${ID_1}/cell-vents`],
    ['voice', HASH_1],
  ])('holds a %s: a change of it is one of the sheet', (subject, part) => {
    expect(isOfTheSheet([PACK, subject, part])).toBe(true);
  });

  it('is not changed by a price that is deleted later', () => {
    expect(fold(entry('nameplate', 'name', 'Wren 24'), tombstone('offer', ID_1, 8000)).sheetAt).toBe(stampAt(1000));
  });
});
