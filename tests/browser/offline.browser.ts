import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { afterAll, afterEach, expect, it } from 'vitest';
import { benchWords, packWords, stageWords } from '../../src/text/bench.ts';
import { regradeWords } from '../../src/text/regrade.ts';
import { words } from '../../src/text/words.ts';
import { builtInItem } from '../checklists/built-in.ts';
import { answer, beginPack } from './driver/job.ts';
import { browserPath, FLAGS } from './driver/launch.ts';
import { hasSignal, loseSignal } from './driver/offline.ts';
import { appUrl, emptyPhone, type Phone, phoneWithProfile } from './driver/phone.ts';
import { expectTitle, goTo } from './driver/screen.ts';

const folder = mkdtempSync(join(tmpdir(), 'underlid-profile-'));
let phone: Phone;
afterEach(async () => {
  await phone.context.close();
  await phone.context.browser()?.close();
});
afterAll(() => rmSync(folder, { recursive: true }));

it('is installable, says when it needs no signal any more, and from then on its worker serves the first page too', async () => {
  phone = await phoneWithProfile(folder);
  const { page, context } = phone;
  await page.getByText(benchWords.readyOffline).waitFor();
  expect(await page.evaluate(() => navigator.serviceWorker.controller?.scriptURL)).toBe(appUrl('sw.js'));
  await page.reload();
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller?.scriptURL)).toBe(appUrl('sw.js'));
  const cdp = await context.newCDPSession(page);
  const { installabilityErrors } = await cdp.send('Page.getInstallabilityErrors');
  expect(installabilityErrors).toEqual([]);
  const manifest = await cdp.send('Page.getAppManifest');
  expect(manifest.errors).toEqual([]);
  expect(JSON.parse(manifest.data ?? '{}')).toMatchObject({ name: 'Underlid', display: 'standalone' });
  expect(phone.complaints).toEqual([]);
});

it('opens without a signal: by reload, by a deep link, and after the browser was ended and started again', async () => {
  phone = await phoneWithProfile(folder);
  const packId = await beginPack(phone.page, { name: 'Signal' });
  await answer(phone.page, { packId, itemId: 'handles' }, 'weak');
  await loseSignal(phone);
  expect(await hasSignal(phone.page)).toBe(false);
  await expectTitle(phone.page, builtInItem('handles').ask);
  await goTo(phone.page, `#/${packId}/sheet`);
  await phone.page.reload();
  await phone.page.getByRole('article').getByText('Signal').first().waitFor();
  expect(phone.complaints).toEqual([]);
  await phone.context.close();

  phone = await phoneWithProfile(folder, { offline: true });
  expect(await hasSignal(phone.page)).toBe(false);
  await goTo(phone.page, `#/${packId}/item/handles`);
  await expectTitle(phone.page, builtInItem('handles').ask);
  expect(await phone.page.locator('[data-grade="weak"]').getAttribute('aria-checked')).toBe('true');
  await goTo(phone.page, '#/');
  await phone.page.getByText(words.packLabel('Signal', '1')).waitFor();
  expect(phone.complaints).toEqual([]);
});

it('needs no signal in the first visit either, once that is said: the demo bench and a new pack', async () => {
  const browser = await chromium.launch({ executablePath: browserPath(), args: FLAGS });
  phone = await emptyPhone(browser);
  const { page, context } = phone;
  await page.getByText(benchWords.readyOffline).waitFor();
  await context.setOffline(true);
  await page.getByRole('button', { name: benchWords.demoIn }).tap();
  await page.getByText(words.packLabel('Wren 24', '1')).waitFor();
  await page.getByRole('button', { name: benchWords.newPack }).tap();
  await expectTitle(page, stageWords.nameplate);
  expect(phone.complaints).toEqual([]);
});

it('without its worker and its signal it says which part is missing, and goes on once there is a signal', async () => {
  const browser = await chromium.launch({ executablePath: browserPath(), args: FLAGS });
  phone = await emptyPhone(browser, { serviceWorkers: 'block' });
  const { page, context } = phone;
  await context.setOffline(true);
  await page.getByRole('button', { name: benchWords.demoIn }).tap();
  await page.getByText(benchWords.demoFailed).waitFor();
  await page.getByRole('button', { name: benchWords.newPack }).tap();
  await page.getByText(benchWords.beginNotFetched).waitFor();
  await goTo(page, '#/keep/regrade');
  await expectTitle(page, words.notFetched);
  await context.setOffline(false);
  await page.getByRole('button', { name: words.tryAgain }).tap();
  await expectTitle(page, regradeWords.title);
});

it('an address of no pack says so and leads back to the Bench', async () => {
  phone = await phoneWithProfile(folder);
  const { page } = phone;
  await goTo(page, `#/${'0'.repeat(32)}`);
  await page.reload();
  await expectTitle(page, packWords.lost);
  await page.getByRole('link', { name: packWords.toBench }).tap();
  await expectTitle(page, benchWords.title);
});
