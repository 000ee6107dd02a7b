import { readFile } from 'node:fs/promises';
import { afterEach, expect, it, vi } from 'vitest';
import { checkFiles, type GoodFile, takeIn } from '../../../src/app/keep/restore-files.ts';
import { setStore } from '../../../src/app/state/store.ts';
import { showSession } from '../../../src/app/state/unsaved-sessions.ts';
import { sha256Of } from '../../../src/storage/bundle/sha256-of.ts';
import type { Store } from '../../../src/storage/store.ts';
import { PACK } from '../../record/made-entries.ts';
import { partsOf } from '../../storage/bundle/bench-of-packs.ts';
import { answer, change, newPhone, storeOn, written } from '../../storage/open-test-store.ts';
import { HUT, hutSession, tidyIs } from '../closing/hut-session.ts';

const watched = { signal: new AbortController().signal, onProgress: () => {} };
const asking = { ...watched, bringBackDeleted: false };
const bringing = { ...watched, bringBackDeleted: true };

afterEach(() => vi.unstubAllGlobals());

async function backupOf(store: Store, name: string): Promise<File> {
  const [part] = await partsOf(store, { withDemo: true });
  if (part === undefined) throw new Error('there is nothing to back up');
  return new File([part.blob], name);
}

async function checked(...files: File[]): Promise<GoodFile[]> {
  return (await checkFiles(files, watched)).map((file) => {
    if (!file.ok) throw new Error(file.detail);
    return { fileName: file.fileName, bundle: file.bundle };
  });
}

it.each([
  ['the older file first', (files: [File, File]) => files],
  ['the newer file first', (files: [File, File]) => files.toReversed()],
])(
  'brings back the newest of what two files hold, %s: failed, not sound; the older is not listed',
  async (_, order) => {
    const phone = newPhone();
    const store = await storeOn(phone);
    setStore(store);
    await written(store, change([answer('vents', 'sound')]));
    const older = await backupOf(store, 'a.zip');
    phone.clock.nowMs += 1000;
    await written(store, change([answer('vents', 'failed')]));
    const newer = await backupOf(store, 'b.zip');
    phone.clock.nowMs += 1000;
    await written(store, change([{ subject: 'answer', part: 'vents', gone: true }]));

    const good = await checked(...order([older, newer]));
    const { deleted } = await takeIn(good, asking);
    expect(deleted).toHaveLength(1);
    expect(deleted[0]).toContain('failed');
    await takeIn(good, bringing);
    expect((await store.entriesOf(PACK)).map(({ v }) => v)).toEqual([
      { kind: 'grade', grade: 'failed', evidence: 'seen' },
    ]);
  },
);

it('neither lists nor brings back what the newer of two files has as deleted already', async () => {
  const phone = newPhone();
  const store = await storeOn(phone);
  setStore(store);
  await written(store, change([answer('vents', 'sound')]));
  const older = await backupOf(store, 'a.zip');
  phone.clock.nowMs += 1000;
  await written(store, change([{ subject: 'answer', part: 'vents', gone: true }]));
  const good = await checked(older, await backupOf(store, 'b.zip'));
  expect((await takeIn(good, asking)).deleted).toEqual([]);
  await takeIn(good, bringing);
  expect((await store.entriesOf(PACK)).map(({ gone }) => gone)).toEqual([true]);
});

it('takes a bundle in twice whose checklist this version cannot grade by', async () => {
  const from = await storeOn(newPhone());
  const text = '{"id":"own","version":"1.0.0"}';
  const sha256 = await sha256Of(new TextEncoder().encode(text));
  const puts = [{ subject: 'pack', part: 'checklist', v: { id: 'own', version: '1.0.0', sha256 } }];
  await written(from, change([...puts, answer('vents', 'weak')], { definition: { sha256, text } }));
  const good = await checked(await backupOf(from, 'a.zip'));
  const store = await storeOn(newPhone());
  setStore(store);
  for (const writtenCount of [2, 0]) {
    const { packs, stopped } = await takeIn(good, asking);
    expect([packs[0]?.written.length, stopped]).toEqual([writtenCount, null]);
  }
});

it('leaves the card of a pack that still has something to save right: the name that came with the bundle', async () => {
  // Its checklist is not kept, so those of the app are asked for.
  vi.stubGlobal('fetch', async (path: string) => new Response(await readFile(`.${path}`)));
  const { store, session } = await hutSession();
  const other = await hutSession();
  const puts = [{ subject: 'nameplate', part: 'name', v: 'Hut 24, second reading' }];
  expect(await other.session.put({ puts })).toBe(true);
  const good = await checked(await backupOf(other.store, 'a.zip'));

  setStore({ ...store, write: async () => ({ ok: false, problem: 'quotaFull', detail: '' }) });
  showSession(session);
  await session.put(tidyIs('failed'));
  showSession(null);
  await takeIn(good, asking);
  await session.flush();
  setStore(store);
  await session.flush();
  expect(session.unsaved).toEqual([]);
  const [card] = await store.cards();
  expect(card).toMatchObject({ packId: HUT, name: 'Hut 24, second reading' });
  expect(session.record.value.nameplate.name).toBe('Hut 24, second reading');
});
