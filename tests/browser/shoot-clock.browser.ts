import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { benchWords } from '../../src/text/bench.ts';
import { markWords, shootClockWords as say } from '../../src/text/shoot-clock.ts';
import { words } from '../../src/text/words.ts';
import { builtInItem } from '../checklists/built-in.ts';
import { readVtt } from '../sheet/chapters/read-vtt.ts';
import { tooSmall, tooWide, violations } from './driver/access-checks.ts';
import { answer, beginPack, packIdOn } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { emptyPhone, type Phone, strangers } from './driver/phone.ts';
import { saved } from './driver/save.ts';
import { button, expectTitle, goTo, tapButton, untilSaved } from './driver/screen.ts';

let browser: Browser;
let phone: Phone;
beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
});
afterAll(() => browser.close());

const chaptersIn = (bytes: Uint8Array) => {
  const text = new TextDecoder().decode(bytes);
  const { chapters, errors } = readVtt(text);
  expect(errors).toEqual([]);
  return { text, chapters: chapters.map(({ startMs, title }) => [startMs / 1000, title]) };
};
const headHeight = async (page: Page) => (await page.locator('.head').boundingBox())?.height ?? Number.NaN;

it('ties an answer and a mark to a take, corrects the offset by one mark, and gives 3 chapters as WebVTT', async () => {
  const { page } = phone;
  const packId = await beginPack(page, { name: 'Wren 24' });
  // The clock of the page stands still but for what is told here.
  await page.clock.install({ time: new Date('2026-11-25T09:00:00Z') });
  await goTo(page, `#/${packId}/shoot-clock`);
  await page.reload();
  await expectTitle(page, say.title);
  await page.clock.pauseAt(new Date('2026-11-25T10:00:00Z'));
  await page.getByText(say.clap(markWords.take(1))).waitFor();
  await tapButton(page, say.startNext(1));
  const timer = page.getByRole('timer', { name: say.time });
  await timer.waitFor();
  await page.clock.fastForward(12_000);
  await expect.poll(() => timer.textContent()).toBe('00:12');

  // On every other screen of the pack one line says that it runs, and no height changes as it ticks.
  await page.goto(`${page.url().split('#')[0]}#/${packId}/item/case-damage`);
  const line = page.locator('.take-line');
  await line.getByText(say.running(markWords.take(1))).waitFor();
  const before = await headHeight(page);
  await page.clock.fastForward(48_000);
  await expect.poll(() => line.textContent()).toContain('01:00');
  expect(await headHeight(page)).toBe(before);
  await page.locator('[data-grade="weak"]').tap();
  await page.clock.runFor(1000);
  await untilSaved(page, `${builtInItem('case-damage').title}: weak`);

  await line.getByRole('link').tap();
  await expectTitle(page, say.title);
  await page.getByLabel(say.label).fill('Lid --> off <b>');
  await page.clock.fastForward(59_000);
  await tapButton(page, say.markNow);
  await page.clock.runFor(1000);
  await untilSaved(page, say.undo.marked('Lid --> off <b>'));
  await page.clock.fastForward(59_000);
  await tapButton(page, say.end);
  await page.clock.runFor(500);
  await page.getByText(say.about('3:00', 2)).waitFor();
  expect(await page.locator('.take-line').count()).toBe(0);

  await page.locator('[data-mark="true"] button').first().tap();
  await page.clock.runFor(500);
  await page.getByLabel(say.inFilm).fill('90');
  await page.getByText(say.notATime('90')).waitFor();
  expect(await button(page, say.setByMark).isDisabled()).toBe(true);
  await page.getByLabel(say.inFilm).fill('1:04.5');
  await tapButton(page, say.setByMark);
  await page.clock.runFor(500);
  await untilSaved(page, say.undo.shifted(markWords.take(1)));

  await page.evaluate(() => Reflect.set(navigator, 'canShare', undefined));
  const file = await saved(page, say.vtt);
  expect(file.name).toBe('underlid-Wren-24-sample-1-take-1.vtt');
  const { text, chapters } = chaptersIn(file.bytes);
  // The answer was given 60 s after the start, the mark 120 s: 4.5 s later on the film.
  expect(chapters).toEqual([
    [0, 'Start'],
    [64.5, `${builtInItem('case-damage').title}: weak`],
    [124.5, 'Lid → off <b>'],
  ]);
  expect(text).toContain('NOTE\nWren 24 · sample 1, Take 1\n');
  const plain = await saved(page, say.plain);
  expect(new TextDecoder().decode(plain.bytes).split('\n').slice(0, 2)).toEqual([
    '0:00 Start',
    `1:04 ${builtInItem('case-damage').title}: weak`,
  ]);
});

it('takes the grade and its mark back with one Undo, and a removed take with its marks as well', async () => {
  const { page } = phone;
  const packId = packIdOn(page);
  await tapButton(page, say.remove);
  await page.clock.runFor(500);
  await untilSaved(page, say.undo.removed(markWords.take(1)));
  expect(await page.locator('[data-mark="true"]').count()).toBe(0);
  await tapButton(page, words.undo);
  await page.clock.runFor(500);
  await expect.poll(() => page.locator('[data-mark="true"]').count()).toBe(2);

  await tapButton(page, say.startNext(2));
  await page.clock.runFor(500);
  await untilSaved(page, say.undo.started(markWords.take(2)));
  await page.clock.resume();
  await answer(page, { packId, itemId: 'handles' }, 'sound');
  await tapButton(page, words.undo);
  await untilSaved(page, words.takenBack(`${builtInItem('handles').title}: sound`));
  await goTo(page, `#/${packId}/shoot-clock`);
  await page.getByText(say.noMark).first().waitFor();
  expect(await page.locator('details[data-take]').first().locator('[data-mark="true"]').count()).toBe(0);
});

it('asks when a take that was left running for over 12 h ended', async () => {
  const { page } = phone;
  await page.clock.fastForward(13 * 3_600_000);
  await page.getByText(/never ended/).waitFor();
  await page.getByLabel(say.endedAfter).fill('2:30');
  await tapButton(page, say.endIt);
  await page.getByText(say.about('2:30', 0)).waitFor();
});

it('the demo bench has one take of Wren 24 with 7 marks that reads back as 8 chapters, marked as invented', async () => {
  const { page, context, complaints } = await emptyPhone(browser);
  await tapButton(page, benchWords.demoIn);
  await button(page, benchWords.demoOut).waitFor();
  await page.locator('.bench-card').filter({ hasText: 'Wren' }).tap();
  await page.locator('.line').first().waitFor();
  await goTo(page, `#/${packIdOn(page)}/shoot-clock`);
  await page.locator('[data-mark="true"]').first().waitFor();
  expect(await page.locator('[data-mark="true"]').count()).toBe(7);
  expect([...(await violations(page)), ...(await tooWide(page)), ...(await tooSmall(page))]).toEqual([]);
  await page.evaluate(() => Reflect.set(navigator, 'canShare', undefined));
  const { text, chapters } = chaptersIn((await saved(page, say.vtt)).bytes);
  expect(chapters).toHaveLength(8);
  expect(chapters.map(([, title]) => title)).toContain(`${builtInItem('cell-vents').title}: weak`);
  expect(text).toMatch(/invented/i);
  expect(complaints).toEqual([]);
  expect(strangers(phone)).toEqual([]);
  await context.close();
});
