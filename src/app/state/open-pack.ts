import { effect, signal } from '@preact/signals';
import { foldRecord } from '../../record/fold-record.ts';
import { definitionByHash } from './definitions.ts';
import { keepOnPhone } from './kept.ts';
import { otherTabWrote } from './other-tab.ts';
import { PackSession } from './pack-session.ts';
import { store } from './store.ts';
import { heldSession, letGo, showSession } from './unsaved-sessions.ts';

export type Opened =
  | { state: 'opening' }
  | { state: 'absent' }
  | { state: 'noDefinition' }
  | { state: 'open'; session: PackSession };

/** The pack on the screen. Leaving it for the bench keeps it open; another pack takes its place. */
export const opened = signal<Opened>({ state: 'opening' });
let openId: string | null = null;

/** Under this name the phone keeps which pack was open last. */
export const LAST_PACK = 'lastPack';

/** Opens a pack unless it is the open one already. */
export async function openPack(packId: string): Promise<void> {
  if (openId === packId && opened.value.state === 'open') return;
  openId = packId;
  void keepOnPhone(LAST_PACK, packId);
  const held = heldSession(packId);
  if (held !== null) {
    opened.value = { state: 'open', session: held };
    await held.flush();
    await held.reload();
    return;
  }
  opened.value = { state: 'opening' };
  const entries = await store().entriesOf(packId);
  const record = foldRecord(packId, entries);
  const reference = record.checklist;
  const definition = reference && (await definitionByHash(reference.sha256));
  const earlier = record.carriedFrom && (await definitionByHash(record.carriedFrom.sha256));
  if (openId !== packId) return;
  if (!record.here && record.newestAt === null) opened.value = { state: 'absent' };
  else if (!definition) opened.value = { state: 'noDefinition' };
  else {
    const session = new PackSession(packId, definition, entries, earlier);
    session.undoLabel.value = await store().undoLabel(packId);
    opened.value = { state: 'open', session };
  }
}

/** It is read anew when next opened; what of it is not written yet stays in hand. */
export function forgetOpenPack(packId: string): void {
  if (openId !== packId) return;
  openId = null;
  opened.value = { state: 'opening' };
}

/** The same of a pack that is erased: nothing of it is to be written any more. */
export function dropOpenPack(packId: string): void {
  letGo(packId);
  forgetOpenPack(packId);
}

// A session that leaves the screen is held until all of it is written.
effect(() => {
  const now = opened.value;
  if (now.state !== 'opening' || openId === null) showSession(now.state === 'open' ? now.session : null);
});

// Another tab wrote: the open pack is read again.
effect(() => {
  const wrote = otherTabWrote.value;
  const now = opened.peek();
  if (wrote && now.state === 'open' && now.session.packId === wrote.packId) void now.session.reload();
});

// The record was carried over to another checklist, or that was undone: it is opened anew, to be graded by that one.
effect(() => {
  const now = opened.value;
  if (now.state !== 'open') return;
  const reference = now.session.record.value.checklist;
  const isSaved = now.session.saving.value.now === 'saved';
  if (reference === null || !isSaved || reference.sha256 === now.session.definition.sha256) return;
  forgetOpenPack(now.session.packId);
  void openPack(now.session.packId);
});
