import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { expect } from 'vitest';
import type { Entry } from '../../src/schema/entry.ts';
import type { PackCard } from '../../src/schema/pack-card.ts';
import { openStore, type StoreEnvironment } from '../../src/storage/open-store.ts';
import type { OutsideMarker } from '../../src/storage/outside-marker.ts';
import type { Change, OpenResult, Put, Store } from '../../src/storage/store.ts';
import { PACK } from '../record/made-entries.ts';
import './compare-bytes.ts';

/** A phone: one browser's databases and its note outside them. Open several stores on it for several tabs. */
export interface Phone {
  indexedDB: IDBFactory;
  marker: OutsideMarker & { text: string | null };
  clock: { nowMs: number };
}

export function newPhone(): Phone {
  const marker = {
    text: null as string | null,
    read: () => marker.text,
    write: (text: string) => {
      marker.text = text;
    },
  };
  return { indexedDB: new IDBFactory(), marker, clock: { nowMs: 1_764_000_000_000 } };
}

export async function openOn(phone: Phone, more: Partial<StoreEnvironment> = {}): Promise<OpenResult> {
  const otherTabs = { tell: () => {}, listen: () => () => {}, close: () => {} };
  const { indexedDB, marker, clock } = phone;
  return openStore({ indexedDB, marker, nowMs: () => clock.nowMs, otherTabs, ...more });
}

export async function storeOn(phone: Phone, more: Partial<StoreEnvironment> = {}): Promise<Store> {
  const opened = await openOn(phone, more);
  if (!opened.ok) throw new Error(`${opened.problem}: ${opened.detail}`);
  return opened.store;
}

/** A card that counts the live answers, so that a test can see what it was computed from. */
export function cardOf(packId: string, demo = false) {
  return (entries: readonly Entry[]): PackCard => ({
    packId,
    demo,
    name: String(entries.find(({ key }) => key[2] === 'name')?.v ?? ''),
    sample: '',
    stage: 'nameplate',
    route: 'short',
    settledCount: entries.filter(({ key, gone }) => key[1] === 'answer' && !gone).length,
    askedCount: 30,
    score: null,
    verdict: { low: 'stop', high: 'noFinding' },
    worst: null,
    photoId: null,
    photoCount: 0,
    changedAtMs: 0,
    gone: false,
  });
}

export function change(puts: Put[], more: Partial<Change> = {}): Change {
  return { packId: PACK, puts, card: cardOf(more.packId ?? PACK)([]), ...more };
}

export function answer(part: string, grade: string): Put {
  return { subject: 'answer', part, v: { kind: 'grade', grade, evidence: 'seen' } };
}

export async function written(store: Store, given: Change): Promise<Entry[]> {
  const result = await store.write(given);
  expect(result).toMatchObject({ ok: true });
  return result.ok ? result.entries : [];
}

export function bytesOf(length: number, seed = 1): ArrayBuffer {
  return Uint8Array.from({ length }, (_, i) => (i * 31 + seed * 17) % 256).buffer;
}
