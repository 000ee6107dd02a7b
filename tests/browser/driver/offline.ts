import type { Page } from 'playwright-core';
import { NOT_KEPT, type Phone } from './phone.ts';

/** Waits until the whole app lies on the phone, takes the signal away, and loads the app again from the phone. */
export async function loseSignal({ context, page }: Phone): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await context.setOffline(true);
  await page.reload();
  await page.locator('h1').waitFor();
}

/** Whether the server can still be reached, past the service worker. */
export function hasSignal(page: Page): Promise<boolean> {
  const asked = (name: string) =>
    fetch(name).then(
      () => true,
      () => false,
    );
  return page.evaluate(asked, NOT_KEPT);
}
