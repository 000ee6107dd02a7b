import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { benchWords, packWords } from '../../src/text/bench.ts';
import { closedWords as say } from '../../src/text/closed.ts';
import { words } from '../../src/text/words.ts';
import { builtInItem } from '../checklists/built-in.ts';
import { storedEntries, storedValue } from './driver/database.ts';
import { answer, beginPack } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { appUrl, emptyPhone, type Phone } from './driver/phone.ts';
import { expectTitle, goTo, tapButton } from './driver/screen.ts';

const POSTS = builtInItem('terminal-posts');
let browser: Browser;
let phone: Phone;
let packId: string;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  phone = await emptyPhone(browser);
  await beginPack(phone.page, { name: 'First' });
  packId = await beginPack(phone.page, { name: 'Second' });
  await answer(phone.page, { packId, itemId: POSTS.id }, 'weak');
});

async function beside(): Promise<Page> {
  const page = await phone.context.newPage();
  await page.goto(appUrl('not-kept.txt'));
  return page;
}

const clear = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.deleteDatabase('underlid');
        request.onsuccess = () => resolve();
        request.onerror = () => reject(request.error);
      }),
  );

/** What the Bench says of 2 packs gone, whatever the moment. */
const told = (page: Page) =>
  page.getByRole('alert').filter({ hasText: benchWords.vanished(2, '|').split('|')[0] ?? '' });

it('records cleared while the app was closed are missed at the next start: 2 packs, and since when', async () => {
  const other = await beside();
  await phone.page.close();
  await clear(other);
  const page = await phone.context.newPage();
  await page.goto(appUrl());
  await told(page).waitFor();
  const year = String(new Date().getFullYear());
  expect(await told(page).textContent()).toContain(year);
  // It is said again until there is something here.
  await page.reload();
  await told(page).waitFor();
});

it('records cleared under the running app are said at once; the open pack can be written again from the screen', async () => {
  const { page } = phone;
  const other = await beside();
  await clear(other);
  const over = page.getByRole('dialog', { name: say.title.closed });
  await over.waitFor();
  await tapButton(page, words.tryAgain);
  await over.getByText(say.cleared(2)).waitFor();
  await tapButton(page, say.writeBack);
  await over.waitFor({ state: 'hidden' });
  await expectTitle(page, POSTS.ask);
  const entries = await storedEntries(page);
  expect(storedValue(entries, 'answer', POSTS.id)).toMatchObject({ grade: 'weak' });
  expect(storedValue(entries, 'nameplate', 'name')).toBe('Second');
  await answer(page, { packId, itemId: POSTS.id }, 'failed');
  await goTo(page, '#/');
  await page.getByText(words.packLabel('Second', '1')).waitFor();
  expect(await page.getByText(words.packLabel('First', '1')).count()).toBe(0);
  await told(page).waitFor();
});

it('records cleared under the running app are told with their number after the page was loaded again', async () => {
  const { page } = phone;
  await clear(await beside());
  await page.getByRole('dialog', { name: say.title.closed }).waitFor();
  await tapButton(page, say.again);
  await expectTitle(page, packWords.lost);
  await goTo(page, '#/');
  await told(page).waitFor();
});
