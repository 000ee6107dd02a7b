import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Photo } from '../../src/schema/photo.ts';
import { benchWords, packWords } from '../../src/text/bench.ts';
import { keepWords } from '../../src/text/keep.ts';
import { photoProblemSentence } from '../../src/text/photos.ts';
import { trayWords } from '../../src/text/tray.ts';
import { words } from '../../src/text/words.ts';
import { storedEntries } from './driver/database.ts';
import { drawnPhoto } from './driver/drawn-photo.ts';
import { beginPack } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { appUrl, emptyPhone, type Phone, strangers } from './driver/phone.ts';
import { saveBundle } from './driver/save.ts';
import { button, expectTitle, goTo, tapButton, tapLink } from './driver/screen.ts';

let browser: Browser;
let phone: Phone;
let packId: string;
beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
  // What a phone hands to an installed app; Chromium on a desk has neither lock nor queue to watch.
  await phone.page.addInitScript(() => {
    const held = { now: 0, asked: 0 };
    Object.assign(globalThis, { held });
    Object.defineProperty(navigator, 'wakeLock', {
      value: {
        request: async () => {
          held.now += 1;
          held.asked += 1;
          return {
            release: async () => {
              held.now -= 1;
            },
          };
        },
      },
    });
    Object.defineProperty(globalThis, 'launchQueue', {
      value: {
        setConsumer: (consume: unknown) => Object.assign(globalThis, { openedWith: consume }),
      },
    });
  });
  await phone.page.getByText(benchWords.readyOffline).waitFor();
  await phone.page.reload();
  packId = await beginPack(phone.page, { name: 'Shared with' });
});
afterAll(() => browser.close());

/** As the platform does for a share target: a form posted to the app, answered by its service worker. */
async function shareIn(files: { name: string; type: string; bytes: Buffer }[]): Promise<string> {
  return phone.page.evaluate(
    async ({ url, sent }) => {
      const form = new FormData();
      for (const { name, type, base64 } of sent) {
        const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
        form.append('files', new File([bytes], name, { type }));
      }
      const response = await fetch(url, { method: 'POST', body: form, redirect: 'manual' });
      return response.type;
    },
    {
      url: appUrl('share-in'),
      sent: files.map(({ name, type, bytes }) => ({ name, type, base64: bytes.toString('base64') })),
    },
  );
}

it('keeps two photos shared in from another app in the tray, puts one into a pack and leaves the other: 1 photo, 1 waiting', async () => {
  const { page } = phone;
  const photos = await Promise.all(
    ['#a33', '#3a3'].map((colour) =>
      drawnPhoto(page, {
        widthPx: 640,
        heightPx: 480,
        shapes: [{ colour, corners: [[0, 0], [300, 0], [300, 300], [0, 300]] }], // biome-ignore format: one line
      }),
    ),
  );
  const type = 'image/jpeg';
  // A redirect that is not followed is what a page sees of 303.
  const answered = await shareIn(photos.map((bytes, n) => ({ name: `camera-${n + 1}.jpg`, type, bytes })));
  expect(answered).toBe('opaqueredirect');
  await goTo(page, '#/');
  await page.reload();
  await tapLink(page, benchWords.inTray(2));
  await expectTitle(page, trayWords.title);
  await page.getByText('camera-2.jpg').tap();
  await page.getByLabel(trayWords.pack).selectOption(packId);
  await page.getByLabel(trayWords.zone).selectOption('vents');
  await page.getByLabel(trayWords.item).selectOption('cell-vents');
  await tapButton(page, trayWords.put(1));
  await page.getByText(trayWords.putDone(1, words.packLabel('Shared with', '1'))).waitFor();
  expect(await page.locator('.tray li').count()).toBe(1);
  expect(await page.getByText('camera-2.jpg').count()).toBe(1);

  const entries = (await storedEntries(page)).filter(({ gone }) => !gone);
  const stored = entries.filter(({ key }) => key[1] === 'photo');
  expect(stored.map(({ v }) => (v as Photo).zone)).toEqual(['vents']);
  const links = entries.filter(({ key }) => key[1] === 'photoItem').map(({ key }) => key[2]);
  expect(links).toEqual([`${stored[0]?.key[2]}/cell-vents`]);
});

it('says of a shared file that is no picture what it is, and keeps it in the tray: 2 waiting', async () => {
  const { page } = phone;
  await shareIn([{ name: 'notes.jpg', type: 'image/jpeg', bytes: Buffer.from('no picture at all') }]);
  await page.reload();
  await page.getByText('camera-2.jpg').tap();
  await page.getByLabel(trayWords.pack).selectOption(packId);
  await tapButton(page, trayWords.put(1));
  await page.getByText(photoProblemSentence('notAPicture', 'notes.jpg')).waitFor();
  expect(await page.locator('.tray li').count()).toBe(2);
  await tapButton(page, trayWords.takeOut);
  await tapButton(page, trayWords.takeOutNow);
  await expect.poll(() => page.locator('.tray li').count()).toBe(1);
});

it('opens the pack that was open last by the shortcut, and the bench once that pack was put away', async () => {
  const { page } = phone;
  await goTo(page, `#/${packId}/nameplate`);
  await goTo(page, '#/');
  await goTo(page, '#/last');
  await expectTitle(page, words.packLabel('Shared with', '1'));
  const manifest = await page.evaluate(async () => (await fetch('./manifest.webmanifest')).json());
  expect(manifest.shortcuts[0].url).toBe('./#/last');
  expect(manifest.share_target).toMatchObject({ action: './share-in', method: 'POST' });
});

it('keeps the screen awake under the lid only, and lets go of it there: held 1, then 0', async () => {
  const { page } = phone;
  await goTo(page, '#/');
  await tapButton(page, benchWords.demoIn);
  await page
    .getByRole('link', { name: /Wren 24/ })
    .first()
    .tap();
  const held = () => page.evaluate(() => (globalThis as unknown as { held: { now: number } }).held.now);
  expect(await held()).toBe(0);
  await page.getByRole('link', { name: new RegExp(`^${packWords.lidOff}`) }).tap();
  await expect.poll(held).toBe(1);
  await goTo(page, '#/');
  await expect.poll(held).toBe(0);
});

it('takes in a bundle that the platform opened it with, once that is confirmed', async () => {
  const { page } = phone;
  const saved = await saveBundle(page);
  const bytes = readFileSync(saved.path).toString('base64');
  await page.evaluate(async (base64) => {
    const file = new File([Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))], 'hut.zip', {
      type: 'application/zip',
    });
    const { openedWith } = globalThis as unknown as { openedWith: (launch: unknown) => void };
    openedWith({ files: [{ getFile: async () => file }] });
  }, bytes);
  await page.getByText(trayWords.opened('hut.zip')).waitFor();
  await button(page, trayWords.takeIn('hut.zip')).tap();
  await page.getByText(keepWords.restored('hut.zip')).waitFor();
  expect(await page.getByText(trayWords.opened('hut.zip')).count()).toBe(0);
  expect(strangers(phone)).toEqual([]);
  expect(phone.complaints).toEqual([]);
});
