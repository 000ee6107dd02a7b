import { lazily } from '../parts/lazily.tsx';

/** The sheet, its model and its styles are fetched when it is first looked at. */
export const SheetScreen = lazily(() => import('../sheet/sheet-page.tsx').then(({ SheetPage }) => SheetPage));
