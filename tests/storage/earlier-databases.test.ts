import { describe, expect, it } from 'vitest';
import { OUR_LADDER } from '../../src/migrations/lift-entry.ts';
import { foldRecord } from '../../src/record/fold-record.ts';
import type { Entry } from '../../src/schema/entry.ts';
import type { UndoStep } from '../../src/storage/undo-steps.ts';
import { newSince } from '../migrations/new-since.ts';
import { watchedLadder } from '../migrations/watched-ladder.ts';
import { OTHER_PACK } from '../record/made-entries.ts';
import { EARLIER_VERSIONS, type EarlierVersion, everyRow, layOut, type Rows, sorted } from './earlier-versions.ts';
import { answer, bytesOf, cardOf, change, newPhone, openOn, storeOn, written } from './open-test-store.ts';

/** Rows by store, counted in what each version's own database held. */
const ROW_COUNTS: Readonly<Record<number, object>> = {
  1: { entries: 368, cards: 2, photos: 18, thumbs: 18, originals: 1, definitions: 1, undo: 4, uses: 19, kept: 1, device: 2 },
  2: { entries: 628, cards: 4, photos: 24, thumbs: 24, originals: 3, logs: 5, definitions: 2, undo: 10, uses: 32, kept: 2, device: 2 },
  3: { entries: 637, cards: 4, photos: 24, thumbs: 24, originals: 3, logs: 5, sealed: 4, definitions: 2, undo: 8, uses: 36, kept: 3, device: 2 },
}; // biome-ignore format: a line each
const STORE_COUNT_NOW = 13;
const NUMBER_NOW = 4004;

async function phoneOf({ databaseNumber, rows }: EarlierVersion, given: Rows = rows()) {
  const phone = newPhone();
  await layOut(phone, databaseNumber, given);
  return phone;
}

/** Opens it past the app. */
function openedBare(phone: Awaited<ReturnType<typeof phoneOf>>, number: number): Promise<IDBDatabase | string> {
  return new Promise((resolve) => {
    const request = phone.indexedDB.open('underlid', number);
    request.onerror = () => resolve(request.error?.name ?? '');
    request.onsuccess = () => resolve(request.result);
  });
}

const entriesInSteps = (rows: Rows) =>
  (rows.undo ?? []).flatMap(([, step]) =>
    (step as UndoStep).rows.flatMap(({ before, after }) => (before === null ? [after] : [before, after])),
  );

function stampOf(entry: unknown): string {
  if (typeof entry === 'object' && entry !== null && 'at' in entry) return String(entry.at);
  throw new Error('the fixture has no such entry');
}

/** Its value has been written again since, by a change that cannot be taken back: nothing is left to take back. */
const OVERTAKEN = 'Headroom: weak';

describe.each(EARLIER_VERSIONS)('a database of version $version', (earlier) => {
  const { version, databaseNumber } = earlier;

  it(`opens as ${NUMBER_NOW}, keeps every row, and gains the stores it lacked, empty`, async () => {
    const phone = await phoneOf(earlier);
    const before = earlier.rows();
    expect(Object.fromEntries(Object.entries(before).map(([name, list]) => [name, list.length]))).toEqual(ROW_COUNTS[version]); // biome-ignore format: one line
    (await storeOn(phone)).close();
    const { number, rows } = await everyRow(phone);
    expect(number).toBe(NUMBER_NOW);
    expect(Object.keys(rows)).toHaveLength(STORE_COUNT_NOW);
    expect(sorted(rows)).toEqual(sorted({ logs: [], sealed: [], voices: [], ...before }));
  });

  it('gives back every record as it was, its card, its bytes and its definitions', async () => {
    const store = await storeOn(await phoneOf(earlier));
    for (const record of earlier.records()) {
      const entries = await store.entriesOf(record.packId);
      const folded = foldRecord(record.packId, entries);
      expect(folded).toEqual({ ...record, ...newSince(version, record.packId, entries) });
      for (const { id, keptOriginal } of folded.photos) {
        expect((await store.photo(id))?.bytes.byteLength).toBeGreaterThan(100);
        expect(await store.photo(id, 'thumbs')).not.toBeNull();
        if (keptOriginal !== undefined) expect(await store.photo(keptOriginal, 'originals')).not.toBeNull();
      }
      for (const { id, byteCount } of folded.tests.logs)
        expect((await store.log(id))?.bytes.byteLength).toBe(byteCount);
      for (const { sha256, byteCount } of folded.closings)
        expect((await store.sealed(sha256))?.bytes.byteLength).toBe(byteCount);
      const { sha256 = '' } = folded.checklist ?? {};
      expect(await store.definitionText(sha256)).toContain('"lfp-drop-in"');
    }
    const cards = (earlier.rows().cards ?? []).map(([, card]) => card);
    expect(await store.cards()).toEqual(expect.arrayContaining(cards));
    expect(await store.cards()).toHaveLength(cards.length);
  });

  it('goes on as the same phone: device, settings, every step back, and a stamp after the newest', async () => {
    const store = await storeOn(await phoneOf(earlier));
    const { undo = [], device = [], kept = [] } = earlier.rows();
    const [[, clock] = ['', ''], [, deviceId] = ['', '']] = device;
    expect(store.deviceId).toBe(deviceId);
    for (const [name, value] of kept) expect(await store.kept(String(name))).toEqual(value);
    for (const [key, value] of undo.toReversed()) {
      const [packId] = key as [string, string];
      const { label, rows } = value as UndoStep;
      expect(await store.undoLabel(packId)).toBe(label);
      const undone = await store.undo(packId, cardOf(packId));
      if (!undone.ok) throw new Error(undone.detail);
      const earlierValues = rows.map(({ before }) => before?.v ?? null);
      expect(undone.entries.map(({ v }) => v)).toEqual(label === OVERTAKEN ? [] : earlierValues);
    }
    const [packId = ''] = earlier.records().map((record) => record.packId);
    const [entry] = await written(store, change([answer('bus-bars', 'weak')], { packId }));
    expect((entry?.at ?? '') > String(clock)).toBe(true);
    const sha256 = '7'.repeat(64);
    const content = { type: 'application/json', bytes: bytesOf(100) };
    await written(store, change([answer('lug', 'weak')], { packId, photos: [{ sha256, shelf: 'sealed', content }] }));
    expect(await store.sealed(sha256)).toEqual(content);
  });

  it(`closes the tab that still has it open as ${databaseNumber}, and refuses that version from then on`, async () => {
    const phone = await phoneOf(earlier);
    let told = 0;
    const old = await openedBare(phone, databaseNumber);
    if (typeof old === 'string') throw new Error(old);
    old.onversionchange = () => {
      told += 1;
      old.close();
    };
    (await storeOn(phone)).close();
    expect(told).toBe(1);
    expect(await openedBare(phone, databaseNumber)).toBe('VersionError');
  });

  it('gains stores without a step where only the layout is older, steps to take back kept', async () => {
    const phone = await phoneOf(earlier);
    const present = version;
    (await storeOn(phone, { ladder: { steps: [], present } })).close();
    const { number, rows } = await everyRow(phone);
    expect([number, rows.undo?.length]).toEqual([version * 1000 + 4, earlier.rows().undo?.length]);
  });

  it('runs every step once on every entry and on every entry that a step to take back holds', async () => {
    const ran = new Map<number, number>();
    const ladder = watchedLadder((to) => ran.set(to, (ran.get(to) ?? 0) + 1));
    const phone = await phoneOf(earlier);
    (await storeOn(phone, { ladder })).close();
    const rows = earlier.rows();
    const all = (rows.entries?.length ?? 0) + entriesInSteps(rows).length;
    const wanted = OUR_LADDER.steps.filter(({ to }) => to > version).map(({ to }) => [to, all]);
    expect([...ran]).toEqual(expect.arrayContaining(wanted));
    expect(ran.size).toBe(wanted.length);
    (await storeOn(phone, { ladder })).close();
    expect([...ran.values()].every((count) => count === all)).toBe(true);
  });

  it.each([
    ['the last of its entries', (rows: Rows) => stampOf(rows.entries?.at(-1)?.[1])],
    ['what a step to take back holds', (rows: Rows) => stampOf(entriesInSteps(rows)[0])],
  ])(
    'is set aside untouched, with the place, when a step fails on %s; today’s step opens it after all',
    async (_, pick) => {
      const phone = await phoneOf(earlier);
      const at = pick(earlier.rows());
      const seen: Entry[] = [];
      const ladder = watchedLadder((to, entry) => {
        if (to !== OUR_LADDER.present || entry.at !== at) return;
        seen.push(entry);
        throw new Error('made to fail');
      });
      const before = await everyRow(phone);
      const opened = await openOn(phone, { ladder });
      expect(opened).toEqual({
        ok: false,
        problem: 'migrationFailed',
        detail: `step 4 on ${seen[0]?.key.join('/')}: Error: made to fail`,
      });
      expect(await everyRow(phone)).toEqual(before);
      expect(before.number).toBe(databaseNumber);
      (await storeOn(phone)).close();
      expect((await everyRow(phone)).number).toBe(NUMBER_NOW);
    },
  );

  it('is refused untouched once a newer app has lifted it', async () => {
    const phone = await phoneOf(earlier);
    const steps = [...OUR_LADDER.steps, { to: 5, step: (entry: Entry) => ({ ...entry, ofTomorrow: true }) }];
    (await storeOn(phone, { ladder: { steps, present: 5 } })).close();
    const before = await everyRow(phone);
    expect([before.number, before.rows.entries?.every(([, entry]) => 'ofTomorrow' in (entry as object))]).toEqual([5004, true]); // biome-ignore format: one line
    expect(await openOn(phone)).toMatchObject({ ok: false, problem: 'newer' });
    expect(await everyRow(phone)).toEqual(before);
  });

  it(`opens empty with the same ${STORE_COUNT_NOW} stores as one made new`, async () => {
    const empty = Object.fromEntries(Object.keys(earlier.rows()).map((name) => [name, []]));
    const old = await phoneOf(earlier, empty);
    (await storeOn(old)).close();
    const fresh = newPhone();
    const store = await storeOn(fresh);
    await written(store, change([answer('a', 'weak')], { packId: OTHER_PACK }));
    store.close();
    const names = async (phone: typeof old) => Object.keys((await everyRow(phone)).rows);
    expect(await names(old)).toHaveLength(STORE_COUNT_NOW);
    expect(await names(old)).toEqual(await names(fresh));
  });
});
