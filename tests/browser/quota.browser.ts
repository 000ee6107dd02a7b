import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { itemWords } from '../../src/text/item.ts';
import { keepWords } from '../../src/text/keep.ts';
import { words, writeProblems } from '../../src/text/words.ts';
import { builtInItem } from '../checklists/built-in.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { everythingStored, storedEntries, storedValue } from './driver/database.ts';
import { notSavedNotice, tryAgain } from './driver/failing-writes.ts';
import { answer, beginPack } from './driver/job.ts';
import { launchBrowser, PHONE } from './driver/launch.ts';
import { appUrl, emptyPhone } from './driver/phone.ts';
import { leaveCallouts, photograph, photographItem } from './driver/photo.ts';
import { restoreBundles, saveBundle } from './driver/save.ts';
import { goTo, tapButton } from './driver/screen.ts';

const POSTS = builtInItem('terminal-posts');
const HANDLES = builtInItem('handles');
const roll = cameraRoll();
let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/**
 * A phone whose browser allows so little from the very start: while a database is open, Chromium goes by the room it
 * last found for up to half a minute, so a limit set later comes too late. Returns how to lift it as well.
 */
async function smallPhone(): Promise<{ page: Page; lift: () => Promise<void>; end: () => Promise<void> }> {
  const context = await browser.newContext(PHONE);
  context.setDefaultTimeout(15_000);
  const page = await context.newPage();
  const cdp = await context.newCDPSession(page);
  const { origin } = new URL(appUrl());
  await cdp.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: QUOTA_BYTES });
  await page.goto(appUrl());
  await page.locator('h1').waitFor();
  return {
    page,
    lift: async () => {
      await cdp.send('Storage.overrideQuotaForOrigin', { origin });
    },
    end: () => context.close(),
  };
}

/** Enough for the app itself and a few photos. */
const QUOTA_BYTES = 20_000_000;

/** Fills what is left with bytes of another database of the same origin, until the browser refuses. */
async function fillUp(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const open = indexedDB.open('something-else', 1);
    open.onupgradeneeded = () => open.result.createObjectStore('bytes');
    await new Promise((resolve) => open.addEventListener('success', resolve));
    let filled = 0;
    for (let size = 1_000_000; size >= 1; size = Math.floor(size / 10)) {
      for (;;) {
        const full = await new Promise<boolean>((resolve) => {
          const tx = open.result.transaction('bytes', 'readwrite');
          tx.objectStore('bytes').put(crypto.getRandomValues(new Uint8Array(Math.min(size, 65_536))), Math.random());
          for (let more = 65_536; more < size; more += 65_536) {
            tx.objectStore('bytes').put(crypto.getRandomValues(new Uint8Array(65_536)), Math.random());
          }
          tx.oncomplete = () => resolve(false);
          tx.onabort = () => resolve(true);
        });
        if (full) break;
        filled += size;
        if (filled > 50_000_000) throw new Error('the browser never refused');
      }
    }
    open.result.close();
    return filled;
  });
}

it('a full phone: answer and photo are named and stay, what was there is intact, a backup is made, and after room is made both are saved', async () => {
  const { page, lift, end } = await smallPhone();
  const packId = await beginPack(page, { name: 'Full' });
  await answer(page, { packId, itemId: HANDLES.id }, 'weak');
  await photographItem(page, roll.shot('before.jpg'));
  await leaveCallouts(page);
  await goTo(page, `#/${packId}/item/${POSTS.id}`);
  expect(await fillUp(page)).toBeGreaterThan(500_000);
  const before = await everythingStored(page);

  await page.locator('[data-grade="failed"]').tap();
  await notSavedNotice(page, 'quotaFull');
  expect(await page.locator('[data-grade="failed"]').getAttribute('aria-checked')).toBe('true');
  await photograph(page, roll.shot('during.jpg', { orientation: 3 }), { by: itemWords.photo });
  const inTray = page.getByRole('dialog').locator('.not-saved');
  await inTray.getByText(writeProblems.quotaFull).waitFor();
  await tapButton(page, words.cancel);
  expect(await everythingStored(page)).toEqual(before);

  const bundle = await saveBundle(page);
  await page.locator('.not-saved.elsewhere').getByText(writeProblems.quotaFull).waitFor();
  const elsewhere = await emptyPhone(browser);
  await restoreBundles(elsewhere.page, bundle.path);
  await elsewhere.page.getByText(keepWords.packAdded(words.packLabel('Full', '1'))).waitFor();
  const ours = before.bytes.filter(({ store }) => store === 'photos');
  const theirs = (await everythingStored(elsewhere.page)).bytes.filter(({ store }) => store === 'photos');
  expect(theirs).toEqual(ours);
  expect(storedValue(await storedEntries(elsewhere.page), 'answer', HANDLES.id)).toMatchObject({ grade: 'weak' });
  await elsewhere.context.close();

  await lift();
  await tryAgain(page);
  await expect.poll(async () => (await storedEntries(page)).filter(({ key }) => key[1] === 'photo')).toHaveLength(2);
  expect(storedValue(await storedEntries(page), 'answer', POSTS.id)).toMatchObject({ grade: 'failed' });
  const { bytes } = await everythingStored(page);
  expect(bytes.filter(({ store }) => store === 'photos')).toHaveLength(2);
  await end();
});

it('a phone that fills up during a restore stops, says at which pack and why, and holds what it held before', async () => {
  const phone = await emptyPhone(browser);
  const { page } = phone;
  const packId = await beginPack(page, { name: 'Large' });
  await goTo(page, `#/${packId}/item/${HANDLES.id}`);
  for (const name of ['one.jpg', 'two.jpg', 'three.jpg']) {
    await photographItem(page, roll.shot(name, { orientation: name === 'two.jpg' ? 3 : name === 'one.jpg' ? 1 : 6 }));
    await leaveCallouts(page);
  }
  const bundle = await saveBundle(page);
  const path = roll.put(bundle.name, bundle.bytes);
  await phone.context.close();
  const small = await smallPhone();
  await beginPack(small.page, { name: 'Here before' });
  await goTo(small.page, '#/keep');
  await fillUp(small.page);
  const before = await everythingStored(small.page);
  await restoreBundles(small.page, path);
  await small.page.getByText(writeProblems.quotaFull).waitFor();
  expect(await small.page.getByText(keepWords.restored(bundle.name)).count()).toBe(0);
  const after = await everythingStored(small.page);
  expect(after).toEqual(before);
  await small.end();
});
