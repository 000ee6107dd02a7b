import { effect } from '@preact/signals';
import { afterEach, expect, it } from 'vitest';
import { setStore } from '../../../src/app/state/store.ts';
import { heldSession, letGo, sessionsInHand, showSession } from '../../../src/app/state/unsaved-sessions.ts';
import { writeBack } from '../../../src/app/state/write-back.ts';
import type { Entry } from '../../../src/schema/entry.ts';
import type { Store } from '../../../src/storage/store.ts';
import { newPhone, storeOn } from '../../storage/open-test-store.ts';
import { HUT, hutSession, tidyIs } from '../closing/hut-session.ts';

const storedIn = (entries: readonly Entry[], part: string) => entries.find(({ key }) => key[2] === part)?.v;
const makerIs = (v: string) => ({ puts: [{ subject: 'nameplate', part: 'maker', v }], undoLabel: 'Maker' });
/** A maker's name of 121 characters: one more than a line may have. */
const TOO_LONG = 'm'.repeat(121);

const fullPhone = (store: Store): Store => ({
  ...store,
  write: async () => ({ ok: false, problem: 'quotaFull', detail: '' }),
});

// What one test could not write is nothing to the next.
afterEach(() => letGo(HUT));

it('writes what is put at the very moment at which the change before is called saved', async () => {
  const { store, session } = await hutSession();
  let second: Promise<boolean> | null = null;
  let before = '';
  const stop = effect(() => {
    const { now } = session.saving.value;
    if (before === 'saving' && now === 'saved') second ??= session.put(tidyIs('failed'));
    before = now;
  });
  expect(await session.put(tidyIs('weak'))).toBe(true);
  expect(await second).toBe(true);
  stop();
  expect(session.unsaved).toEqual([]);
  expect(storedIn(await store.entriesOf(HUT), 'tidy')).toMatchObject({ grade: 'failed' });
});

it('saves the next change past one that no record can hold, which stays in hand, said to be refused', async () => {
  const { store, session } = await hutSession();
  expect(await session.put(makerIs(TOO_LONG))).toBe(false);
  expect(await session.put(tidyIs('failed'))).toBe(true);
  expect(storedIn(await store.entriesOf(HUT), 'tidy')).toMatchObject({ grade: 'failed' });
  expect(session.unsaved).toEqual([makerIs(TOO_LONG)]);
  expect(session.saving.value).toEqual({ now: 'notSaved', problem: 'refused' });
});

it('lets go of what was refused once the same is said anew, and takes a step back beside it', async () => {
  const { store, session } = await hutSession();
  const sound = storedIn(await store.entriesOf(HUT), 'tidy');
  await session.put(makerIs(TOO_LONG));
  await session.put(tidyIs('failed'));
  await session.undo();
  expect(storedIn(await store.entriesOf(HUT), 'tidy')).toEqual(sound);
  expect(await session.put(makerIs('Wren Works'))).toBe(true);
  expect(session.saving.value).toEqual({ now: 'saved' });
  expect(storedIn(await store.entriesOf(HUT), 'maker')).toBe('Wren Works');
});

it('keeps the order where a later change touches only a part of what was refused', async () => {
  const { store, session } = await hutSession();
  const both = { puts: [...makerIs(TOO_LONG).puts, ...tidyIs('weak').puts] };
  await session.put(both);
  expect(await session.put(tidyIs('failed'))).toBe(false);
  expect(session.unsaved).toEqual([both, tidyIs('failed')]);
  expect(storedIn(session.entries.value, 'tidy')).toMatchObject({ grade: 'failed' });
  expect(await session.put(makerIs('Wren Works'))).toBe(true);
  expect(session.unsaved).toEqual([]);
  expect(storedIn(await store.entriesOf(HUT), 'tidy')).toMatchObject({ grade: 'failed' });
});

it('writes a pack back whole that is not on the screen, when records were cleared: 23 entries', async () => {
  const { store, session } = await hutSession();
  const before = await store.entriesOf(HUT);
  showSession(session);
  setStore(fullPhone(store));
  await session.put(tidyIs('failed'));
  showSession(null);
  expect(heldSession(HUT)).toBe(session);

  const cleared = await storeOn(newPhone());
  setStore(cleared);
  expect(await writeBack()).toBeNull();
  const after = await cleared.entriesOf(HUT);
  expect(after).toHaveLength(23);
  const others = (entries: readonly Entry[]) => entries.filter(({ key }) => key[2] !== 'tidy');
  expect(others(after)).toEqual(others(before));
  expect(storedIn(after, 'tidy')).toMatchObject({ grade: 'failed' });
});

it('keeps the only copy in hand when it cannot be written back', async () => {
  const { store, session } = await hutSession();
  showSession(session);
  setStore(fullPhone(store));
  await session.put(tidyIs('failed'));
  const cleared = await storeOn(newPhone());
  setStore({ ...cleared, mergeIn: async () => ({ ok: false, problem: 'quotaFull', detail: '' }) });
  expect(await writeBack()).toBe('quotaFull');
  expect(session.entries.value).toHaveLength(23);
  expect(session.unsaved).toEqual([tidyIs('failed')]);
  showSession(null);
});

it('holds a pack that is written to though another is shown until that is written: 1 held, then 0', async () => {
  const { session } = await hutSession();
  const put = session.put(tidyIs('weak'));
  expect(sessionsInHand()).toEqual([session]);
  expect(await put).toBe(true);
  expect(sessionsInHand()).toEqual([]);
});

it('takes one step back however quickly Undo is tapped again: the first of two answers stands', async () => {
  const { session } = await hutSession();
  showSession(session);
  await session.put({ ...tidyIs('weak'), undoLabel: 'tidy: weak' });
  await session.put({ ...tidyIs('failed'), undoLabel: 'tidy: failed' });
  await Promise.all([session.undo(), session.undo()]);
  expect(session.record.value.answers.tidy).toMatchObject({ grade: 'weak' });
  showSession(null);
});
