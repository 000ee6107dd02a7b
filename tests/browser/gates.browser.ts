import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { afterwardsWords } from '../../src/text/afterwards.ts';
import { packWords } from '../../src/text/bench.ts';
import { lidOffWords } from '../../src/text/item.ts';
import { makeSafeWords } from '../../src/text/make-safe.ts';
import { sheetScreenWords } from '../../src/text/sheet-screen.ts';
import { stopWords } from '../../src/text/stop.ts';
import { builtInItem } from '../checklists/built-in.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { beginPack, choose, makeSafe, savedAs } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { emptyPhone, type Phone } from './driver/phone.ts';
import { button, expectTitle, goTo, link, tapLink, untilSaved } from './driver/screen.ts';

const roll = cameraRoll();
const covered = roll.shot('covered.jpg');
let browser: Browser;
let phone: Phone;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterEach(() => phone.context.close());
afterAll(() => browser.close());

/** A new phone whose clock stands at a local time in Vienna (UTC+1 in November) and goes on from there. */
async function phoneAt(time: string): Promise<string> {
  phone = await emptyPhone(browser);
  await phone.page.clock.install({ time });
  await phone.page.reload();
  await phone.page.locator('h1').waitFor();
  return beginPack(phone.page, { name: 'Gate' });
}

const UNDER_THE_LID = ['lid-off', 'zone/cells', 'before', 'item/cell-vents', 'fact/cell-joint', 'live-test/sensor'];

it('nothing under the lid is reached by its address before Make safe', async () => {
  const packId = await phoneAt('2026-11-24T10:00:00+01:00');
  const { page } = phone;
  for (const place of UNDER_THE_LID) {
    await goTo(page, `#/${packId}/${place}`);
    await page.reload();
    await page.getByText(lidOffWords.makeSafeFirst, { exact: true }).waitFor();
    expect(await page.locator('[data-grade], [data-zone], .answer, .line').count(), place).toBe(0);
  }
  await tapLink(page, lidOffWords.toMakeSafe);
  await expectTitle(page, makeSafeWords.title);
});

it('Make safe stays shut while anything is missing, and says what', async () => {
  const packId = await phoneAt('2026-11-24T10:00:00+01:00');
  const { page } = phone;
  await goTo(page, `#/${packId}/make-safe`);
  // It is marked as disabled and answers all the same: by saying why.
  await button(page, makeSafeWords.pass).tap({ force: true });
  const { voltage, chargeState, company, photo, cautions } = makeSafeWords.missingParts;
  const all = [voltage, chargeState, company, photo, cautions(9)].join(', ');
  await page.getByRole('alert').getByText(makeSafeWords.missing(all), { exact: true }).waitFor();
  await expectTitle(page, makeSafeWords.title);
});

it('Make safe is asked again after four hours, on the screen that is open', async () => {
  const packId = await phoneAt('2026-11-24T10:00:00+01:00');
  const { page } = phone;
  await makeSafe(page, packId, covered);
  await page.clock.fastForward('03:59:00');
  await page.locator('[data-zone]').first().waitFor();
  await page.clock.fastForward('01:01');
  await page.getByText(lidOffWords.makeSafeAgain, { exact: true }).waitFor();
  await goTo(page, `#/${packId}/item/cell-vents`);
  await page.getByText(lidOffWords.makeSafeAgain, { exact: true }).waitFor();
  await makeSafe(page, packId, covered);
  await page.locator('[data-zone]').first().waitFor();
});

it('Make safe is asked again on a new day, half an hour after it was passed', async () => {
  const packId = await phoneAt('2026-11-24T23:40:00+01:00');
  const { page } = phone;
  await makeSafe(page, packId, covered);
  await page.clock.fastForward('15:00');
  await page.locator('[data-zone]').first().waitFor();
  await page.clock.fastForward('15:00');
  await page.getByText(lidOffWords.makeSafeAgain, { exact: true }).waitFor();
});

it('a failed stop item at Arrival shuts Live tests, Make safe and Lid off, leaves Sheet and Afterwards open, until it is corrected', async () => {
  const packId = await phoneAt('2026-11-24T10:00:00+01:00');
  const { page } = phone;
  const item = builtInItem('case-damage');
  await goTo(page, `#/${packId}/item/${item.id}`);
  await page.locator('[data-grade="failed"]').tap();
  const over = page.getByRole('dialog', { name: stopWords.title });
  await over.getByText(stopWords.lead(item.title)).waitFor();
  for (const step of stopWords.steps) await over.getByText(step, { exact: true }).waitFor();
  await untilSaved(page, savedAs(item.id, 'failed'));

  for (const place of ['live-tests', 'make-safe', ...UNDER_THE_LID]) {
    await goTo(page, `#/${packId}/${place}`);
    await page.reload();
    await expectTitle(page, stopWords.title);
    await page.getByText(stopWords.closed, { exact: true }).waitFor();
  }
  await goTo(page, `#/${packId}`);
  for (const station of [packWords.liveTests, packWords.makeSafe, packWords.lidOff]) {
    const line = page.locator('.line', { hasText: station }).filter({ hasText: packWords.closedByStop });
    expect(await line.getAttribute('aria-disabled')).toBe('true');
    expect(await line.getAttribute('href')).toBeNull();
  }
  await goTo(page, `#/${packId}/arrival`);
  await page.getByText(stopWords.closed, { exact: true }).waitFor();
  await goTo(page, `#/${packId}/sheet`);
  await expectTitle(page, sheetScreenWords.title);
  await page.getByRole('article').waitFor();
  await goTo(page, `#/${packId}/afterwards`);
  await expectTitle(page, afterwardsWords.title);

  await goTo(page, `#/${packId}/make-safe`);
  await link(page, stopWords.correct).tap();
  await expectTitle(page, item.ask);
  await choose(page, 'passable', item.id);
  await makeSafe(page, packId, covered);
  await page.locator('[data-zone]').first().waitFor();
});
