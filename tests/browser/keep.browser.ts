import { createHash } from 'node:crypto';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Entry } from '../../src/schema/entry.ts';
import { bundleRefusals, nothingChanged } from '../../src/text/bundle.ts';
import { keepWords } from '../../src/text/keep.ts';
import { words } from '../../src/text/words.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { everythingStored, storedEntries } from './driver/database.ts';
import { drawByTouch, writeOnCallout } from './driver/draw.ts';
import { answer, beginPack, writeNote } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { emptyPhone, type Phone } from './driver/phone.ts';
import { leaveCallouts, photographItem, untilCalloutsSaved } from './driver/photo.ts';
import { restoreBundles, type SavedFile, saveBundle } from './driver/save.ts';
import { goTo } from './driver/screen.ts';
import { genuinePhoto } from './photographs/genuine-photo.ts';

const roll = cameraRoll();
let browser: Browser;
let first: Phone;
let packId: string;
let bundle: SavedFile;

beforeAll(async () => {
  browser = await launchBrowser();
  first = await emptyPhone(browser);
  const { page } = first;
  packId = await beginPack(page, { name: 'Kept', nominalVoltageV: '12.8', ratedCapacityAh: '100', cellsInSeries: '4' });
  await answer(page, { packId, itemId: 'handles' }, 'weak');
  await answer(page, { packId, itemId: 'terminal-posts' }, 'failed');
  await writeNote(page, 'terminal-posts', 'Loose by a quarter turn, 3 mΩ');
  for (const file of [roll.put('genuine.jpg', genuinePhoto()), roll.shot('posts.jpg', { orientation: 8 })]) {
    await photographItem(page, file);
    await drawByTouch(page, 'leader', [
      [0.4, 0.4],
      [0.5, 0.5],
    ]);
    await writeOnCallout(page, 'leader', 'turns by hand');
    await drawByTouch(page, 'arrow', [
      [0.2, 0.7],
      [0.5, 0.75],
      [0.7, 0.8],
    ]);
    await untilCalloutsSaved(page);
    await leaveCallouts(page);
  }
});
afterAll(() => browser.close());

/** What the phone shows of a pack: verdict, score and how much is settled; and what it holds. */
async function picture(page: Page) {
  await goTo(page, `#/${packId}`);
  const said = await page.locator('main section').first().textContent();
  const rule = await page.locator('.rule svg').getAttribute('aria-label');
  const { bytes } = await everythingStored(page);
  const hashes = bytes.map(
    ({ store, bytes: content }) => `${store} ${createHash('sha256').update(content).digest('hex')}`,
  );
  return { said, rule, hashes: hashes.sort(), entries: sorted(await storedEntries(page)) };
}

const sorted = (entries: Entry[]) =>
  [...entries].sort((a, b) => (JSON.stringify(a.key) < JSON.stringify(b.key) ? -1 : 1));

it('saves everything as one bundle and counts no photo without a backup any more', async () => {
  const { page } = first;
  await goTo(page, '#/keep');
  await page.getByText(keepWords.noBackup(2, 0), { exact: true }).waitFor();
  bundle = await saveBundle(page);
  expect(bundle.name).toMatch(/^underlid-\d{4}-\d\d-\d\d-[0-9a-f]{6}\.zip$/);
  await page.getByText(keepWords.savedAll, { exact: true }).waitFor();
  await page.getByText(keepWords.allBackedUp, { exact: true }).waitFor();
});

it('restores it on an empty phone: the same score, the same 2 photos by hash, the same 4 callouts', async () => {
  const second = await emptyPhone(browser);
  await restoreBundles(second.page, bundle.path);
  const label = words.packLabel('Kept', '1');
  await second.page.getByText(keepWords.packAdded(label), { exact: true }).waitFor();
  const before = await picture(first.page);
  const after = await picture(second.page);
  expect(after).toEqual(before);
  expect(after.rule).toMatch(/\d/);
  expect(after.hashes.filter((name) => name.startsWith('photos ')).length).toBe(2);
  expect(after.entries.filter(({ key }) => key[1] === 'callout').length).toBe(4);
  // Once more changes nothing.
  await restoreBundles(second.page, bundle.path);
  await second.page.getByText(keepWords.packSame(label), { exact: true }).waitFor();
  expect(await picture(second.page)).toEqual(before);
  await second.context.close();
});

it('refuses a bundle with one byte changed, with a reason, and changes nothing', async () => {
  const second = await emptyPhone(browser);
  const damaged = bundle.bytes.slice();
  const middle = Math.floor(damaged.length / 2);
  damaged[middle] = (damaged[middle] ?? 0) ^ 0xff;
  await restoreBundles(second.page, roll.put('damaged.zip', damaged));
  const sentences = [bundleRefusals.damagedZip, bundleRefusals.checksum].map((reason) =>
    keepWords.refusedFile('damaged.zip', `${reason} ${nothingChanged}`),
  );
  const [zip = '', checksum = ''] = sentences;
  await second.page
    .getByText(zip, { exact: true })
    .or(second.page.getByText(checksum, { exact: true }))
    .waitFor();
  expect(await storedEntries(second.page)).toEqual([]);
  await second.context.close();
});
