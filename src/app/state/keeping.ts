import { signal } from '@preact/signals';
import { askToPersist, isPersisted } from '../../storage/space.ts';

/** Whether the phone has promised to keep the records. */
export const keeping = signal<'persisted' | 'refused' | 'unknown'>('unknown');

/** The browser's offer to install, where it makes one. */
export const installPrompt = signal<InstallPrompt | null>(null);

interface InstallPrompt extends Event {
  prompt(): Promise<unknown>;
}

export async function watchKeeping(): Promise<void> {
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    installPrompt.value = event as InstallPrompt;
  });
  addEventListener('appinstalled', () => {
    installPrompt.value = null;
  });
  if (await isPersisted()) keeping.value = 'persisted';
}

export async function askPersistence(): Promise<void> {
  keeping.value = await askToPersist();
}

export async function installNow(): Promise<void> {
  await installPrompt.value?.prompt();
  installPrompt.value = null;
}
