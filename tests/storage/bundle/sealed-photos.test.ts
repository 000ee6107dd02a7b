import { expect, it } from 'vitest';
import { canonicalJson } from '../../../src/record/canonical-json.ts';
import { restoreBundle } from '../../../src/storage/bundle/restore-bundle.ts';
import { sha256Of } from '../../../src/storage/bundle/sha256-of.ts';
import type { Store } from '../../../src/storage/store.ts';
import { PACK } from '../../record/made-entries.ts';
import { newPhone, storeOn } from '../open-test-store.ts';
import { cardFrom, partsOf, read, writePhoto } from './bench-of-packs.ts';

/** Closes the sheet of the pack over its entries as they stand. */
async function close(store: Store): Promise<void> {
  const entries = await store.entriesOf(PACK);
  const bytes = new TextEncoder().encode(canonicalJson({ format: 'underlid-sealed-sheet', entries }));
  const sha256 = await sha256Of(bytes);
  const v = {
    revision: 1,
    closedAtMs: 1,
    appVersion: '0.1.0',
    byteCount: bytes.byteLength,
    entriesSha256: 'e'.repeat(64),
    score: null,
    verdict: { low: 'keepOut', high: 'noFinding' },
    settled: false,
  };
  const photos = [{ sha256, shelf: 'sealed' as const, content: { type: 'application/json', bytes: bytes.buffer } }];
  expect(
    await store.write({
      packId: PACK,
      puts: [{ subject: 'closing', part: sha256, v }],
      photos,
      card: cardFrom(entries),
    }),
  ).toMatchObject({ ok: true });
}

async function takeOff(store: Store, photo: string): Promise<void> {
  const entries = await store.entriesOf(PACK);
  const puts = [{ subject: 'photo', part: photo, gone: true as const }];
  expect(await store.write({ packId: PACK, puts, card: cardFrom(entries) })).toMatchObject({ ok: true });
}

async function restored(store: Store): Promise<Store> {
  const fresh = await storeOn(newPhone());
  for (const part of await partsOf(store, { packIds: [PACK] })) {
    const result = await read(part);
    if (!result.ok) throw new Error(`${result.refusal}: ${result.detail}`);
    await restoreBundle(fresh, result.bundle, { bringBackDeleted: false, cardOf: cardFrom });
  }
  return fresh;
}

it('a photo that revision 1 shows and that was taken off since is in the bundle and comes back; one taken off before is not', async () => {
  const store = await storeOn(newPhone());
  const [before, since, still] = [
    await writePhoto(store, PACK, { seed: 1 }),
    await writePhoto(store, PACK, { seed: 2 }),
    await writePhoto(store, PACK, { seed: 3 }),
  ];
  await takeOff(store, before);
  await close(store);
  await takeOff(store, since);
  const fresh = await restored(store);
  expect((await fresh.photo(since))?.bytes).toEqual((await store.photo(since))?.bytes);
  expect(await fresh.photo(since, 'thumbs')).not.toBeNull();
  expect(await fresh.photo(still)).not.toBeNull();
  expect(await fresh.photo(before)).toBeNull();
  expect((await fresh.entriesOf(PACK)).filter(({ key, gone }) => key[1] === 'photo' && !gone)).toHaveLength(1);
  // From the restored phone on to a third one as well, and gone from it when the pack is erased.
  expect(await (await restored(fresh)).photo(since)).not.toBeNull();
  await fresh.erase(PACK);
  expect(await fresh.photo(since)).toBeNull();
});
