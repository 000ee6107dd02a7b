import type { Locator, Page } from 'playwright-core';
import { words } from '../../../src/text/words.ts';
import { appUrl } from './phone.ts';

/** A file box is called a button as well, so only real ones count. */
export const button = (page: Page, name: string): Locator =>
  page.getByRole('button', { name, exact: true }).and(page.locator('button'));
export const link = (page: Page, name: string): Locator => page.getByRole('link', { name, exact: true });

export async function tapButton(page: Page, name: string): Promise<void> {
  await button(page, name).tap();
}

export async function tapLink(page: Page, name: string): Promise<void> {
  await link(page, name).tap();
}

/** By the address, as from a bookmark or the home screen. */
export async function goTo(page: Page, hash: string): Promise<void> {
  await page.goto(appUrl(hash));
  await page.locator('h1').waitFor();
}

/** A part of Keep, unfolded: look, recheck, checklists or about. */
export async function keepPart(page: Page, part: string): Promise<Locator> {
  const fold = page.locator(`details[data-part="${part}"]`);
  await fold.waitFor();
  if ((await fold.getAttribute('open')) === null) await fold.locator(':scope > summary').tap();
  return fold;
}

/** The heading of the screen, once it is `title`. */
export async function expectTitle(page: Page, title: string): Promise<void> {
  await page.getByRole('heading', { level: 1 }).filter({ hasText: title }).waitFor();
}

/** Waits until the screen calls the change `what` saved. */
export async function untilSaved(page: Page, what: string): Promise<void> {
  const line = page.locator('.saved-line');
  await line.locator('.saved-what').getByText(what, { exact: true }).waitFor();
  await line.getByText(`✓ ${words.saved}`, { exact: true }).waitFor();
}

/** Waits until nothing on the screen has changed for `quietMs`, so that it is not judged while it is still being laid out. */
export async function atRest(page: Page, quietMs = 60): Promise<void> {
  await page.evaluate(async (quiet) => {
    await document.fonts.ready;
    await new Promise<void>((resolve) => {
      const done = () => {
        watcher.disconnect();
        resolve();
      };
      let timer = setTimeout(done, quiet);
      const watcher = new MutationObserver(() => {
        clearTimeout(timer);
        timer = setTimeout(done, quiet);
      });
      watcher.observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
    });
  }, quietMs);
}
