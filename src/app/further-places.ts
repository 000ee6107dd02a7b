import { lazily } from './parts/lazily.tsx';

/** Screens of a pack that are fetched when they are first looked at. */
export const RemediesScreen = lazily(() => import('./remedies/remedies-page.tsx').then((file) => file.RemediesPage));
export const OwnerScreen = lazily(() => import('./remedies/owner-page.tsx').then((file) => file.OwnerPage));
export const PublishScreen = lazily(() => import('./publish/publish-page.tsx').then((file) => file.PublishPage));
export const CardScreen = lazily(() => import('./publish/card-page.tsx').then((file) => file.CardPage));
export const LetterScreen = lazily(() => import('./publish/letter-page.tsx').then((file) => file.LetterPage));
export const PricesScreen = lazily(() => import('./prices/prices-page.tsx').then((file) => file.PricesPage));
export const ShootClockScreen = lazily(() =>
  import('./shoot-clock/shoot-clock-page.tsx').then((file) => file.ShootClockPage),
);
export const SecondReaderScreen = lazily(() =>
  import('./second-reader/second-reader-page.tsx').then((file) => file.SecondReaderPage),
);
