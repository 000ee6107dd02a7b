import { lazily } from '../parts/lazily.tsx';

/** Fetched when it is first looked at, like the sheet whose blocks it shows. */
export const SinceScreen = lazily(() => import('./since-page.tsx').then(({ SincePage }) => SincePage));
