import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { arrivalWords } from '../../src/text/arrival.ts';
import { beforeWords, itemWords, lidOffWords, stateWords } from '../../src/text/item.ts';
import { liveTestsWords } from '../../src/text/live-tests/live-tests.ts';
import { makeSafeWords } from '../../src/text/make-safe.ts';
import { nameplateWords } from '../../src/text/nameplate.ts';
import { photoWords } from '../../src/text/photo-screens.ts';
import { sheetWords } from '../../src/text/sheet.ts';
import { sheetScreenWords } from '../../src/text/sheet-screen.ts';
import { builtIn, builtInItem } from '../checklists/built-in.ts';
import { type ReadPdf, readPdf } from '../sheet/read-pdf.ts';
import { answerAlong, type Visit } from './driver/along.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { drawByTouch, writeOnCallout } from './driver/draw.ts';
import { beginPack, chooseShortRoute, makeSafe, writeNote } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { hasSignal, loseSignal } from './driver/offline.ts';
import { appUrl, emptyPhone, type Phone, strangers } from './driver/phone.ts';
import { leaveCallouts, photograph, photographItem, untilCalloutsSaved } from './driver/photo.ts';
import { savePdf } from './driver/save.ts';
import { button, expectTitle, link, tapButton, tapLink } from './driver/screen.ts';
import { genuinePhoto } from './photographs/genuine-photo.ts';

const NOTE = 'Łukasz café: R ≤ 3 mΩ at 40 °C, 25 mm², 5 µm gap';
const LEGEND = 'Sense lead across the vent, ≤ 2 mm²';
/** Going on although some photos are wanting, whatever their number. */
const ANYWAY = new RegExp(`^${beforeWords.goAnyway(7).replace('7', '\\d+')}$`);
/** Everything else is sound. */
const FAULTS: Record<string, 'weak' | 'failed'> = { 'cell-vents': 'failed', 'main-lugs': 'weak' };
const FACTS: Record<string, string> = {
  'metal-case': 'no',
  'metal-case-closed': 'no',
  'ip-claim': 'no',
  'data-port': 'no',
  reopenable: 'screws',
  'cell-joint': 'bolted',
};

const roll = cameraRoll();
let browser: Browser;
let phone: Phone;
let packId: string;
const visits: Visit[] = [];
let pdf: ReadPdf;

beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
});
afterAll(() => browser.close());

async function along(stop: (itemId: string) => Promise<void>) {
  const found = await answerAlong(phone.page, {
    gradeOf: (itemId) => FAULTS[itemId] ?? 'sound',
    choiceOf: (factId) => FACTS[factId] ?? 'no',
    stop,
  });
  visits.push(...found);
}

it('works without a signal from the first reload on', async () => {
  await loseSignal(phone);
  expect(await hasSignal(phone.page)).toBe(false);
});

it('takes a pack from the Nameplate over Arrival and Live tests to Make safe', async () => {
  const { page } = phone;
  packId = await beginPack(page, {
    name: 'Grebe 12',
    nominalVoltageV: '25.6',
    ratedCapacityAh: '100',
    cellsInSeries: '8',
    price: '399',
    currency: 'EUR',
  });
  await chooseShortRoute(page);
  await photograph(page, roll.put('genuine.jpg', genuinePhoto()), {
    by: nameplateWords.photo,
    from: photoWords.fromPhone,
  });
  await page.locator('.thumb img').waitFor();
  await tapButton(page, nameplateWords.goOn);
  await expectTitle(page, arrivalWords.title);
  await answerWhileAsked(arrivalWords.goOn, arrivalWords.title);
  await tapButton(page, arrivalWords.toLiveTests);
  await expectTitle(page, liveTestsWords.title);
  await answerWhileAsked(liveTestsWords.goOn, liveTestsWords.title);
  await tapButton(page, liveTestsWords.toMakeSafe);
  await expectTitle(page, makeSafeWords.title);
  await makeSafe(page, packId, roll.shot('covered.jpg', { orientation: 6 }));
});

it('goes through the three states of Lid off, with photos and callouts drawn by touch', async () => {
  const { page } = phone;
  for (const state of ['untouched', 'liveOpen', 'apart'] as const) {
    await page.getByRole('heading', { level: 1 }).getByText(stateWords[state], { exact: true }).waitFor();
    await answerWhileAsked(lidOffWords.goOn, lidOffWords.title);
    if (state === 'apart') break;
    await link(page, lidOffWords.nextState[state]).first().tap();
    await expectTitle(page, beforeWords.title);
    const goOn = state === 'untouched' ? beforeWords.goLive : beforeWords.goApart;
    await button(page, goOn)
      .or(page.getByRole('button', { name: ANYWAY }))
      .tap();
    await expectTitle(page, lidOffWords.title);
  }
  const short = builtIn.items.filter(({ route }) => route === 'short');
  const excluded = short.filter(({ onlyIf }) => onlyIf && FACTS[onlyIf.fact] !== onlyIf.is);
  expect(visits.length).toBe(short.length - excluded.length);
});

/** The way leads through one part of the list after the other. */
async function answerWhileAsked(goOn: string, listTitle: string) {
  const { page } = phone;
  const list = page.url();
  while (await button(page, goOn).isVisible()) {
    await tapButton(page, goOn);
    await page.waitForURL(/\/(item|fact)\//);
    await along(lookCloser);
    await page.goto(list);
    await expectTitle(page, listTitle);
  }
}

async function lookCloser(itemId: string) {
  const { page } = phone;
  if (itemId === 'main-lugs') await writeNote(page, itemId, NOTE);
  if (itemId !== 'cell-vents') return;
  await photographItem(page, roll.shot('vents.jpg', { orientation: 3 }));
  await drawByTouch(page, 'leader', [
    [0.3, 0.3],
    [0.42, 0.5],
  ]);
  await writeOnCallout(page, 'leader', LEGEND);
  await drawByTouch(page, 'outline', [
    [0.55, 0.5],
    [0.7, 0.6],
    [0.85, 0.7],
  ]);
  await drawByTouch(page, 'cover', [
    [0.05, 0.75],
    [0.1, 0.9],
    [0.2, 0.95],
  ]);
  await untilCalloutsSaved(page);
  await leaveCallouts(page);
  await button(page, itemWords.photo).waitFor();
  await expect.poll(() => page.locator('.thumb .count').textContent()).toBe('3');
}

it('opens a deep link without a signal, and shows the answer that was given there', async () => {
  const { page } = phone;
  await page.goto(appUrl(`#/${packId}/item/cell-vents`));
  await page.reload();
  await expectTitle(page, builtInItem('cell-vents').ask);
  await expect.poll(() => page.locator('[data-grade="failed"]').getAttribute('aria-checked')).toBe('true');
});

it('shows the finding on the Sheet and saves the PDF', async () => {
  const { page } = phone;
  await page.goto(appUrl(`#/${packId}/lid-off`));
  await tapLink(page, lidOffWords.nextState.apart);
  await expectTitle(page, sheetScreenWords.title);
  const sheet = page.getByRole('article');
  await sheet.getByText(builtInItem('cell-vents').title).first().waitFor();
  await expect.poll(() => sheet.textContent()).toContain(NOTE);
  const file = await savePdf(page, packId);
  expect(file.name).toMatch(/^underlid-.*Grebe-12.*\.pdf$/);
  pdf = await readPdf(file.bytes.buffer);
});

it('prints words with Ω ° ≤ ² µ é ł so that another program reads them back', () => {
  const plain = (text: string) => text.normalize('NFKC').replace(/\s+/g, ' ');
  expect(pdf.text).toContain(plain(NOTE));
  expect(pdf.text).toContain(plain(LEGEND));
  expect(pdf.text).toContain(builtInItem('cell-vents').title);
  expect(pdf.text).not.toContain('□');
});

it('numbers every page "n of all", and prints the 3 photos once each', () => {
  expect(pdf.pages.length).toBeGreaterThan(2);
  pdf.pages.forEach(({ text, width, height }, index) => {
    expect(text).toContain(sheetWords.page(index + 1, pdf.pages.length));
    // A4 in points: 210 × 297 mm.
    expect([Math.round(width), Math.round(height)]).toEqual([595, 842]);
  });
  expect(pdf.pages.reduce((sum, { imageCount }) => sum + imageCount, 0)).toBe(3);
});

it('asked no other host for anything in the whole job, and nothing was refused by the policy', () => {
  expect(phone.requests.length).toBeGreaterThan(20);
  expect(strangers(phone)).toEqual([]);
  expect(phone.complaints).toEqual([]);
});
