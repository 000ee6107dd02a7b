import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { benchWords, packWords } from '../../src/text/bench.ts';
import { itemWords, lidOffWords } from '../../src/text/item.ts';
import { drainWords } from '../../src/text/live-tests/drain.ts';
import { logWords } from '../../src/text/logs/log.ts';
import { CAUTIONS, makeSafeWords } from '../../src/text/make-safe.ts';
import { nameplateWords } from '../../src/text/nameplate.ts';
import { words, writeProblems } from '../../src/text/words.ts';
import { builtInItem } from '../checklists/built-in.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { everythingStored, storedEntries, storedValue } from './driver/database.ts';
import { drawByTouch } from './driver/draw.ts';
import { failWrites, notSavedNotice, tryAgain } from './driver/failing-writes.ts';
import { beginTest, typeIn } from './driver/fill.ts';
import { answer, beginPack, makeSafe } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { madeRunLog } from './driver/made-run-log.ts';
import { emptyPhone, type Phone } from './driver/phone.ts';
import { photograph, photographItem } from './driver/photo.ts';
import { button, expectTitle, goTo, tapButton } from './driver/screen.ts';

const ITEM = builtInItem('terminal-posts');
const roll = cameraRoll();
const folder = mkdtempSync(join(tmpdir(), 'underlid-errors-'));
let browser: Browser;
let phone: Phone;
let page: Page;
let packId: string;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
});
afterEach(() => phone.context.close());
beforeEach(async () => {
  phone = await emptyPhone(browser);
  page = phone.page;
  packId = await beginPack(page, { name: 'Errors' });
});

const item = () => goTo(page, `#/${packId}/item/${ITEM.id}`);
const value = async (subject: string, part: string) =>
  storedValue(
    (await storedEntries(page)).filter(({ key }) => key[0] === packId),
    subject,
    part,
  );
const ofSubject = async (subject: string) =>
  (await storedEntries(page)).filter(({ key, gone }) => key[0] === packId && key[1] === subject && !gone);

/** Nothing of what is done inside reaches the database, byte for byte; and it is said. */
async function failing(how: 'refused' | 'aborted', doIt: () => Promise<void>): Promise<void> {
  const before = await everythingStored(page);
  const mend = await failWrites(page, how);
  try {
    await doIt();
    await notSavedNotice(page);
    expect(await everythingStored(page)).toEqual(before);
  } finally {
    await mend();
  }
}

it('an answer stays on the screen, is named, and is saved at the next try', async () => {
  await item();
  await failing('aborted', async () => {
    await page.locator('[data-grade="weak"]').tap();
  });
  expect(await page.locator('[data-grade="weak"]').getAttribute('aria-checked')).toBe('true');
  expect(await page.locator('.not-saved').textContent()).toContain(ITEM.title);
  await tryAgain(page);
  await expect.poll(async () => value('answer', ITEM.id)).toMatchObject({ grade: 'weak' });
});

it('a note from its dialog stays on the screen and is saved at the next try', async () => {
  await answer(page, { packId, itemId: ITEM.id }, 'weak');
  await failing('refused', async () => {
    await tapButton(page, itemWords.note);
    await page.getByLabel(itemWords.noteHint).fill('left post turns by hand');
    await tapButton(page, itemWords.keepNote);
  });
  await page.locator('.own-note', { hasText: 'left post turns by hand' }).waitFor();
  await tryAgain(page);
  await expect.poll(async () => value('answer', ITEM.id)).toMatchObject({ note: 'left post turns by hand' });
});

it('a photo that could not be written waits with its bytes, is said in the tray, and lies there at the next try', async () => {
  await item();
  await failing('aborted', async () => {
    await photograph(page, roll.shot('waits.jpg'), { by: itemWords.photo });
  });
  await tryAgain(page);
  await tapButton(page, words.cancel);
  await page.locator('.thumb img').waitFor();
  await expect.poll(async () => ofSubject('photo')).toHaveLength(1);
  await expect.poll(async () => ofSubject('photoItem')).toHaveLength(1);
});

it('a callout stays on the photo, is said over it without moving it, and is saved at the next try', async () => {
  await item();
  await photographItem(page, roll.shot('callout.jpg'));
  const photo = page.locator('.callout-plane > img');
  const place = await photo.boundingBox();
  await failing('refused', () => drawByTouch(page, 'leader', [[0.4, 0.6], [0.5, 0.7]])); // biome-ignore format: one line
  expect(await photo.boundingBox()).toEqual(place);
  await tryAgain(page);
  await expect.poll(async () => ofSubject('callout')).toHaveLength(1);
});

it('a figure of the Nameplate stays in its box and is saved at the next try', async () => {
  await goTo(page, `#/${packId}/nameplate`);
  const label = nameplateWords.labels.ratedCapacityAh;
  await failing('aborted', () => typeIn(page, label, '100'));
  expect(await page.getByLabel(label, { exact: true }).inputValue()).toBe('100');
  await tryAgain(page);
  await expect.poll(async () => value('nameplate', 'ratedCapacityAh')).toBe(100);
});

it('what is ticked at Make safe and cannot be kept is said there; the passage is saved at a later try, and nothing stays ticked', async () => {
  const say = makeSafeWords;
  await goTo(page, `#/${packId}/make-safe`);
  await photograph(page, roll.shot('covered.jpg'), { by: say.photoTake });
  await button(page, say.photoAgain).waitFor();
  await failing('refused', async () => {
    await typeIn(page, say.voltage, '26.4');
    await page.getByRole('radio', { name: say.chargeStates.low }).tap();
    await page.getByRole('radio', { name: say.companies['second-person'] }).tap();
    for (const { text } of CAUTIONS.filter(({ above50V }) => !above50V)) {
      await page.getByRole('checkbox', { name: text }).tap();
    }
    expect(await page.locator('.not-saved').textContent()).toContain(words.draftsNotKept);
    await tapButton(page, say.pass);
  });
  expect(await ofSubject('makeSafe')).toEqual([]);
  await tryAgain(page);
  await expect.poll(async () => ofSubject('makeSafe')).toHaveLength(1);
  await tapButton(page, say.again);
  await expect.poll(() => page.getByRole('checkbox', { checked: true }).count()).toBe(0);
});

it('a live test stays in its boxes and is saved at the next try', async () => {
  await beginTest(page, packId, { part: 'drain', one: drainWords.one });
  await failing('aborted', () => typeIn(page, drainWords.labels.currentMa, '12'));
  expect(await page.getByLabel(drainWords.labels.currentMa, { exact: true }).inputValue()).toBe('12');
  await tryAgain(page);
  await expect.poll(async () => (await ofSubject('drain')).length).toBe(1);
});

it('a log with its runs stays at hand and is saved at the next try', async () => {
  const path = join(folder, 'log.csv');
  writeFileSync(path, madeRunLog());
  await goTo(page, `#/${packId}/live-test/log`);
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), tapButton(page, logWords.pick)]);
  await chooser.setFiles(path);
  await button(page, logWords.keep(1)).waitFor({ timeout: 20_000 });
  await failing('aborted', () => tapButton(page, logWords.keep(1)));
  await tryAgain(page);
  await expect.poll(async () => [(await ofSubject('log')).length, (await ofSubject('run')).length]).toEqual([1, 1]);
});

it('a state of Lid off that could not be entered in the record is said on Lid off', async () => {
  await goTo(page, `#/${packId}/make-safe`);
  await makeSafe(page, packId, roll.shot('live.jpg'));
  await goTo(page, `#/${packId}/before`);
  await failing('refused', () => page.locator('.dock .button').last().tap());
  await expectTitle(page, lidOffWords.title);
  await tryAgain(page);
  await expect.poll(async () => value('state', 'liveOpen')).toBeDefined();
});

it('a pack with something unsaved is named on the Bench and in another pack, and nothing of it is lost on the way', async () => {
  await item();
  await failing('aborted', async () => {
    await page.locator('[data-grade="failed"]').tap();
  });
  const mend = await failWrites(page, 'aborted');
  await goTo(page, '#/');
  await page
    .locator('.not-saved')
    .getByText(words.notSavedOf([words.packLabel('Errors', '1')]))
    .waitFor();
  await mend();
  const other = await beginPack(page, { name: 'Another' });
  expect(other).not.toBe(packId);
  await page.locator('.not-saved.elsewhere').waitFor();
  await tryAgain(page);
  await expect.poll(async () => value('answer', ITEM.id)).toMatchObject({ grade: 'failed' });
});

it('a new pack, the demo bench, putting a pack away and taking an empty one off say that they failed, and change nothing', async () => {
  await answer(page, { packId, itemId: ITEM.id }, 'weak');
  await goTo(page, '#/');
  const before = await everythingStored(page);
  const mend = await failWrites(page, 'refused');
  await tapButton(page, benchWords.newPack);
  await page.getByText(benchWords.notBegun).waitFor();
  await tapButton(page, benchWords.demoIn);
  await page.getByText(writeProblems.failed).waitFor();
  await goTo(page, `#/${packId}`);
  await tapButton(page, packWords.putAway);
  await tapButton(page, packWords.putAwayNow);
  await notSavedNotice(page);
  expect(await everythingStored(page)).toEqual(before);
  await mend();
});
