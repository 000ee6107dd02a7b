import { signal } from '@preact/signals';
import type { PackCard } from '../../schema/pack-card.ts';
import { store } from './store.ts';

/** Cards of all packs, newest change first, packs put away included. */
export const cards = signal<PackCard[]>([]);

export async function refreshBench(): Promise<void> {
  const found = await store().cards();
  cards.value = found.sort((a, b) => b.changedAtMs - a.changedAtMs);
}
