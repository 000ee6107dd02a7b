import { describe, expect, it } from 'vitest';
import { gradeRecord } from '../../src/grading/grade-record.ts';
import { type Ladder, liftEntry } from '../../src/migrations/lift-entry.ts';
import { foldRecord } from '../../src/record/fold-record.ts';
import { checkEntry } from '../../src/schema/check-entry.ts';
import type { Entry } from '../../src/schema/entry.ts';
import { SCHEMA_VERSION } from '../../src/schema/schema-version.ts';
import { EARLIER_VERSIONS, type EarlierVersion } from '../storage/earlier-versions.ts';
import { frozenDefinition } from './frozen-definition.ts';
import { newSince } from './new-since.ts';
import { watchedLadder } from './watched-ladder.ts';

/** Counted in the fixtures with another program. */
const COUNTS: Readonly<Record<number, object>> = {
  1: { packs: 2, entries: 368, subjects: 11, gone: 2, withReason: 2, photos: 18, undone: 0 },
  2: { packs: 4, entries: 628, subjects: 28, gone: 6, withReason: 5, photos: 24, undone: 1 },
  3: { packs: 4, entries: 637, subjects: 31, gone: 5, withReason: 2, photos: 24, undone: 1 },
};

function lifted(entries: readonly Entry[], from: number, ladder?: Ladder): Entry[] {
  return entries.map((entry) => {
    const lift = liftEntry(entry, from, ladder);
    if (!lift.ok) throw new Error(lift.detail);
    return lift.entry;
  });
}

it('keeps a fixture of each of the 3 schemas there were before the present one', () => {
  expect(EARLIER_VERSIONS.map(({ version }) => version)).toEqual(
    Array.from({ length: SCHEMA_VERSION - 1 }, (_, i) => i + 1),
  );
});

describe.each(EARLIER_VERSIONS)('version $version', (earlier: EarlierVersion) => {
  const { version } = earlier;
  const entries = earlier.entries();

  it('has entries of every subject and part that it knew, deleted ones and reasons among them', () => {
    const manifest = JSON.parse(new TextDecoder().decode(earlier.files()['manifest.json']));
    expect(manifest).toMatchObject({ schemaVersion: version, appVersion: '0.1.0' });
    expect({
      packs: earlier.records().length,
      entries: entries.length,
      subjects: new Set(entries.map(({ key }) => key[1])).size,
      gone: entries.filter(({ gone }) => gone).length,
      withReason: entries.filter(({ why }) => why !== undefined).length,
      photos: entries.filter(({ key }) => key[1] === 'photo').length,
      undone: entries.filter(({ key, gone }) => key[2] === 'cell-code' && gone).length,
    }).toEqual(COUNTS[version]);
    const there = new Set(entries.flatMap(({ key }) => [key[1], `${key[1]}/${key[2]}`]));
    expect(earlier.subjects().filter((subject) => !there.has(subject))).toEqual([]);
  });

  it('lifts each entry to itself, and each passes the schema of today as a known one', () => {
    for (const entry of entries) {
      const lift = liftEntry(Object.freeze(entry), version);
      expect(lift).toEqual({ ok: true, entry });
      expect(checkEntry(lift.ok ? lift.entry : null)).toMatchObject({ ok: true, known: true });
    }
  });

  it('runs every step from the next version to the present one on every entry, in order', () => {
    const ran = new Map<string, number[]>();
    const ladder = watchedLadder((to, { key }) => ran.set(key.join('/'), [...(ran.get(key.join('/')) ?? []), to]));
    lifted(entries, version, ladder);
    const wanted = Array.from({ length: SCHEMA_VERSION - version }, (_, i) => version + 1 + i);
    expect(ran.size).toBe(entries.length);
    expect([...new Set([...ran.values()].map(String))]).toEqual([String(wanted)]);
  });

  it.each(earlier.records())(
    'folds $nameplate.name to the record it folded it to, and what is new is empty',
    (record) => {
      const gained = newSince(version, record.packId, entries);
      expect(foldRecord(record.packId, lifted(entries, version))).toEqual({ ...record, ...gained });
    },
  );

  it.each(earlier.gradings())('grades $packId by $checklist.version as it did, to 1e-12', (was) => {
    const is = gradeRecord(frozenDefinition(was.checklist), foldRecord(was.packId, lifted(entries, version)));
    const { verdict, settled, settledCount, askedCount, stop } = is;
    expect({ verdict, settled, settledCount, askedCount, stop }).toEqual({
      verdict: was.verdict,
      settled: was.settled,
      settledCount: was.settledCount,
      askedCount: was.askedCount,
      stop: was.stop,
    });
    expect(Object.fromEntries(is.items.map(({ itemId, possible }) => [itemId, possible]))).toEqual(was.items);
    expect(is.hazards.map(({ hazardId }) => hazardId)).toEqual(was.hazards.map(([hazardId]) => hazardId));
    const numbersNow = numbersIn([is.score, is.build, is.factor, is.settledShareFrac, is.after, is.hazards.map(({ k }) => k)]); // biome-ignore format: one line
    const numbersThen = numbersIn([was.score, was.build, was.factor, was.settledShareFrac, was.after, was.hazards.map(([, k]) => k)]); // biome-ignore format: one line
    expect(numbersNow.map(([place]) => place)).toEqual(numbersThen.map(([place]) => place));
    expect(numbersNow.length).toBeGreaterThan(20);
    for (const [at, [place, value]] of numbersNow.entries()) {
      const then = numbersThen[at]?.[1] ?? Number.NaN;
      expect(Math.abs(value - then), `${place}: ${value}, was ${then}`).toBeLessThanOrEqual(1e-12);
    }
  });
});

/** Every number in a value, with its place; null has none, so that a score that was withheld must be withheld. */
function numbersIn(value: unknown, place = ''): [place: string, value: number][] {
  if (typeof value === 'number') return [[place, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, part]) => numbersIn(part, `${place}/${name}`));
}
