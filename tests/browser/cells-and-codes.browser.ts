import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { calloutWords } from '../../src/text/callouts.ts';
import { cellCodeWords } from '../../src/text/live-tests/cell-code.ts';
import { cellGridWords, cellsWords, padWords } from '../../src/text/live-tests/cells.ts';
import { editingWords as say } from '../../src/text/live-tests/editing.ts';
import { leadWords } from '../../src/text/live-tests/lead.ts';
import { parallelWords } from '../../src/text/live-tests/parallel.ts';
import { leadWords as resultLeadWords } from '../../src/text/live-tests/results/lead.ts';
import { rulerStageWords, rulerUseWords, rulerWords } from '../../src/text/live-tests/ruler.ts';
import { photoWords } from '../../src/text/photo-screens.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { codeMatrix } from './driver/code-matrix.ts';
import { storedEntries, storedValue } from './driver/database.ts';
import { drawnPhoto } from './driver/drawn-photo.ts';
import { beginPack } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { hasSignal, loseSignal } from './driver/offline.ts';
import { emptyPhone, type Phone, strangers } from './driver/phone.ts';
import { photograph } from './driver/photo.ts';
import { button, expectTitle, goTo, tapButton, tapLink, untilSaved } from './driver/screen.ts';
import { pressOnPhoto } from './driver/set-point.ts';

const roll = cameraRoll();
let browser: Browser;
let phone: Phone;
let packId: string;

beforeAll(async () => {
  browser = await launchBrowser();
});
beforeEach(async () => {
  phone = await emptyPhone(browser);
  packId = await beginPack(phone.page, { name: 'Grebe 24', cellsInSeries: '8', continuousCurrentA: '100' });
});
afterEach(() => phone.context.close());
afterAll(() => browser.close());

const choose = (page: Page, text: string) => page.getByRole('radio', { name: text, exact: true }).tap();
const cellBox = (page: Page, number: number, column: keyof typeof cellGridWords.column = 'voltageV') =>
  page.getByLabel(cellGridWords.box(number, cellGridWords.column[column]), { exact: true });

async function beginRound(page: Page): Promise<string> {
  await goTo(page, `#/${packId}/live-test/cells`);
  await tapButton(page, say.add(cellsWords.one));
  await choose(page, cellsWords.states.nearFull);
  await cellBox(page, 8).waitFor();
  return /cells(?:\/|%2F)([0-9a-f]{32})/.exec(page.url())?.[1] ?? '';
}

it('eight cells typed one after the other with Enter are eight entries, there after a reload, with bars and 31 mV of spread', async () => {
  const { page } = phone;
  const setId = await beginRound(page);
  const typed = ['3.452', '3.449', '3.460', '3.455', '3.451', '3,462', '3.448', '3.431'];
  await cellBox(page, 1).focus();
  for (const text of typed) {
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }
  await untilSaved(page, cellGridWords.undo(8, cellGridWords.column.voltageV));
  await page.reload();
  await cellBox(page, 8).waitFor();
  const shown = await Promise.all(typed.map((_, place) => cellBox(page, place + 1).inputValue()));
  expect(shown).toEqual(['3.452', '3.449', '3.46', '3.455', '3.451', '3.462', '3.448', '3.431']);
  const entries = await storedEntries(page);
  expect(storedValue(entries, 'cell', `${setId}/6`)).toEqual({ voltageV: 3.462 });
  await page.getByText('spread 31\u00a0mV', { exact: true }).first().waitFor();
  expect(await page.locator('.sheet-plot svg').count()).toBe(1);
});

it('3296 is offered as 3.296 V and not taken by itself; it outlives a reload; a cell not read has no entry', async () => {
  const { page } = phone;
  const setId = await beginRound(page);
  await cellBox(page, 2).tap();
  for (const key of ['3', '2', '9', '6']) await page.locator('.number-pad').getByText(key, { exact: true }).tap();
  await button(page, padWords.next).tap();
  const offer = page.getByText(cellGridWords.offered(2, '3296'), { exact: true });
  await offer.waitFor();
  expect(await cellBox(page, 3).evaluate((box) => box === document.activeElement)).toBe(true);
  expect(storedValue(await storedEntries(page), 'cell', `${setId}/2`)).toBeUndefined();
  await page.reload();
  await offer.waitFor();
  expect(await cellBox(page, 2).inputValue()).toBe('3296');
  await tapButton(page, '3.296\u00a0V');
  await untilSaved(page, cellGridWords.undo(2, cellGridWords.column.voltageV));
  const entries = await storedEntries(page);
  expect(storedValue(entries, 'cell', `${setId}/2`)).toEqual({ voltageV: 3.296 });
  expect(entries.filter(({ key, gone }) => key[1] === 'cell' && !gone).length).toBe(1);
});

it('a sign is typed on the pad, words stay in their box with a sentence, and an emptied cell is open again', async () => {
  const { page } = phone;
  const setId = await beginRound(page);
  await cellBox(page, 1).tap();
  for (const name of ['0', padWords.point, '4', padWords.sign]) await button(page, name).tap();
  await button(page, padWords.away).tap();
  await untilSaved(page, cellGridWords.undo(1, cellGridWords.column.voltageV));
  expect(storedValue(await storedEntries(page), 'cell', `${setId}/1`)).toEqual({ voltageV: -0.4 });
  await cellBox(page, 1).fill('12.8');
  await page.getByText(cellGridWords.wrong.noCellVoltage(1, '12.8'), { exact: true }).waitFor();
  await cellBox(page, 1).fill('');
  await button(page, padWords.away).tap();
  await expect.poll(async () => storedValue(await storedEntries(page), 'cell', `${setId}/1`)).toBeUndefined();
});

it('three columns on the smallest phone: every box is 48 px high and 60 px wide at least', async () => {
  const { page } = phone;
  await page.setViewportSize({ width: 320, height: 568 });
  await beginRound(page);
  await tapButton(page, cellGridWords.column.resistanceMohm);
  await tapButton(page, cellGridWords.column.bmsVoltageV);
  const boxes = await page
    .locator('.cell-boxes input')
    .evaluateAll((inputs) =>
      inputs.map((input) => input.getBoundingClientRect()).map(({ width, height }) => ({ width, height })),
    );
  expect(boxes.length).toBe(24);
  expect(Math.min(...boxes.map(({ height }) => height))).toBeGreaterThanOrEqual(48);
  expect(Math.min(...boxes.map(({ width }) => width))).toBeGreaterThanOrEqual(60);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
});

it('two strings of 55 and 45 Ah: worst 10 % off an equal share', async () => {
  const { page } = phone;
  await goTo(page, `#/${packId}/live-test/parallel`);
  await tapButton(page, say.add(parallelWords.one));
  await choose(page, parallelWords.of.strings);
  for (const [place, charge] of ['55', '45'].entries()) {
    const box = page.getByLabel(parallelWords.shareLabels.chargeAh, { exact: true }).nth(place);
    await box.fill(charge);
    await box.blur();
  }
  await page.getByText('worst 10.0\u00a0% off an equal share', { exact: true }).waitFor();
  expect(await page.locator('.sheet-plot svg').count()).toBe(1);
});

/** Two codes that a reseller and an open data model of the trade show as specimens. */
const QR = '04QCB76836300JBC40000903';
const MATRIX = '001CB240000003B3C0221953';

it('a QR code and a Data Matrix on one photo are read without a signal, each kept as an entry, its date beside its characters', async () => {
  const { page } = phone;
  await loseSignal(phone);
  expect(await hasSignal(page)).toBe(false);
  const photo = await drawnPhoto(page, {
    widthPx: 2048,
    heightPx: 1536,
    codes: [
      { dark: await codeMatrix(QR, 'QRCode'), leftPx: 300, topPx: 400, modulePx: 5 },
      { dark: await codeMatrix(MATRIX, 'DataMatrix'), leftPx: 1300, topPx: 900, modulePx: 5 },
    ],
  });
  await goTo(page, `#/${packId}/live-test/code`);
  await tapButton(page, say.add(cellCodeWords.one));
  await photograph(page, roll.put('codes.jpg', photo), { by: photoWords.takeOne, from: photoWords.fromPhone });
  await page.getByText(cellCodeWords.found(2), { exact: true }).waitFor({ timeout: 20_000 });
  await tapButton(page, cellCodeWords.keepAll(2));
  await untilSaved(page, cellCodeWords.undoKept(2));
  await tapButton(page, say.done);
  await expectTitle(page, cellCodeWords.title);
  for (const raw of ['characters BC4', 'characters B3C']) await page.getByText(raw, { exact: true }).waitFor();
  await page.getByText('maker 04Q, 4\u00a0December\u00a02021', { exact: true }).waitFor();
  const marks = (await storedEntries(page)).filter(({ key, gone }) => key[1] === 'cellMark' && !gone);
  expect(marks.map(({ v }) => v)).toEqual(
    expect.arrayContaining([
      expect.objectContaining({ text: QR, read: 'photo', symbology: 'QRCode' }),
      expect.objectContaining({ text: MATRIX, read: 'photo', symbology: 'DataMatrix' }),
    ]),
  );
  expect(strangers(phone)).toEqual([]);
  expect(phone.complaints).toEqual([]);
});

it('a code of 2 px a module on a 4096 px photo, too small for both looks at the whole, is found piece by piece', async () => {
  const { page } = phone;
  const photo = await drawnPhoto(page, {
    widthPx: 4096,
    heightPx: 3072,
    codes: [{ dark: await codeMatrix(QR, 'DataMatrix'), leftPx: 3100, topPx: 2200, modulePx: 2 }],
  });
  await goTo(page, `#/${packId}/live-test/code`);
  await tapButton(page, say.add(cellCodeWords.one));
  await photograph(page, roll.put('small.jpg', photo), {
    by: photoWords.takeOne,
    from: `${photoWords.cameraDetail} ${photoWords.cameraDetailHint}`,
  });
  await page.getByText(cellCodeWords.found(1), { exact: true }).waitFor({ timeout: 20_000 });
  await page.getByText(QR, { exact: true }).waitFor();
});

it('a typed code with a letter that is never issued names the letter and its place, and keeps what was typed', async () => {
  const { page } = phone;
  await goTo(page, `#/${packId}/live-test/code`);
  await tapButton(page, say.add(cellCodeWords.one));
  const box = page.getByLabel(cellCodeWords.labels.text, { exact: true });
  await box.fill('04QXB76836300JBC40000903');
  await box.blur();
  await page.getByText(cellCodeWords.wrongAt(4, 'X'), { exact: true }).waitFor();
  await page.reload();
  // The box is there before what was typed into it has been read from the phone.
  await expect.poll(() => box.inputValue()).toBe('04QXB76836300JBC40000903');
});

/** A camera that looks a little from the side: mm in the plane of the card to pixels of the photo. */
const PHOTO = { widthPx: 1600, heightPx: 1200 };
const onPhoto = (xMm: number, yMm: number): [number, number] => {
  const depth = 1 + 0.0008 * xMm + 0.0012 * yMm;
  return [(560 + 5.6 * xMm + 0.3 * yMm) / depth, (430 + 0.2 * xMm + 5.4 * yMm) / depth];
};
const CARD = [onPhoto(0, 0), onPhoto(85.6, 0), onPhoto(85.6, 53.98), onPhoto(0, 53.98)];
/** A bare strand bundle 40 mm long and 8 mm across, beside the card. */
const STRANDS = [onPhoto(20, 64), onPhoto(60, 64), onPhoto(60, 72), onPhoto(20, 72)];

it('on a drawn card seen aslant 40 mm are 40 mm within the uncertainty told, and become a lead with its current in one step', async () => {
  const { page } = phone;
  const photo = await drawnPhoto(page, {
    ...PHOTO,
    shapes: [
      { corners: CARD, colour: '#fdfdfd' },
      { corners: STRANDS, colour: '#b0622f' },
    ],
  });
  await goTo(page, `#/${packId}/live-test/ruler`);
  await tapButton(page, say.add(rulerWords.one));
  await photograph(page, roll.put('card.jpg', photo), { by: photoWords.takeOne, from: photoWords.fromPhone });
  await page.locator('.callout-plane > img').waitFor();
  await tapButton(page, calloutWords.larger);
  await tapButton(page, calloutWords.larger);
  // The corners in no order: they are put in order round the card.
  const set = [CARD[0], CARD[2], CARD[1], CARD[3], STRANDS[0], STRANDS[1]];
  for (const [x, y] of set as [number, number][]) await pressOnPhoto(page, [x / PHOTO.widthPx, y / PHOTO.heightPx]);
  await tapButton(page, rulerStageWords.done);
  const offPlane = page.getByLabel(rulerWords.labels.offPlaneMm, { exact: true });
  await offPlane.fill('0');
  await offPlane.blur();
  const told = page.locator('.ruler-distance');
  await expect.poll(() => told.textContent()).toMatch(/^[\d.]+\u00a0mm ± [\d.]+\u00a0mm$/);
  const [mm = 0, plusMinusMm = 0] = [...((await told.textContent()) ?? '').matchAll(/[\d.]+/g)].map(Number);
  expect(plusMinusMm).toBeLessThan(1.5);
  expect(Math.abs(mm - 40)).toBeLessThanOrEqual(plusMinusMm);

  await tapButton(page, rulerUseWords.uses.bareStrands);
  await choose(page, '105\u00a0°C');
  await tapButton(page, rulerUseWords.use);
  await expectTitle(page, say.numbered(leadWords.one, 1));
  const lead = (await storedEntries(page)).find(({ key }) => key[1] === 'lead')?.v;
  expect(lead).toMatchObject({ place: 'main', form: 'cable', way: 'bareStrands', insulationDegC: 105 });
  // π/4 · 40² · 0.75 = 942 mm²: absurd as a lead, right as a sum.
  await page.locator('.result-value').getByText(/mm²/).first().waitFor();
  const carries = page.locator('.result-rows > div', { hasText: resultLeadWords.labels.allowable });
  expect(await carries.locator('dd').textContent()).toMatch(/^\d+\u00a0A$/);

  await goTo(page, `#/${packId}/live-test/ruler`);
  await page.locator('.line', { hasText: '±' }).tap();
  await expectTitle(page, say.numbered(rulerWords.one, 1));
  await tapLink(page, rulerWords.openPhoto);
  expect(await page.locator('.about-photo > svg').count()).toBe(2);
  await page.locator('.line', { hasText: '±' }).waitFor();

  await tapButton(page, photoWords.remove);
  await tapButton(page, photoWords.removeNow);
  const isRulerLeft = async () => (await storedEntries(page)).some(({ key, gone }) => key[1] === 'ruler' && !gone);
  await expect.poll(isRulerLeft).toBe(false);
});
