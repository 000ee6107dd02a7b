import { unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { type Ladder, OUR_LADDER } from '../../src/migrations/lift-entry.ts';
import { foldRecord } from '../../src/record/fold-record.ts';
import type { Entry } from '../../src/schema/entry.ts';
import { planBundle } from '../../src/storage/bundle/plan-bundle.ts';
import { readBundle } from '../../src/storage/bundle/read-bundle.ts';
import { restoreBundle } from '../../src/storage/bundle/restore-bundle.ts';
import { writePart } from '../../src/storage/bundle/write-part.ts';
import { blobSink } from '../../src/storage/bundle/zip-writer.ts';
import type { Store } from '../../src/storage/store.ts';
import { cardFrom } from '../storage/bundle/bench-of-packs.ts';
import {
  EARLIER_VERSIONS,
  type EarlierVersion,
  everyRow,
  layOut,
  type Rows,
  sorted,
} from '../storage/earlier-versions.ts';
import { newPhone, openOn, type Phone, storeOn } from '../storage/open-test-store.ts';
import { newSince } from './new-since.ts';
import { watchedLadder } from './watched-ladder.ts';

/** Stores whose rows a bundle brings as they are. */
const BROUGHT = ['entries', 'photos', 'thumbs', 'originals', 'logs', 'sealed', 'definitions'] as const;

function brought(rows: Rows): Rows {
  return sorted(Object.fromEntries(BROUGHT.map((name) => [name, rows[name] ?? []])));
}

async function phoneOf({ databaseNumber, rows }: EarlierVersion): Promise<Phone> {
  const phone = newPhone();
  await layOut(phone, databaseNumber, rows());
  return phone;
}

/** What the restore screen does: checks the file whole, then merges it. */
async function restore(phone: Phone, bytes: Uint8Array<ArrayBuffer>, ladder: Ladder = OUR_LADDER) {
  const read = await readBundle(new Blob([bytes]), { ladder });
  if (!read.ok) return read;
  const store = await storeOn(phone);
  const report = await restoreBundle(store, read.bundle, { bringBackDeleted: false, cardOf: cardFrom });
  store.close();
  return { ...report, ok: true as const };
}

/** What the save screen does, demo packs included. */
async function save(store: Store): Promise<Uint8Array<ArrayBuffer>> {
  const { parts, leftOut } = await planBundle({ store, packIds: 'all', withDemo: true, appVersion: '0.0.0' });
  expect([parts.length, leftOut]).toEqual([1, []]);
  const sink = blobSink();
  for (const part of parts) await writePart(part, sink);
  return new Uint8Array(await sink.blob().arrayBuffer());
}

/** The same bundle, said to be of another schema. */
function saidToBe(bundle: Uint8Array, schemaVersion: number): Uint8Array<ArrayBuffer> {
  const files = unzipSync(bundle);
  const manifest = JSON.parse(new TextDecoder().decode(files['manifest.json'])) as object;
  const bytes = new TextEncoder().encode(JSON.stringify({ ...manifest, schemaVersion }));
  return new Uint8Array(zipSync({ ...files, 'manifest.json': bytes }));
}

const bytesOf = ({ bundle }: EarlierVersion) => new Uint8Array(bundle());

describe.each(EARLIER_VERSIONS)('a bundle of version $version', (earlier) => {
  const { version } = earlier;

  it('restores on an empty phone: every entry, photo, thumbnail, original, log, sealed sheet and definition as it was', async () => {
    const phone = newPhone();
    const report = await restore(phone, bytesOf(earlier));
    if (!report.ok) throw new Error(`${report.refusal}: ${report.detail}`);
    expect(report).toMatchObject({ stopped: null, skipped: [] });
    expect(report.packs.map((pack) => [pack.added, pack.missingPhotos, pack.missingLogs, pack.missingSealed, pack.missingVoices])).toEqual(earlier.records().map(() => [true, [], [], [], []])); // biome-ignore format: one line
    expect(brought((await everyRow(phone)).rows)).toEqual(brought(earlier.rows()));
    const store = await storeOn(phone);
    for (const record of earlier.records()) {
      const entries = await store.entriesOf(record.packId);
      const folded = foldRecord(record.packId, entries);
      expect(folded).toEqual({ ...record, ...newSince(version, record.packId, entries) });
    }
  });

  it('finds nothing new on the phone it came from, lifted since', async () => {
    const phone = await phoneOf(earlier);
    (await storeOn(phone)).close();
    const before = await everyRow(phone);
    const report = await restore(phone, bytesOf(earlier));
    expect(report).toMatchObject({
      packs: earlier.records().map(() => ({ added: false, written: [], newerHere: [] })),
    });
    expect(brought((await everyRow(phone)).rows)).toEqual(brought(before.rows));
  });

  it('runs every step on every entry', async () => {
    const ran: number[] = [];
    expect(await readBundle(new Blob([bytesOf(earlier)]), { ladder: watchedLadder((to) => ran.push(to)) })).toMatchObject({ ok: true }); // biome-ignore format: one line
    const wanted = OUR_LADDER.steps.filter(({ to }) => to > version);
    const count = earlier.entries().length;
    expect(wanted.map(({ to }) => ran.filter((one) => one === to).length)).toEqual(wanted.map(() => count));
    expect(ran).toHaveLength(count * wanted.length);
  });

  it('is exported again from its lifted database, and that restores elsewhere with identical entries and bytes', async () => {
    const store = await storeOn(await phoneOf(earlier));
    const exported = await save(store);
    const files = unzipSync(exported);
    expect(JSON.parse(new TextDecoder().decode(files['manifest.json']))).toMatchObject({ schemaVersion: 4, parts: 1 });
    expect(Object.keys(files).sort()).toEqual(Object.keys(earlier.files()).sort());
    const elsewhere = newPhone();
    expect(await restore(elsewhere, exported)).toMatchObject({ ok: true, stopped: null });
    expect(brought((await everyRow(elsewhere)).rows)).toEqual(brought(earlier.rows()));
  });

  it('is refused as newer when it says schema 5, and every row of the phone is as it was', async () => {
    const phone = await phoneOf(earlier);
    (await storeOn(phone)).close();
    const before = await everyRow(phone);
    expect(await restore(phone, saidToBe(earlier.bundle(), 5))).toEqual({
      ok: false,
      refusal: 'newer',
      detail: 'schema version 5, this app knows 4',
    });
    expect(await everyRow(phone)).toEqual(before);
    expect(await restore(phone, saidToBe(earlier.bundle(), version))).toMatchObject({ ok: true });
  });

  it('is set aside whole, with the place, when a step fails on its last entry; the phone is as it was', async () => {
    const phone = newPhone();
    const opened = await openOn(phone);
    if (opened.ok) opened.store.close();
    const before = await everyRow(phone);
    const last = earlier.entries().at(-1) as Entry;
    const ladder = watchedLadder((to, { key }) => {
      if (to === 4 && String(key) === String(last.key)) throw new Error('made to fail');
    });
    expect(await restore(phone, bytesOf(earlier), ladder)).toEqual({
      ok: false,
      refusal: 'migrationFailed',
      detail: expect.stringContaining(`step 4 on ${last.key.join('/')}: Error: made to fail`),
    });
    expect(await everyRow(phone)).toEqual(before);
  });
});
