import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { benchWords } from '../../src/text/bench.ts';
import { itemWords } from '../../src/text/item.ts';
import { makeSafeWords } from '../../src/text/make-safe.ts';
import { photoWords } from '../../src/text/photo-screens.ts';
import { photoProblemSentence } from '../../src/text/photos.ts';
import { words } from '../../src/text/words.ts';
import { builtInItem } from '../checklists/built-in.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { beginPack } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { appUrl, emptyPhone, type Phone } from './driver/phone.ts';
import { leaveCallouts, openPhotoId } from './driver/photo.ts';
import { button, expectTitle, goTo, tapButton } from './driver/screen.ts';
import { pdfAsJpeg } from './photographs/broken-files.ts';

const ITEM = builtInItem('terminal-posts');

const roll = cameraRoll();
let browser: Browser;
let phone: Phone;
let packId: string;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  phone = await emptyPhone(browser);
  packId = await beginPack(phone.page, { name: 'Dropped' });
});

/** The camera is open: the page waits for a picture. */
async function openCamera(page: Page, by: string) {
  await tapButton(page, by);
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), tapButton(page, photoWords.camera)]);
  return chooser;
}

async function expectTold(page: Page, what: string) {
  const over = page.getByRole('dialog', { name: photoWords.droppedTitle });
  await over.getByText(photoWords.dropped(what), { exact: true }).waitFor();
}

/** From what the app says of a dropped photo: takes it again. */
async function takeAgain(page: Page, path: string) {
  await tapButton(page, photoWords.takeAgain);
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), tapButton(page, photoWords.camera)]);
  await chooser.setFiles(path);
}

it('a page reloaded while the camera is open comes back on the very item, and says that the photo did not arrive', async () => {
  const { page } = phone;
  await goTo(page, `#/${packId}/item/${ITEM.id}`);
  await openCamera(page, itemWords.photo);
  await page.reload();
  await expectTitle(page, ITEM.ask);
  await expectTold(page, ITEM.title);
});

it('a page closed while the camera is open comes back on the very item, though the app is opened at its front door', async () => {
  await goTo(phone.page, `#/${packId}/item/${ITEM.id}`);
  await openCamera(phone.page, itemWords.photo);
  await phone.page.close();
  const page = await phone.context.newPage();
  await page.goto(appUrl());
  await expectTitle(page, ITEM.ask);
  await expectTold(page, ITEM.title);
  // Taken again, it lies at the item and is dealt with: the next start says nothing.
  await takeAgain(page, roll.shot('again.jpg'));
  await openPhotoId(page);
  await leaveCallouts(page);
  await expectTitle(page, ITEM.ask);
  await page.locator('.thumb img').waitFor();
  await page.goto(appUrl());
  await page.reload();
  await expectTitle(page, benchWords.title);
  expect(await page.getByText(photoWords.dropped(ITEM.title)).count()).toBe(0);
});

it('a file that is no picture, taken instead of the dropped photo, is named as such', async () => {
  const { page } = phone;
  await goTo(page, `#/${packId}/item/${ITEM.id}`);
  await openCamera(page, itemWords.photo);
  await page.reload();
  await expectTold(page, ITEM.title);
  await takeAgain(page, roll.put('scan.jpg', pdfAsJpeg()));
  await page.getByRole('alert').getByText(photoProblemSentence('notAPicture', 'scan.jpg'), { exact: true }).waitFor();
});

it('what was ticked and typed at Make safe is there after a page was dropped over the camera', async () => {
  const { page } = phone;
  await goTo(page, `#/${packId}/make-safe`);
  await page.getByLabel(makeSafeWords.voltage, { exact: true }).fill('26.4');
  await page.getByLabel(makeSafeWords.voltage, { exact: true }).blur();
  await page.getByRole('radio', { name: makeSafeWords.companies.alone }).tap();
  await page.getByRole('checkbox').first().tap();
  await openCamera(page, makeSafeWords.photoTake);
  await page.reload();
  await expectTitle(page, makeSafeWords.title);
  await expect.poll(() => page.getByLabel(makeSafeWords.voltage, { exact: true }).inputValue()).toBe('26.4');
  expect(await page.getByRole('radio', { name: makeSafeWords.companies.alone }).getAttribute('aria-checked')).toBe(
    'true',
  );
  expect(await page.getByRole('checkbox').first().isChecked()).toBe(true);
  await expectTold(page, makeSafeWords.photo);
});

it('the photo of the covered terminals, dropped and taken again, counts at Make safe', async () => {
  const { page } = phone;
  await goTo(page, `#/${packId}/make-safe`);
  await openCamera(page, makeSafeWords.photoTake);
  await page.reload();
  await expectTold(page, makeSafeWords.photo);
  await takeAgain(page, roll.shot('covered.jpg'));
  await page.getByRole('dialog').waitFor({ state: 'hidden' });
  await goTo(page, `#/${packId}/make-safe`);
  await button(page, makeSafeWords.photoAgain).waitFor();
});

it('a camera left without a picture leaves the tray open, and is no dropped page', async () => {
  const { page } = phone;
  await goTo(page, `#/${packId}/item/${ITEM.id}`);
  await openCamera(page, itemWords.photo);
  await page.locator('[data-photo="camera"]').dispatchEvent('cancel');
  await tapButton(page, words.cancel);
  await button(page, itemWords.photo).waitFor();
  await page.reload();
  await expectTitle(page, ITEM.ask);
  expect(await page.getByText(photoWords.dropped(ITEM.title)).count()).toBe(0);
});

it('a picture that arrives takes its place at the item, and nothing is awaited any more', async () => {
  const { page } = phone;
  await goTo(page, `#/${packId}/item/${ITEM.id}`);
  const chooser = await openCamera(page, itemWords.photo);
  await chooser.setFiles(roll.shot('arrived.jpg'));
  const photoId = await openPhotoId(page);
  await page.reload();
  await page.waitForURL(new RegExp(`/photo/${photoId}`));
  await goTo(page, '#/');
  expect(await page.getByText(photoWords.dropped(ITEM.title)).count()).toBe(0);
});
