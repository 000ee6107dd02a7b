import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { liftEntry } from '../../src/migrations/lift-entry.ts';
import { foldRecord } from '../../src/record/fold-record.ts';
import { checkEntry } from '../../src/schema/check-entry.ts';
import { readBundle } from '../../src/storage/bundle/read-bundle.ts';
import { restoreBundle } from '../../src/storage/bundle/restore-bundle.ts';
import { cardFrom } from '../storage/bundle/bench-of-packs.ts';
import { newPhone, storeOn } from '../storage/open-test-store.ts';
import { VERSION_1_BUNDLE, version1Entries, version1Files } from '../storage/version-1-database.ts';

const records = JSON.parse(readFileSync(new URL('./fixtures/version-1/records.json', import.meta.url), 'utf8')) as {
  packId: string;
  nameplate: { name: string };
}[];

/** What version 1 could not have: by hand. */
const NEW_IN_2 = {
  carriedFrom: null,
  tests: {
    instruments: [],
    runs: [],
    logs: [],
    trips: [],
    cutOffs: [],
    sensorGates: [],
    cellSets: [],
    resistances: [],
    leads: [],
    joints: [],
    drains: [],
    parallelRuns: [],
    readOuts: [],
    cellMarks: [],
    rulers: [],
  },
};

const zip = () => new Uint8Array(readFileSync(VERSION_1_BUNDLE));

it('has 365 entries of 11 subjects as version 1 wrote them, 2 of them deleted and 2 with a reason', () => {
  const entries = version1Entries();
  expect(entries).toHaveLength(365);
  expect(new Set(entries.map(({ key }) => key[1])).size).toBe(11);
  expect(entries.filter(({ gone }) => gone)).toHaveLength(2);
  expect(entries.filter(({ why }) => why === 'measured again')).toHaveLength(2);
  expect(JSON.parse(new TextDecoder().decode(version1Files()['manifest.json']))).toMatchObject({ schemaVersion: 1 });
});

it('lifts each of the 365 to itself, and each passes the schema of today as a known one', () => {
  for (const entry of version1Entries()) {
    const lift = liftEntry(Object.freeze(entry), 1);
    expect(lift).toEqual({ ok: true, entry });
    expect(checkEntry(lift.ok ? lift.entry : null)).toMatchObject({ ok: true, known: true });
  }
});

describe.each(records.map((record) => [record.nameplate.name, record] as const))('%s', (_, record) => {
  it('folds to the record that version 1 folded it to, with no live test', () => {
    const entries = version1Entries().map((entry) => {
      const lift = liftEntry(entry, 1);
      if (!lift.ok) throw new Error(lift.detail);
      return lift.entry;
    });
    expect(foldRecord(record.packId, entries)).toEqual({ ...record, ...NEW_IN_2 });
  });

  it('comes back from the bundle of version 1 with the same record, entries and 17 photos in all', async () => {
    const result = await readBundle(zip());
    if (!result.ok) throw new Error(`${result.refusal}: ${result.detail}`);
    const store = await storeOn(newPhone());
    const report = await restoreBundle(store, result.bundle, { bringBackDeleted: false, cardOf: cardFrom });
    expect(report.packs.map(({ missingPhotos, missingLogs }) => [missingPhotos, missingLogs])).toEqual([[[], []], [[], []]]); // biome-ignore format: one line
    const entries = await store.entriesOf(record.packId);
    expect(entries).toEqual(version1Entries().filter(({ key }) => key[0] === record.packId));
    expect(foldRecord(record.packId, entries)).toEqual({ ...record, ...NEW_IN_2 });
    const photos = version1Entries().filter(({ key }) => key[1] === 'photo');
    const found = await Promise.all(photos.map(({ key }) => store.photo(key[2])));
    expect(found.filter((photo) => photo !== null)).toHaveLength(17);
  });
});
