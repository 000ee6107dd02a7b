import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, expect, it } from 'vitest';
import { benchWords, packWords } from '../../src/text/bench.ts';
import { words } from '../../src/text/words.ts';
import { builtInItem } from '../checklists/built-in.ts';
import { answer, beginPack } from './driver/job.ts';
import { hasSignal, loseSignal } from './driver/offline.ts';
import { appUrl, type Phone, phoneWithProfile } from './driver/phone.ts';
import { expectTitle, goTo } from './driver/screen.ts';

const folder = mkdtempSync(join(tmpdir(), 'underlid-profile-'));
let phone: Phone;
afterEach(() => phone.context.close());
afterAll(() => rmSync(folder, { recursive: true }));

it('is installable, says when it needs no signal any more, and its worker controls the page after a reload', async () => {
  phone = await phoneWithProfile(folder);
  const { page, context } = phone;
  await page.getByText(benchWords.readyOffline).waitFor();
  expect(await page.evaluate(() => navigator.serviceWorker.controller)).toBeNull();
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

it('an address of no pack says so and leads back to the Bench', async () => {
  phone = await phoneWithProfile(folder);
  const { page } = phone;
  await goTo(page, `#/${'0'.repeat(32)}`);
  await page.reload();
  await expectTitle(page, packWords.lost);
  await page.getByRole('link', { name: packWords.toBench }).tap();
  await expectTitle(page, benchWords.title);
});
