import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { WREN } from '../../src/app/demo/wren.ts';
import { benchWords } from '../../src/text/bench.ts';
import { calloutWords } from '../../src/text/callouts.ts';
import { wrenWords } from '../../src/text/demo.ts';
import { demoReaderWords } from '../../src/text/demo-reader.ts';
import { agreementWords, secondReaderWords as say } from '../../src/text/second-reader.ts';
import { sheetWords } from '../../src/text/sheet.ts';
import { words } from '../../src/text/words.ts';
import { builtInItem } from '../checklists/built-in.ts';
import { readPdf } from '../sheet/read-pdf.ts';
import { tooSmall, tooWide, violations } from './driver/access-checks.ts';
import { storedEntries } from './driver/database.ts';
import { launchBrowser } from './driver/launch.ts';
import { appUrl, emptyPhone, type Phone } from './driver/phone.ts';
import { savePdf } from './driver/save.ts';
import { button, expectTitle, goTo, tapButton, tapLink, untilSaved } from './driver/screen.ts';

const PACK = WREN.packId;
const ITEM = 'cell-vents';
const NUMBER = 2;

let browser: Browser;
let phone: Phone;
let readerId: string;

beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
  await tapButton(phone.page, benchWords.demoIn);
  await button(phone.page, benchWords.demoOut).waitFor({ timeout: 20_000 });
});
afterAll(() => browser.close());

const shownText = async () => ((await phone.page.locator('.screen').textContent()) ?? '').replaceAll('\u00a0', ' ');
const readings = async (subject: string) =>
  (await storedEntries(phone.page)).filter(({ key, gone }) => key[0] === PACK && key[1] === subject && !gone);

it('covers the bead on the photo of the vents, which the first reader had called out', async () => {
  const { page } = phone;
  const photo = (await readings('callout')).find(({ v }) => JSON.stringify(v).includes(wrenWords.photos.vents.strip));
  if (photo === undefined) throw new Error('no callout of the strip');
  const { photoId } = photo.v as { photoId: string };
  // The editor has no heading to wait for.
  await page.goto(appUrl(`#/${PACK}/photo/${photoId}/${ITEM}`));
  await tapButton(page, calloutWords.kinds.cover);
  const box = await page.locator('.callout-plane > img').boundingBox();
  if (box === null) throw new Error('no photo on the stage');
  await page.mouse.move(box.x + box.width * 0.2, box.y + box.height * 0.2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.5, box.y + box.height * 0.5, { steps: 4 });
  await page.mouse.up();
  await expect
    .poll(async () => (await readings('callout')).filter(({ v }) => JSON.stringify(v).includes('"cover"')).length)
    .toBe(1);
});

it('begins a second reading beside the invented one, with the tick that the grades were not seen', async () => {
  const { page } = phone;
  await goTo(page, `#/${PACK}`);
  await page.getByRole('link', { name: say.title }).tap();
  await expectTitle(page, say.title);
  await page.getByRole('heading', { name: say.nameOf(1, demoReaderWords.label) }).waitFor();
  expect([await tooWide(page), await tooSmall(page), await violations(page)]).toEqual([[], [], []]);
  await tapButton(page, say.begin);
  await page.getByLabel(say.label).fill('K. B.');
  await page.getByRole('checkbox', { name: say.blind }).tap();
  await tapButton(page, say.beginNow);
  await page.waitForURL(/second-reader\/[0-9a-f]{32}%2F[a-z-]+$/);
  readerId = /second-reader\/([0-9a-f]{32})/.exec(page.url())?.[1] ?? '';
  await untilSaved(page, say.undo.begun(say.nameOf(NUMBER, 'K. B.')));
});

it('shows the photo of an item with its cover, without callouts, captions, grades, notes or the score', async () => {
  const { page } = phone;
  await goTo(page, `#/${PACK}/second-reader/${encodeURIComponent(`${readerId}/${ITEM}`)}`);
  await expectTitle(page, builtInItem(ITEM).ask);
  await page.locator('.blind-photo img').waitFor();
  expect(await page.locator('[role="radio"][aria-checked="true"]').count()).toBe(0);
  const own = [wrenWords.photos.vents.strip, wrenWords.photos.vents.caption, wrenWords.notes[ITEM]];
  const html = await page.content();
  expect(own.filter((text) => html.includes(text))).toEqual([]);
  // One cover and nothing else is drawn over the picture: in its middle all is of one colour.
  const covered = await page.locator('.blind-photo .covered svg').count();
  expect(covered).toBe(1);
  expect(await page.locator('.blind-photo .covered svg text').count()).toBe(0);
  expect([await tooWide(page), await tooSmall(page), await violations(page)]).toEqual([[], [], []]);
});

it('magnifies the photo over the whole screen, the cover still on it', async () => {
  const { page } = phone;
  await page.locator('.blind-photo').tap();
  await page.locator('.closer-look .callout-plane > img').waitFor();
  const widthPx = () => page.locator('.closer-look .callout-plane').evaluate((plane) => plane.clientWidth);
  const whole = await widthPx();
  await tapButton(page, calloutWords.larger);
  expect((await widthPx()) / whole).toBeCloseTo(1.6, 1);
  expect(await page.locator('.closer-look .callout-plane > svg > *').count()).toBeGreaterThan(0);
  await tapButton(page, words.close);
});

it('stores an answer, takes it back by the same tap, and takes “cannot tell” as one', async () => {
  const { page } = phone;
  const title = builtInItem(ITEM).title;
  const answers = async () => (await readings('secondAnswer')).filter(({ key }) => key[2] === `${readerId}/${ITEM}`);
  await page.locator('[data-grade="sound"]').tap();
  await untilSaved(page, say.undo.answer(NUMBER, title));
  expect((await answers()).map(({ v }) => v)).toEqual([{ kind: 'grade', grade: 'sound' }]);
  await page.locator('[data-grade="sound"]').tap();
  await expect.poll(async () => (await answers()).length).toBe(0);
  await tapButton(page, say.cannotTell);
  await expect.poll(async () => (await answers()).map(({ v }) => v)).toEqual([{ kind: 'cannotTell' }]);
});

it('can be left and gone on with: the first two items sound, then finished with the rest not answered', async () => {
  const { page } = phone;
  await tapLink(page, `‹ ${say.leave}`);
  for (const _ of [1, 2]) {
    await goTo(page, `#/${PACK}/second-reader/${readerId}`);
    await page.locator('[data-grade="sound"]').tap();
    await page
      .locator('[data-grade="sound"][aria-checked="true"]')
      .waitFor()
      .catch(() => undefined);
    await goTo(page, `#/${PACK}/second-reader`);
  }
  await expect
    .poll(async () => (await readings('secondAnswer')).filter(({ key }) => key[2].startsWith(readerId)).length)
    .toBe(3);
  const card = page.locator('.card').filter({ hasText: 'K. B.' });
  await card.getByText(/^3 of \d+ answered$/).waitFor();
  await card.getByRole('button', { name: say.finishNow }).tap();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Finish with \d+ items not answered$/ })
    .tap();
  await expectTitle(page, say.nameOf(NUMBER, 'K. B.'));
  const text = await shownText();
  // Both sound to both: chance alone agrees as well.
  expect(text).toContain(agreementWords.allAlike);
  expect(text).toContain(agreementWords.sameOf(2, 2));
  expect(text).toContain(agreementWords.why.secondCannotTell);
});

it('a finished reading cannot be answered any more: its items lead to how both agree', async () => {
  const { page } = phone;
  await goTo(page, `#/${PACK}/second-reader/${encodeURIComponent(`${readerId}/${ITEM}`)}`);
  await expectTitle(page, say.nameOf(NUMBER, 'K. B.'));
  expect(await page.locator('[data-grade]').count()).toBe(0);
});

it('is taken out and brought back by Undo, with its 3 answers', async () => {
  const { page } = phone;
  await goTo(page, `#/${PACK}/second-reader`);
  await page.locator('.card').filter({ hasText: 'K. B.' }).getByRole('button', { name: say.takeOut }).tap();
  await untilSaved(page, say.undo.takenOut(say.nameOf(NUMBER, 'K. B.')));
  expect(await page.locator('.card').count()).toBe(1);
  await tapButton(page, words.undo);
  await page.locator('.card').filter({ hasText: 'K. B.' }).waitFor();
  expect((await readings('secondAnswer')).filter(({ key }) => key[2].startsWith(readerId)).length).toBe(3);
});

it('both readings stand in the PDF of the sheet, with kappa and its interval, read back by another program', async () => {
  const { page } = phone;
  await goTo(page, `#/${PACK}/sheet`);
  await page.locator('#sheet-secondReading').waitFor();
  const pdf = await readPdf((await savePdf(page, PACK)).bytes.buffer);
  const text = pdf.text.replace(/\s+/g, ' ');
  expect(text).toContain(sheetWords.sections.secondReading);
  expect(text).toContain(say.nameOf(NUMBER, 'K. B.'));
  expect(text).toMatch(/95 %: [\u22120-9.]+ to [0-9.]+/);
  expect(phone.complaints).toEqual([]);
});
