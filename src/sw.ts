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
    const sent = await request.formData();
    const files = sent.getAll('files').filter((one) => one instanceof File);
    const kept = await keepShared(files, Date.now()).then(
      () => true,
      (error: unknown) => {
        console.error('shared in: not kept', error);
        return false;
      },
    );
    return Response.redirect(new URL(kept ? './#/tray' : './#/tray/full', self.registration.scope).href, 303);
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
