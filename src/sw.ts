/// <reference lib="WebWorker" />
import { cleanupOutdatedCaches, createHandlerBoundToURL, precacheAndRoute } from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import { keepShared } from './storage/shared-in.ts';

declare const self: ServiceWorkerGlobalScope;

/** Everything the app is made of is fetched once and served from the phone afterwards; nothing else is ever fetched. */
precacheAndRoute(self.__WB_MANIFEST);
cleanupOutdatedCaches();
registerRoute(new NavigationRoute(createHandlerBoundToURL('index.html')));

// What another app shares in is kept, then the page is opened where it can be put into a pack.
registerRoute(
  ({ url }) => url.pathname === new URL('share-in', self.registration.scope).pathname,
  async ({ request }) => {
    const to = (place: string) => Response.redirect(new URL(place, self.registration.scope).href, 303);
    try {
      const sent = await request.formData();
      await keepShared(
        sent.getAll('files').filter((one) => one instanceof File),
        Date.now(),
      );
      return to('./#/tray');
    } catch (error) {
      console.error('shared in: not kept', error);
      return to('./#/tray/full');
    }
  },
  'POST',
);

// The page of the first visit too is served from here as soon as everything is on the phone: its screens are fetched one by
// one, and a tester who has read that no signal is needed goes down to the bench with that very page.
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

// A new version waits until the page, having asked, tells it to go on.
self.addEventListener('message', (event) => {
  if ((event.data as { type?: string } | null)?.type === 'SKIP_WAITING') void self.skipWaiting();
});
