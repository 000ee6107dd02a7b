import { signal } from '@preact/signals';
import type { PackCard } from '../../schema/pack-card.ts';
import { store } from './store.ts';

/** Cards of all packs, newest change first, packs put away included. */
export const cards = signal<PackCard[]>([]);

/** Photos of the tester's own packs that are in no backup. */
export const photosInNoBackup = signal(0);

/** Both at once, so that nothing on the Bench moves once it is shown. */
export async function refreshBench(): Promise<void> {
  const [found, count] = await Promise.all([store().cards(), store().photosInNoBackup()]);
  photosInNoBackup.value = count;
  cards.value = found.sort((a, b) => b.changedAtMs - a.changedAtMs);
}
