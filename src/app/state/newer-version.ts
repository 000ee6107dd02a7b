import { signal } from '@preact/signals';

/** A newer version waits; the page asks before it is used. */
export const newerReady = signal(false);
/** The first visit has fetched everything and this page is served from it: from now on no signal is needed. */
export const offlineReady = signal(false);

let apply: () => void = () => {};

/** Registers the service worker of the built app. A browser without one works, but only with a signal. */
export async function watchVersions(): Promise<void> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const { Workbox } = await import('workbox-window');
  const worker = new Workbox('./sw.js');
  worker.addEventListener('controlling', (event) => {
    if (!event.isUpdate) offlineReady.value = true;
  });
  worker.addEventListener('waiting', () => {
    newerReady.value = true;
  });
  apply = () => {
    worker.addEventListener('controlling', () => location.reload());
    worker.messageSkipWaiting();
  };
  try {
    await worker.register();
  } catch (error) {
    console.warn('service worker: not registered, Underlid needs a signal', error);
  }
}

export function loadNewer(): void {
  apply();
}
