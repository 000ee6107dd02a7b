import { describe, expect, it } from 'vitest';
import { checkEntry } from '../../src/schema/check-entry.ts';
import { ENTRY_SUBJECTS } from '../../src/schema/entry.ts';
import { entry, tombstone } from '../record/made-entries.ts';
import { BESIDE_VALUES, type BesideSubject, type BesideValue } from './beside-values.ts';
import { type FieldKind, from0, KINDS, oneOf } from './live-tests/field-kinds.ts';

const ID = '4'.repeat(32);
const HASH = 'f'.repeat(64);
const SUBJECTS = Object.keys(BESIDE_VALUES) as BesideSubject[];

const refuse = (...given: readonly (readonly [unknown, string])[]) => given;
/** A number from the one to the other, both taken. */
const between = (least: number, most: number, ...more: [unknown, string][]): FieldKind => ({
  takes: [least, most],
  refuses: refuse(
    [least - 1, `Invalid value: Expected >=${least} but received ${least - 1}`],
    [most + 1, `Invalid value: Expected <=${most} but received ${most + 1}`],
    ...more,
  ),
});
const half: [number, string] = [1.5, 'Invalid integer: Received 1.5'];
const currency: FieldKind = {
  takes: ['EUR'],
  refuses: ['eur', 'EURO', '€', ''].map((given) => [given, 'must be a three-letter currency code'] as const),
};
const moment = between(0, 253_370_764_800_000);
/** A thousand thousand million, 10¹², of any currency; 10⁷ minutes are nineteen years. */
const money = from0(1e12);

/** What each field takes just inside its bounds and refuses just outside; limits by hand from the shapes' own words. */
const FIELDS: readonly [subject: BesideSubject, field: string, kind: FieldKind, which?: number][] = [
  ['offer', 'kind', oneOf('price', 'option')],
  ['offer', 'label', KINDS.line],
  ['offer', 'price', money],
  ['offer', 'currency', currency],
  ['offer', 'pricedOn', KINDS.day],
  ['offer', 'seller', KINDS.line],
  ['offer', 'made', KINDS.stamp],
  ['remedyNote', 'price', money],
  ['remedyNote', 'currency', currency],
  ['remedyNote', 'pricedOn', KINDS.day],
  ['remedyNote', 'parts', KINDS.line],
  ['remedyNote', 'timeMin', from0(1e7)],
  ['remedyNote', 'note', KINDS.note],
  ['take', 'label', KINDS.line],
  ['take', 'startedAtMs', moment],
  ['take', 'endedAtMs', moment],
  // A day of 86 400 000 ms either way.
  ['take', 'offsetMs', between(-86_400_000, 86_400_000, half)],
  ['take', 'made', KINDS.stamp],
  ['takeMark', 'atMs', moment],
  ['takeMark', 'atMs', moment, 1],
  ['takeMark', 'label', KINDS.line, 1],
  ['secondReader', 'label', KINDS.line],
  ['secondReader', 'blind', KINDS.yesNo],
  ['secondReader', 'finishedAtMs', moment],
  ['secondReader', 'made', KINDS.stamp],
  ['secondAnswer', 'grade', oneOf('sound', 'passable', 'weak', 'failed')],
  ['secondAnswer', 'note', KINDS.note],
  ['secondAnswer', 'note', KINDS.note, 1],
  ['secondAnswer', 'note', KINDS.note, 2],
  ['voice', 'type', oneOf('audio/webm', 'audio/mp4', 'audio/ogg')],
  // Ten times 1 048 576 bytes; five minutes and ten seconds for a recorder that stops late.
  ['voice', 'byteCount', between(1, 10_485_760, half)],
  ['voice', 'durationS', between(0, 310)],
  ['voice', 'made', KINDS.stamp],
  ['voice', 'label', KINDS.line],
];

function fullValue(subject: BesideSubject, which = 0): BesideValue {
  const found = (BESIDE_VALUES[subject] as readonly BesideValue[])[which];
  if (found === undefined) throw new RangeError(`${subject} has no value ${which}`);
  return found;
}

const check = (subject: string, part: string, v: unknown) => checkEntry(entry(subject, part, v));

it('has 7 subjects, each of them one that an entry may have', () => {
  expect(SUBJECTS).toHaveLength(7);
  expect(SUBJECTS.filter((subject) => !Object.hasOwn(ENTRY_SUBJECTS, subject))).toEqual([]);
});

describe('fields', () => {
  it('are all tried: none of a full value is left out but `on`, `subject`, `part` and `firstGrades`, tried below, and kinds', () => {
    const apart = ['on', 'subject', 'part', 'firstGrades'];
    for (const subject of SUBJECTS) {
      const known = new Set(
        (BESIDE_VALUES[subject] as readonly BesideValue[]).flatMap(({ value }) => Object.keys(value)),
      );
      const tried = new Set<string>(FIELDS.filter(([of]) => of === subject).map(([, field]) => field));
      const left = [...known].filter((field) => !tried.has(field) && !apart.includes(field) && field !== 'kind');
      expect([subject, left]).toEqual([subject, []]);
    }
  });

  it.each(FIELDS)('%s.%s takes what lies just inside its bounds', (subject, field, kind, which) => {
    const { part, value } = fullValue(subject, which);
    for (const given of kind.takes) {
      const checked = check(subject, part, { ...value, [field]: given });
      expect(checked.ok ? [] : [given, checked.reason]).toEqual([]);
    }
  });

  it.each(FIELDS)('%s.%s refuses what lies just outside, naming it', (subject, field, kind, which) => {
    const { part, value } = fullValue(subject, which);
    expect(kind.refuses.length).toBeGreaterThan(0);
    for (const [given, reason] of kind.refuses) {
      expect(check(subject, part, { ...value, [field]: given })).toEqual({ ok: false, reason: `${field}: ${reason}` });
    }
  });

  it.each([
    ['an item', { kind: 'item', id: 'cell-vents' }, true],
    ['a photo', { kind: 'photo', id: HASH }, true],
    ['an item by capitals', { kind: 'item', id: 'Cell vents' }, false],
    ['a photo by a random id', { kind: 'photo', id: ID }, false],
    ['a pack', { kind: 'pack', id: ID }, false],
    ['nothing', null, false],
  ])('a voice note may be on %s, or not', (_, on, fits) => {
    const { part, value } = fullValue('voice');
    const checked = check('voice', part, { ...value, on });
    expect(checked.ok).toBe(fits);
    if (!checked.ok) expect(checked.reason).toMatch(/^on/);
  });

  it.each([
    ['a grade no item has', { tidy: 'spotless' }],
    ['an item by capitals', { Tidy: 'weak' }],
    ['a word', 'weak'],
  ])('a finished reading refuses %s among the first grades', (_, firstGrades) => {
    const { part, value } = fullValue('secondReader');
    const checked = check('secondReader', part, { ...value, firstGrades });
    expect(checked).toMatchObject({ ok: false, reason: expect.stringContaining('firstGrades') });
  });

  it.each([
    ['subject', ''],
    ['subject', 'x'.repeat(41)],
    ['subject', 'two words'],
    ['part', ''],
    ['part', 'x'.repeat(201)],
  ])('a mark refuses %s %j', (field, given) => {
    const { part, value } = fullValue('takeMark');
    expect(check('takeMark', part, { ...value, [field]: given })).toMatchObject({ ok: false, reason: expect.stringContaining(`${field}: `) }); // biome-ignore format: one line
  });
});

describe.each(
  SUBJECTS.flatMap((subject) =>
    (BESIDE_VALUES[subject] as readonly BesideValue[]).map((one): [string, string, BesideValue] => [
      subject,
      String(one.value.kind ?? ''),
      one,
    ]),
  ),
)('%s %s', (subject, _, { part, value, needed }) => {
  it('passes with every field, unchanged, and with one of a newer version', () => {
    const given = Object.freeze(entry(subject, part, Object.freeze({ ...value, moonPhase: 'waning' })));
    expect(checkEntry(given)).toEqual({ ok: true, entry: given, known: true });
  });

  it('passes with only what it must say', () => {
    const least = Object.fromEntries(Object.entries(value).filter(([field]) => needed.includes(field)));
    expect(check(subject, part, least)).toMatchObject({ ok: true, known: true });
  });

  it.each([...needed])('is refused without %s, which is named', (field) => {
    const { [field]: _, ...rest } = value;
    const checked = check(subject, part, rest);
    expect(checked.ok ? 'accepted' : checked.reason).toMatch(new RegExp(`^${field}: `));
  });

  it.each([
    ['null', null],
    ['a word', 'word'],
    ['a list', []],
    ['a number', 1],
  ])('is refused as %s', (_, v) => {
    expect(check(subject, part, v)).toMatchObject({ ok: false });
  });

  it('may be deleted', () => {
    expect(checkEntry(tombstone(subject, part))).toMatchObject({ ok: true, known: true });
  });
});

describe('parts', () => {
  const PARTS: [part: string, fitting: BesideSubject[]][] = [
    [ID, ['offer', 'take', 'secondReader']],
    // Sixty-four letters are a name as well.
    [HASH, ['voice', 'remedyNote']],
    ['cell-vents', ['remedyNote']],
    ['constructor', ['remedyNote']],
    [`${ID}/${ID}`, ['takeMark', 'secondAnswer']],
    [`${ID}/cell-vents`, ['secondAnswer']],
    [`${ID}/`, []],
    [`${ID}/${ID}/1`, []],
    [ID.slice(1), []],
    [HASH.toUpperCase(), []],
    ['__proto__', []],
    ['Cell vents', []],
  ];
  it.each(PARTS)('%s fits those subjects whose parts look so, and no other', (part, fitting) => {
    const found = SUBJECTS.filter((subject) => check(subject, part, fullValue(subject).value).ok);
    expect(found.toSorted()).toEqual(fitting.toSorted());
  });
});
