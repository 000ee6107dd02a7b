import { signal } from '@preact/signals';
import { store } from '../state/store.ts';

/**
 * What a photo was being taken for when the camera opened. It is saved before the camera opens, because the phone may
 * drop the page meanwhile; if it is still there when the app starts, the photo never arrived.
 */
export interface AwaitedPhoto {
  packId: string;
  zone: string;
  itemId: string | null;
  /** Words of what it was for. */
  what: string;
  /** The screen to come back to. */
  href: string;
  sinceMs: number;
}

/** Found at the start of the app: said until the person has dealt with it. */
export const droppedPhoto = signal<AwaitedPhoto | null>(null);

export async function awaitPhoto(awaited: AwaitedPhoto): Promise<void> {
  await keepAwaited(awaited);
}

export async function photoArrived(): Promise<void> {
  droppedPhoto.value = null;
  await keepAwaited(null);
}

/** A phone that has no room left for it still opens its camera: only the reminder after a dropped page is lost. */
async function keepAwaited(awaited: AwaitedPhoto | null): Promise<void> {
  try {
    await store().keep('awaitedPhoto', awaited);
  } catch (error) {
    console.warn('photo: a dropped page would not be noticed', error);
  }
}

/** At the start: what was awaited when the page was dropped, if anything. */
export async function findDroppedPhoto(): Promise<AwaitedPhoto | null> {
  const awaited = await store().kept<AwaitedPhoto>('awaitedPhoto');
  droppedPhoto.value = awaited;
  return awaited;
}
