import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, expect, it, vi } from 'vitest';
import type { VerifiedPart } from '../../../src/storage/bundle/read-bundle.ts';
import { restoreBundle } from '../../../src/storage/bundle/restore-bundle.ts';
import { sha256Of } from '../../../src/storage/bundle/sha256-of.ts';
import { readZipDirectory } from '../../../src/storage/bundle/zip-directory.ts';
import type { Store } from '../../../src/storage/store.ts';
import { OTHER_PACK, PACK } from '../../record/made-entries.ts';
import { change, newPhone, storeOn, written } from '../open-test-store.ts';
import {
  benchOfPacks,
  blobOf,
  cardFrom,
  leftOutOf,
  logBytes,
  partsOf,
  read,
  type SavedPart,
  writeLog,
} from './bench-of-packs.ts';

afterEach(() => vi.restoreAllMocks());

const asBefore = { bringBackDeleted: false, cardOf: cardFrom };

async function verified(part: SavedPart | undefined): Promise<VerifiedPart> {
  const result = await read(part);
  if (!result.ok) throw new Error(`${result.refusal}: ${result.detail}`);
  return result.bundle;
}

/** Restores every part on a phone that has nothing. */
async function restored(parts: SavedPart[]): Promise<Store> {
  const fresh = await storeOn(newPhone());
  for (const part of parts) await restoreBundle(fresh, await verified(part), asBefore);
  return fresh;
}

it('brings 2 logs back on an empty phone byte for byte, with their entries', async () => {
  const store = await benchOfPacks();
  const first = await writeLog(store, PACK, { seed: 1 });
  const second = await writeLog(store, OTHER_PACK, { seed: 2, rowCount: 5000 });
  const fresh = await restored(await partsOf(store));
  expect(await fresh.log(first)).toEqual({ type: 'text/plain', bytes: logBytes(100, 1) });
  expect(await fresh.log(second)).toEqual({ type: 'text/plain', bytes: logBytes(5000, 2) });
  for (const packId of [PACK, OTHER_PACK]) expect(await fresh.entriesOf(packId)).toEqual(await store.entriesOf(packId));
});

it('lies under logs/, named by its hash alone, as it is: a log of 200 000 equal rows comes back too', async () => {
  const store = await benchOfPacks();
  const bytes = new TextEncoder().encode('26.000;20.000\n'.repeat(200_000)).buffer;
  const sha256 = await sha256Of(bytes);
  const put = { subject: 'log', part: sha256, v: { name: 'flat.csv', byteCount: bytes.byteLength, made: null } };
  await written(store, change([put], { photos: [{ sha256, shelf: 'logs', content: { type: 'text/plain', bytes } }] }));
  const parts = await partsOf(store);
  const member = (await readZipDirectory(parts[0]?.blob ?? new Blob())).find(({ path }) => path.startsWith('logs/'));
  expect(member).toMatchObject({ path: `logs/${sha256}`, deflated: false, byteCount: 2_800_000 });
  expect((await (await restored(parts)).log(sha256))?.bytes).toEqual(bytes);
});

it('counts saved and restored logs as backed up', async () => {
  const store = await benchOfPacks();
  const sha256 = await writeLog(store, PACK);
  expect(await store.logsInNoBackup()).toBe(1);
  const parts = await partsOf(store);
  expect(parts[0]?.hashes).toContain(sha256);
  await store.noteBackup(parts.flatMap(({ hashes }) => hashes));
  expect([await store.logsInNoBackup(), await store.photosInNoBackup()]).toEqual([0, 0]);
  const fresh = await restored(parts);
  expect([await fresh.logsInNoBackup(), await fresh.photosInNoBackup()]).toEqual([0, 0]);
});

it('leaves out, and says so, a log whose bytes are gone and one whose bytes are damaged', async () => {
  const store = await benchOfPacks();
  const gone = await writeLog(store, PACK, { seed: 1 });
  const damaged = await writeLog(store, PACK, { seed: 2 });
  const log = store.log;
  store.log = async (sha256) => {
    const content = sha256 === gone ? null : await log(sha256);
    if (sha256 === damaged && content) new Uint8Array(content.bytes).fill(57, 40, 41);
    return content;
  };
  const parts = await partsOf(store);
  expect(await leftOutOf(store)).toEqual([
    { what: `logs/${gone}`, reason: 'missing' },
    { what: `logs/${damaged}`, reason: 'damaged' },
  ]);
  const report = await restoreBundle(await storeOn(newPhone()), await verified(parts[0]), asBefore);
  expect(report.packs[0]).toMatchObject({ packId: PACK, missingPhotos: [], missingLogs: [gone, damaged].sort() });
});

it('splits 3 logs of 14 kB over parts of at most 32 kB, says in each which are missing, and has all at the end', async () => {
  const store = await storeOn(newPhone());
  await written(store, change([{ subject: 'pack', part: 'made', v: {} }]));
  const ids: string[] = [];
  for (const seed of [1, 2, 3]) ids.push(await writeLog(store, PACK, { seed, rowCount: 1000 }));
  const parts = await partsOf(store, { maxPartBytes: 32_000 });
  expect(parts.length).toBeGreaterThan(1);
  const fresh = await storeOn(newPhone());
  const seen = new Set<string>();
  for (const part of parts) {
    expect(part.blob.size).toBeLessThanOrEqual(32_000);
    for (const hash of part.hashes) seen.add(hash);
    const { packs } = await restoreBundle(fresh, await verified(part), asBefore);
    expect(packs[0]?.missingLogs).toEqual(ids.filter((id) => !seen.has(id)).sort());
  }
  expect([...seen].sort()).toEqual(ids.toSorted());
});

it('holds a log that two packs share once, and it stays when one of them is erased', async () => {
  const store = await benchOfPacks();
  const sha256 = await writeLog(store, PACK);
  await writeLog(store, OTHER_PACK);
  const parts = await partsOf(store);
  expect(parts[0]?.hashes.filter((hash) => hash === sha256)).toHaveLength(1);
  const fresh = await restored(parts);
  await fresh.erase(PACK);
  expect(await fresh.log(sha256)).toEqual(await store.log(sha256));
  await fresh.erase(OTHER_PACK);
  expect(await fresh.log(sha256)).toBeNull();
});

it('leaves a deleted log out, and does not bring in the bytes of one that is deleted here', async () => {
  const store = await benchOfPacks();
  const sha256 = await writeLog(store, PACK);
  const backup = await verified((await partsOf(store))[0]);
  await written(store, change([{ subject: 'log', part: sha256, gone: true }]));
  const after = await partsOf(store);
  expect(after[0]?.hashes).not.toContain(sha256);
  const fresh = await restored(after);
  const report = await restoreBundle(fresh, backup, asBefore);
  expect(report.packs[0]?.deletedHere).toEqual([[PACK, 'log', sha256]]);
  expect(await fresh.log(sha256)).toBeNull();
  await restoreBundle(fresh, backup, { ...asBefore, bringBackDeleted: true });
  expect(await fresh.log(sha256)).toEqual(await store.log(sha256));
});

it('takes the log it had brought away again when the pack does not fit', async () => {
  const store = await benchOfPacks();
  const sha256 = await writeLog(store, PACK);
  const backup = await verified((await partsOf(store))[0]);
  const fresh = await storeOn(newPhone());
  const put = IDBObjectStore.prototype.put;
  let brought = 0;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value, key) {
    if (this.name === 'logs') brought += 1;
    if (this.name === 'entries') throw new DOMException('no room', 'QuotaExceededError');
    return put.call(this, value, key);
  });
  expect((await restoreBundle(fresh, backup, asBefore)).stopped).toMatchObject({ packId: PACK, problem: 'quotaFull' });
  vi.restoreAllMocks();
  expect([brought, await fresh.log(sha256)]).toEqual([1, null]);
});

it('tells how far planning is with 3 photos and 1 log: quarters, up to 1; and writing, up to 1', async () => {
  const store = await benchOfPacks();
  await writeLog(store, PACK);
  const planned: number[] = [];
  const [part] = await partsOf(store, { onProgress: (doneFrac) => planned.push(doneFrac * 4) });
  expect(planned).toEqual([1, 2, 3, 4]);
  const written: number[] = [];
  if (part) await blobOf(part, { onProgress: (doneFrac) => written.push(doneFrac) });
  expect(written).toHaveLength(15);
  expect(written).toEqual(written.toSorted((a, b) => a - b));
  expect(written.at(-1)).toBe(1);
});
