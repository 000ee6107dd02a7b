import { signal } from '@preact/signals';
import { type SharedFile, sharedFiles } from '../../storage/shared-in.ts';

/** What waits in the tray, as last looked up. */
export const waiting = signal<SharedFile[]>([]);

/** Never rejects: a browser that keeps no caches has an empty tray. */
export async function lookInTray(): Promise<void> {
  try {
    waiting.value = await sharedFiles();
  } catch (error) {
    console.warn('tray: not read', error);
  }
}

/** A page that stood open while something was shared in hears of it when it is looked at again. */
export function watchTray(): void {
  void lookInTray();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void lookInTray();
  });
}

export function isBundle({ name, type }: Pick<SharedFile, 'name' | 'type'>): boolean {
  return type === 'application/zip' || /\.zip$/i.test(name);
}
