import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { leftBehindWords, closedWords as say } from '../../src/text/closed.ts';
import { itemWords } from '../../src/text/item.ts';
import { startWords } from '../../src/text/start.ts';
import { words } from '../../src/text/words.ts';
import { builtInItem } from '../checklists/built-in.ts';
import { tooSmall, tooWide } from './driver/access-checks.ts';
import { everythingStored } from './driver/database.ts';
import { answer, beginPack } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { appUrl, emptyPhone, type Phone } from './driver/phone.ts';
import { button, expectTitle, tapButton } from './driver/screen.ts';

const ITEM = builtInItem('terminal-posts');

let browser: Browser;
let phone: Phone;
let packId: string;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  phone = await emptyPhone(browser);
  packId = await beginPack(phone.page, { name: 'Taken over' });
  await answer(phone.page, { packId, itemId: ITEM.id }, 'weak');
});

/** Another page of the same origin, without the app. */
async function beside(): Promise<Page> {
  const page = await phone.context.newPage();
  await page.goto(appUrl('checklists/none.txt').replace('#', ''));
  return page;
}

/** A newer Underlid on this phone raises the database. */
async function raise(page: Page): Promise<void> {
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const open = indexedDB.open('underlid', 99_003);
        open.onsuccess = () => {
          open.result.close();
          resolve();
        };
        open.onerror = () => reject(open.error);
      }),
  );
}

const over = (page: Page, because: 'old' | 'closed') => page.getByRole('dialog', { name: say.title[because] });

it('an old page beside a newer version says so at once, writes nothing more, and shows what was typed after the reload', async () => {
  const { page } = phone;
  await tapButton(page, itemWords.note);
  await page.getByLabel(itemWords.noteHint).fill('left post turns by hand');
  const other = await beside();
  const before = await everythingStored(other);
  await raise(other);
  await over(page, 'old').waitFor();
  await over(page, 'old').getByLabel(say.notSaved).waitFor();
  expect(await over(page, 'old').getByLabel(say.notSaved).inputValue()).toContain('left post turns by hand');
  expect(await tooSmall(page)).toEqual([]);
  expect(await tooWide(page)).toEqual([]);
  // Not to be waved away.
  await page.keyboard.press('Escape');
  await over(page, 'old').waitFor();
  expect(await everythingStored(other)).toEqual(before);
  await tapButton(page, say.again);
  // This app is still the older one: the records are refused whole, and untouched.
  await expectTitle(page, startWords.title);
  await page.getByText(startWords.problems.newer).waitFor();
  expect(await everythingStored(other)).toEqual(before);
});

it('an answer given after a newer version took over is named as not saved and kept in view', async () => {
  const { page } = phone;
  const other = await beside();
  const before = await everythingStored(other);
  // The very moment: the tap lands before the page has heard.
  await page.evaluate(() => {
    Reflect.set(globalThis, 'tapLater', () => document.querySelector<HTMLElement>('[data-grade="failed"]')?.click());
  });
  await raise(other);
  await over(page, 'old').waitFor();
  await page.evaluate(() => Reflect.get(globalThis, 'tapLater')());
  await expect.poll(() => over(page, 'old').getByLabel(say.notSaved).inputValue()).toContain(ITEM.title);
  expect(await everythingStored(other)).toEqual(before);
});

it('records newer than the app are refused at the start, byte-identical, and can be carried away as a file', async () => {
  const other = await beside();
  await phone.page.close();
  await raise(other);
  const before = await everythingStored(other);
  const page = await phone.context.newPage();
  await page.goto(appUrl());
  await expectTitle(page, startWords.title);
  await page.getByText(startWords.problems.newer).waitFor();
  const [download] = await Promise.all([page.waitForEvent('download'), tapButton(page, startWords.raw)]);
  const { readFile } = await import('node:fs/promises');
  const raw = JSON.parse(await readFile(await download.path(), 'utf8'));
  expect(raw).toMatchObject({ format: 'underlid-raw-records', databaseVersion: 99_003 });
  expect(raw.entries.map((entry: { key: string[] }) => entry.key.slice(1).join('/'))).toContain(`answer/${ITEM.id}`);
  expect(Object.keys(raw.definitions)).toHaveLength(1);
  await page.getByText(startWords.rawSaved(raw.entries.length)).waitFor();
  expect(await tooSmall(page)).toEqual([]);
  expect(await everythingStored(other)).toEqual(before);
});

it('what was typed and not saved is shown once more after the reload, until the person is done with it', async () => {
  const { page } = phone;
  await page.evaluate(() => sessionStorage.setItem('underlid.notSaved', 'Terminal posts: left post turns'));
  await page.reload();
  const again = page.getByRole('dialog', { name: leftBehindWords.title });
  await again.waitFor();
  expect(await again.getByLabel(leftBehindWords.lead).inputValue()).toBe('Terminal posts: left post turns');
  await tapButton(page, leftBehindWords.done);
  await again.waitFor({ state: 'hidden' });
  await page.reload();
  await expectTitle(page, ITEM.ask);
  expect(await again.count()).toBe(0);
  expect(await button(page, words.undo).count()).toBe(1);
});
