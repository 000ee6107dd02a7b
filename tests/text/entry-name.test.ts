import { expect, it } from 'vitest';
import { ENTRY_SUBJECTS } from '../../src/schema/entry.ts';
import { hiddenCharacterName, whereInBundle } from '../../src/text/bundle.ts';
import { entryName } from '../../src/text/entry-name.ts';

const PACK = 'a'.repeat(32);
const titles: Readonly<Record<string, string>> = {
  'cell-vents': 'Cell vents',
  cells: 'Cells',
  'turn-lug': 'Turn the lug',
};
const titleOf = (id: string) => titles[id] ?? id;
const nameOf = (subject: string, part: string, v: unknown = null) =>
  entryName({ key: [PACK, subject, part], v, titleOf });

it.each<[string, string, unknown, string]>([
  ['answer', 'cell-vents', { kind: 'grade', grade: 'weak' }, 'Answer to “Cell vents”: weak'],
  ['answer', 'cell-vents', { kind: 'open', note: '' }, 'Answer to “Cell vents”'],
  ['answer', 'gone-item', undefined, 'Answer to “gone-item”'],
  ['photo', 'f'.repeat(64), { zone: 'cells', caption: 'lifted weld' }, 'Photo, Cells: “lifted weld”'],
  ['photo', 'f'.repeat(64), { zone: 'make-safe' }, 'Photo, Make safe'],
  ['photoItem', `${'f'.repeat(64)}/cell-vents`, true, 'Photo at “Cell vents”'],
  ['callout', PACK, { kind: 'leader', text: 'lifted weld' }, 'Callout, leader: “lifted weld”'],
  ['callout', PACK, { kind: 'cover', text: '' }, 'Callout, cover'],
  ['nameplate', 'ratedCapacityAh', 100, 'Nameplate: Rated capacity'],
  ['cell', `${PACK}/3`, {}, 'Reading of cell 3'],
  ['log', 'f'.repeat(64), { name: 'run.csv' }, 'Log: “run.csv”'],
  ['run', PACK, { label: 'x'.repeat(70) }, `Capacity run: “${'x'.repeat(59)}…”`],
  ['closing', 'f'.repeat(64), { revision: 2 }, 'Closed sheet, revision 2'],
  ['offer', PACK, { kind: 'price', price: 400 }, 'Price'],
  ['offer', PACK, { kind: 'option', label: 'with heating', price: 60 }, 'Option: “with heating”'],
  ['remedyNote', 'turn-lug', { timeMin: 10 }, 'What a remedy takes: “Turn the lug”'],
  ['remedyNote', 'gone-remedy', undefined, 'What a remedy takes: “gone-remedy”'],
  ['take', PACK, { label: 'Close-ups' }, 'Take: “Close-ups”'],
  ['takeMark', `${PACK}/${PACK}`, { kind: 'word', label: 'the lid' }, 'Mark in a take: “the lid”'],
  ['takeMark', `${PACK}/${PACK}`, { kind: 'photo', subject: 'photo', part: 'x' }, 'Moment in a take'],
  ['secondReader', PACK, { label: 'R. Teal' }, 'Second reader: “R. Teal”'],
  ['secondAnswer', `${PACK}/cell-vents`, { kind: 'grade', grade: 'weak' }, 'Second reader on “Cell vents”: weak'],
  ['secondAnswer', `${PACK}/cell-vents`, { kind: 'cannotTell' }, 'Second reader on “Cell vents”'],
  ['voice', 'f'.repeat(64), { on: { kind: 'item', id: 'cell-vents' } }, 'Voice note on “Cell vents”'],
  [
    'voice',
    'f'.repeat(64),
    { on: { kind: 'photo', id: 'e'.repeat(64) }, label: 'tape' },
    'Voice note on a photo: “tape”',
  ],
  ['voice', 'f'.repeat(64), null, 'Voice note'],
  ['pack', 'made', {}, 'The pack itself, put away'],
  ['constructor', 'x', {}, 'constructor, x'],
  ['later', 'part', {}, 'later, part'],
])('%s %s', (subject, part, v, name) => {
  expect(nameOf(subject, part, v)).toBe(name);
});

it('has words for every subject an entry may have', () => {
  for (const subject of Object.keys(ENTRY_SUBJECTS)) expect(nameOf(subject, 'x')).not.toBe(`${subject}, x`);
});

it('puts the folder of a refused file in words, and hides nothing in them', () => {
  expect(whereInBundle('photos/1a2b.jpg has 3 × 3 px')).toBe('In it: a photo, photos/1a2b.jpg has 3 × 3 px.');
  expect(whereInBundle('manifest.json is damaged')).toBe('What was found: manifest.json is damaged.');
  expect(whereInBundle(`logs/\u202E${'x'.repeat(1000)}`)).toHaveLength('In it: a log, .'.length + 300);
  expect(whereInBundle('a\u202Eb')).toBe('What was found: ab.');
});

it.each([
  ['U+202E', 'U+202E (right-to-left override)'],
  ['U+0007', 'U+0007 (control character)'],
  ['U+FFF9', 'U+FFF9 (annotation mark)'],
])('%s', (character, name) => {
  expect(hiddenCharacterName(character)).toBe(name);
});
