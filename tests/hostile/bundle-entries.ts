import * as v from 'valibot';
import { checkEntry } from '../../src/schema/check-entry.ts';
import type { Entry } from '../../src/schema/entry.ts';
import { NAMEPLATE_FIELDS, nameplateFields } from '../../src/schema/nameplate.ts';
import { DEVICE, stampAt } from '../record/made-entries.ts';
import { BESIDE_VALUES, type BesideSubject } from '../schema/beside-values.ts';
import { type Expected, type HostileFile, refused, taken } from './hostile-file.ts';
import { SCRIPTS, walk, withTexts } from './hostile-texts.ts';
import { LOG, PHOTO_ID, SOUND_PACK, sha256 } from './sound-bench.ts';
import { forged, withEntries, withEntriesText } from './zip-tricks.ts';

type Row = [name: string, expect: Expected, bytes: () => Promise<Uint8Array<ArrayBuffer>>];

const STAMP = stampAt(1_764_000_000_001);
const made = (subject: string, part: string, value: unknown, at = STAMP): Entry => ({
  key: [SOUND_PACK, subject, part],
  v: value,
  at,
  by: DEVICE,
});
/** In place of the entry under the same key. */
const put = (...entries: Entry[]) =>
  forged(
    withEntries((all) => {
      const keys = new Set(entries.map(({ key }) => key.join()));
      return [...all.filter(({ key }) => !keys.has(key.join())), ...entries];
    }),
  );
const field = (name: string, value: unknown) => put(made('nameplate', name, value));
const callout = (points: unknown, more: object = {}) =>
  put(made('callout', '3'.repeat(32), { photoId: PHOTO_ID, kind: 'arrow', points, made: STAMP, ...more }));

/** A full value of what stands beside the findings, but for `more`. */
const beside = (subject: BesideSubject, more: object, part: string = BESIDE_VALUES[subject][0].part) =>
  put(made(subject, part, { ...BESIDE_VALUES[subject][0].value, ...more }));

/** A number written as JSON.stringify never would: "-0", "1e21". */
const numberText = (name: string, text: string) =>
  forged(
    withEntriesText((whole) => {
      const entries = (JSON.parse(whole) as Entry[]).filter(({ key }) => key[2] !== name);
      return JSON.stringify([...entries, made('nameplate', name, 'NUMBER')]).replace('"NUMBER"', text);
    }),
  );

/** Bundles that a forger who knows the format has made whole again, and whose entries are not what they seem. */
const ROWS: Row[] = [
  ['a prototype key in an entry', refused('badJson'), () => forged(withEntriesText((text) => text.replace('{"key"', '{"__proto__":{"gone":true},"key"')))],
  ['an entry called __proto__', refused('badEntry'), () => put(made('answer', '__proto__', { kind: 'open', note: 'x' }))],
  ['an entry called constructor', taken(), () => put(made('answer', 'constructor', { kind: 'open', note: 'x' }))],
  ['an entry twice', refused('duplicateEntry'), () => forged(withEntries((all) => [...all, ...all.slice(0, 1)]))],
  ['an entry of another pack', refused('badEntry'), () => put({ ...made('nameplate', 'maker', 'x'), key: ['9'.repeat(32), 'nameplate', 'maker'] })],
  ['a stamp in 2100', refused('impossibleDate'), () => put(made('nameplate', 'maker', 'x', stampAt(Date.UTC(2100, 0, 1))))],
  ['a stamp in the year 33658', refused('impossibleDate'), () => put(made('nameplate', 'maker', 'x', `999999999999999.999999.${DEVICE}`))],
  ['a stamp at the end of 2099', taken(), () => put(made('nameplate', 'maker', 'x', stampAt(Date.UTC(2100, 0, 1) - 1)))],
  ['a stamp in 1970', taken(), () => put(made('nameplate', 'maker', 'x', stampAt(0)))],
  ['a deletion in 2099', taken(), () => put({ ...made('nameplate', 'maker', null, stampAt(Date.UTC(2099, 0, 1))), gone: true })],
  ['a stamp that is no stamp', refused('badEntry'), () => put(made('nameplate', 'maker', 'x', '2026-11-24'))],
  ['a mass of 1e308 kg', refused('badEntry'), () => field('massKg', 1e308)],
  ['a capacity of 5e-324 Ah', refused('badEntry'), () => field('ratedCapacityAh', 5e-324)],
  ['a price of 1e21', refused('badEntry'), () => field('price', 1e21)],
  ['a price of -0', taken(), () => numberText('price', '-0')],
  ['an energy of 1e999 Wh', refused('badJson'), () => numberText('ratedEnergyWh', '1e999')],
  ['1e21 cells in series', refused('badEntry'), () => field('cellsInSeries', 1e21)],
  ['a run of 1e308 Ah', refused('badEntry'), () => put(made('run', '8'.repeat(32), { chargeAh: 1e308, made: STAMP }))],
  ['a cell of 1e308 V', refused('badEntry'), () => put(made('cell', `${'8'.repeat(32)}/1`, { voltageV: 1e308 }))],
  ['cell number 999 of a set that is not there', taken(), () => put(made('cell', `${'8'.repeat(32)}/999`, { voltageV: 3.3 }))],
  ['a curve of 1e308', refused('badEntry'), () => put(made('run', '8'.repeat(32), { curve: { timeS: [0, 1e308], voltageV: [1, 2], currentA: null, chargeAh: null }, made: STAMP }))],
  ['a reading of 1e308', refused('badEntry'), () => put(made('answer', 'cell-vents', { kind: 'readings', values: { x: 1e308 }, evidence: 'measured' }))],
  ['a photo of 1e308 bytes', refused('badEntry'), () => put(made('photo', PHOTO_ID, { zone: 'cells', widthPx: 64, heightPx: 48, byteCount: 1e308, originalSha256: PHOTO_ID, made: STAMP }))],
  ['a photo of 30 000 px a side by its entry', refused('badEntry'), () => put(made('photo', 'f'.repeat(64), { zone: 'cells', widthPx: 30_000, heightPx: 30_000, byteCount: 1, originalSha256: PHOTO_ID, made: STAMP }))],
  ['a photo taken on the 99th of the 99th', refused('badEntry'), () => put(made('photo', 'f'.repeat(64), { zone: 'cells', widthPx: 64, heightPx: 48, byteCount: 1, originalSha256: PHOTO_ID, takenAt: '2026-99-99T10:00:00', made: STAMP }))],
  ['a state entered at 1e308 ms', refused('badEntry'), () => put(made('state', 'apart', { enteredAtMs: 1e308, leftBehind: [] }))],
  ['a sheet closed in the year 275 760', refused('badEntry'), () => put(made('closing', 'f'.repeat(64), { ...cameTo, revision: 1, closedAtMs: 8.64e15, appVersion: '1', byteCount: 1, entriesSha256: 'f'.repeat(64) }))],
  ['a closing of itself', taken(), () => put(made('closing', 'f'.repeat(64), { ...cameTo, revision: 1, closedAtMs: 1_764_000_000_000, appVersion: '1', byteCount: 1, entriesSha256: 'f'.repeat(64), after: 'f'.repeat(64), reason: 'x' }))],
  ['a record carried over from itself', taken(), () => forged(withEntries((all) => [...all, made('pack', 'carriedFrom', all.find(({ key }) => key[2] === 'checklist')?.v)]))],
  ['a retest of itself', taken(), () => put(made('pack', 'retestOf', { packId: SOUND_PACK, kind: 'sample' }))],
  ['a photo linked to items that are not there', taken(), () => put(made('photoItem', `${PHOTO_ID}/not-there`, true), made('photoItem', `${'e'.repeat(64)}/cell-vents`, true))],
  ['answers to items and facts that are not there', taken(), () => put(made('answer', 'not-there', { kind: 'grade', grade: 'failed', evidence: 'seen' }), made('fact', 'not-there', { choice: 'no-such' }))],
  ['a callout without its photo', taken(), () => callout([[0, 0], [1, 1]], { photoId: 'e'.repeat(64) })],
  ['callouts at 1e9', refused('badEntry'), () => callout([[1e9, 0], [0, 0]])],
  ['callouts that are no number', refused('badEntry'), () => callout([[null, 0], [0, 0]])],
  ['an arrow with one end', taken(), () => callout([[0.5, 0.5]])],
  ['an arrow to its own tail', taken(), () => callout([[0.5, 0.5], [0.5, 0.5]])],
  ['an outline of no size, at a corner', taken(), () => callout([[1, 1], [1, 1]], { kind: 'outline' })],
  ['a callout of 65 points', refused('badEntry'), () => callout(Array.from({ length: 65 }, () => [0, 0]))],
  ['ohm of ruler points in one place', taken(), () => put(made('ruler', '6'.repeat(32), { photoId: PHOTO_ID, corners: [[0.5, 0.5], [0.5, 0.5], [0.5, 0.5], [0.5, 0.5]], from: [0, 0], to: [1, 1], made: STAMP }))],
  ['a name that runs backwards', taken('U+202E'), () => field('name', 'Wren\u202e42')],
  ['a note with every control there is', taken(...controls().map(codeOf)), () => field('note', `a${controls().join('')}b`)],
  ['a day in the year 0', taken(), () => field('receivedOn', '0000-01-01')],
  ['a day in the year 9999', taken(), () => field('pricedOn', '9999-12-31')],
  ['the 31st of February', taken(), () => field('receivedOn', '2026-02-31')],
  ['a day in the year 99999', refused('badEntry'), () => field('receivedOn', '99999-01-01')],
  ['a reason with a bell', taken('U+0007'), () => put({ ...made('nameplate', 'maker', 'x'), why: 'be\u0007ll' })],
  ['an entry whose name runs backwards', refused('badEntry'), () => put(made('nameplate', 'ma\u202eker', 'x'))],
  ['a member whose name runs backwards', refused('badJson'), () => put(made('run', '8'.repeat(32), { 'note\u202e': 'x', made: STAMP }))],
  ['half a character', refused('badJson'), () => forged(withEntriesText((text) => text.replace('Bought over', '\\ud83d')))],
  ['a log by the name of a script', taken(), () => put(made('log', sha256(LOG), { name: SCRIPTS[0], byteCount: LOG.byteLength, made: STAMP }))],
  ['a name of 121 letters', refused('badEntry'), () => field('name', 'x'.repeat(121))],
  ['a price of 1e308', refused('badEntry'), () => beside('offer', { price: 1e308 })],
  ['a price below nothing', refused('badEntry'), () => beside('offer', { price: -1 })],
  ['a currency that is a script', refused('badEntry'), () => beside('offer', { currency: '<b>' })],
  ['a remedy of 1e308 minutes', refused('badEntry'), () => beside('remedyNote', { timeMin: 1e308 })],
  ['a remedy that is not there', taken(), () => beside('remedyNote', {}, 'not-there')],
  ['a remedy called constructor', taken(), () => beside('remedyNote', {}, 'constructor')],
  ['a remedy called __proto__', refused('badEntry'), () => beside('remedyNote', {}, '__proto__')],
  ['a take from 1e308 ms', refused('badEntry'), () => beside('take', { startedAtMs: 1e308 })],
  ['a take that ends before it begins', taken(), () => beside('take', { startedAtMs: 9000, endedAtMs: 1000 })],
  ['a take a day and a millisecond off', refused('badEntry'), () => beside('take', { offsetMs: 86_400_001 })],
  ['a mark at 1e308 ms', refused('badEntry'), () => beside('takeMark', { atMs: 1e308 })],
  ['a mark in a take that is not there', taken(), () => beside('takeMark', {}, `${'9'.repeat(32)}/${'9'.repeat(32)}`)],
  ['a mark of an entry that is not there', taken(), () => beside('takeMark', { subject: 'answer', part: '../../__proto__' })],
  ['a mark of a subject with a slash', refused('badEntry'), () => beside('takeMark', { subject: '../x' })],
  ['a second reader who is through at 1e308 ms', refused('badEntry'), () => beside('secondReader', { finishedAtMs: 1e308 })],
  ['a second answer of a reader who is not there', taken(), () => beside('secondAnswer', {}, `${'9'.repeat(32)}/cell-vents`)],
  ['a second answer to an item called constructor', taken(), () => beside('secondAnswer', {}, `${'4'.repeat(32)}/constructor`)],
  ['a second answer that is no grade', refused('badEntry'), () => beside('secondAnswer', { grade: 'perfect' })],
  ['a voice note of 1e308 s', refused('badEntry'), () => beside('voice', { durationS: 1e308 })],
  ['a voice note of 1e308 bytes', refused('badEntry'), () => beside('voice', { byteCount: 1e308 })],
  ['a voice note that calls itself a page', refused('badEntry'), () => beside('voice', { type: 'text/html' })],
  ['a voice note on a photo that is not there', taken(), () => beside('voice', { on: { kind: 'photo', id: 'e'.repeat(64) } })],
  ['a voice note whose bytes are nowhere', taken(), () => beside('voice', {}, 'e'.repeat(64))],
  ['a voice note whose label runs backwards', taken('U+202E'), () => beside('voice', { label: 'a\u202eb' })],
  ['a short across the posts that is neither yes nor no', refused('badEntry'), () => put(made('trip', '8'.repeat(32), { currentA: 1, heldForS: 1, opened: true, short: 'yes', made: STAMP }))],
  ['script in every text of every entry', taken(), scriptsEverywhere],
  ['the largest that every figure may be', taken(), () => forged(withEntries((all) => all.map((entry) => farOut(entry, 'most'))))],
  ['the least that every figure may be', taken(), () => forged(withEntries((all) => all.map((entry) => farOut(entry, 'least'))))],
  ...NAMEPLATE_FIELDS.filter((name) => v.is(nameplateFields[name], 4)).map(
    (name): Row => [`1e308 as ${name}`, refused('badEntry'), () => field(name, 1e308)],
  ),
]; // biome-ignore format: a table

/** What any closing says it came to, so that only what is meant to be wrong is. */
const cameTo = { score: null, verdict: { low: 'stop', high: 'stop' }, settled: false };

export const BUNDLE_ENTRIES: HostileFile[] = ROWS.map(([name, expect, bytes]) => ({
  name,
  kind: 'bundle',
  bytes,
  expect,
}));

/** The record with a script wherever its schema takes any text. */
export function scriptsEverywhere() {
  return forged(withEntries(scriptedEntries));
}

export function scriptedEntries(entries: readonly Entry[]): Entry[] {
  return entries.map((entry, place) => {
    const mayBe = (whole: { v: unknown }) => checkEntry({ ...entry, v: whole.v }).ok;
    const text = (at: number) => SCRIPTS[(place + at) % SCRIPTS.length] ?? '';
    return { ...entry, v: withTexts({ v: entry.v }, text, mayBe).v };
  });
}

/** Every number of an entry as far out as its schema takes it: of the absurd ones, and of round ones. */
export function farOut(entry: Entry, way: 'most' | 'least'): Entry {
  const most = [
    1e308, 1e21, 253_370_764_800_000, 1e12, 1e10, 1e9, 1e7, 1e6, 1e5, 20_000, 9999, 2000, 1500, 1000, 500, 100, 40, 1,
  ];
  const least = [-1e308, -2000, -273.15, -0, 0, 5e-324, 1e-6, 1];
  const whole = structuredClone({ v: entry.v });
  walk(whole, (owner, key, before) => {
    // A photo's size is held against its bytes.
    if (typeof before !== 'number' || entry.key[1] === 'photo') return;
    const found = (way === 'most' ? most : least).find((number) => {
      owner[key] = number;
      return checkEntry({ ...entry, v: whole.v }).ok;
    });
    if (found === undefined) owner[key] = before;
  });
  return { ...entry, v: whole.v };
}

/** Every control and bidirectional character that must not stay, once. */
function controls(): string[] {
  const between = (first: number, last: number) =>
    Array.from({ length: last - first + 1 }, (_, i) => String.fromCharCode(first + i));
  return [
    ...between(0, 8),
    ...between(11, 12),
    ...between(14, 31),
    ...between(0x7f, 0x9f),
    ...between(0x202a, 0x202e),
    ...between(0x2066, 0x2069),
    '\ufeff',
    '\ufff9',
  ];
}

function codeOf(character: string): string {
  return `U+${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`;
}
