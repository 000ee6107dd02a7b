import { computed, signal } from '@preact/signals';
import type { PhotoBytes } from '../../schema/photo.ts';
import type { Shelf } from '../../storage/store.ts';
import type { PackSession, PendingChange } from './pack-session.ts';

/** Sessions that have changes not written yet while another pack is open: none is let go before they are. */
const held = signal<readonly PackSession[]>([]);
/** The session on the screen, if any. */
const shown = signal<PackSession | null>(null);

/** How many places on the screen say by themselves what of its pack is not saved. */
export const saidOnScreen = signal(0);

/** Every session of which something could not be written. */
export const notSavedSessions = computed(() => {
  const all = shown.value === null ? held.value : [...held.value.filter((one) => one !== shown.value), shown.value];
  return all.filter(({ saving }) => saving.value.now === 'notSaved');
});

/** A session whose closed sheet holds something back and waits for a word from the person; null if there is none. */
export const askingSession = computed(() => {
  const all = shown.value === null ? held.value : [shown.value, ...held.value];
  return all.find(({ heldBack }) => heldBack.value.length > 0) ?? null;
});

export function isPackShown(): boolean {
  return shown.value !== null;
}

/** Takes note of the session that is shown; the one before it is held if it is not all written. */
export function showSession(session: PackSession | null): void {
  const before = shown.peek();
  shown.value = session;
  const others = held.peek().filter((one) => one !== session && one.unsaved.length > 0);
  const isLeft = before !== null && before !== session && before.unsaved.length > 0 && !others.includes(before);
  held.value = isLeft ? [...others, before] : others;
}

/** A session that is written to though another pack is shown, by work begun before that: held until it is all written. */
export function holdUnshown(session: PackSession): void {
  if (shown.peek() !== session && !held.peek().includes(session)) held.value = [...held.peek(), session];
}

export function releaseUnshown(session: PackSession): void {
  if (shown.peek() !== session && session.unsaved.length === 0)
    held.value = held.peek().filter((one) => one !== session);
}

/** The session of a pack that still has something to be written. */
export function heldSession(packId: string): PackSession | null {
  return held.peek().find((one) => one.packId === packId && one.unsaved.length > 0) ?? null;
}

/** What waits for a pack that is erased has nothing left to belong to. */
export function letGo(packId: string): void {
  if (shown.peek()?.packId === packId) shown.value = null;
  held.value = held.peek().filter((one) => one.packId !== packId);
}

/** Tries all of it again. */
export async function saveAgain(): Promise<void> {
  for (const session of notSavedSessions.peek()) {
    await session.flush();
    await session.reload();
  }
}

/** Every session that this page holds. */
export function sessionsInHand(): PackSession[] {
  return [...new Set([...held.value, ...(shown.value === null ? [] : [shown.value])])];
}

/** All changes that are written nowhere, of every session. */
export function allUnsaved(): PendingChange[] {
  // A change begins to wait, or stops, with this signal.
  return sessionsInHand().flatMap((one) => (one.saving.value.now === 'saved' ? [] : one.unsaved));
}

/** Bytes of a photo that are in hand and not on the phone yet. */
export function unsavedBytes(sha256: string, shelf: Shelf): PhotoBytes | null {
  const waiting = allUnsaved().flatMap(({ photos }) => photos ?? []);
  return waiting.find((one) => one.sha256 === sha256 && one.shelf === shelf)?.content ?? null;
}
