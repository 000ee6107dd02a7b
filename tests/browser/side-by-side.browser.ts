import Papa from 'papaparse';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { benchWords } from '../../src/text/bench.ts';
import { closingWords } from '../../src/text/closing-screens.ts';
import { pricesWords } from '../../src/text/prices.ts';
import { sheetScreenWords } from '../../src/text/sheet-screen.ts';
import { gridWords, sideBySideWords } from '../../src/text/side-by-side.ts';
import { sideBySideScreenWords as say } from '../../src/text/side-by-side-screen.ts';
import { words } from '../../src/text/words.ts';
import { slipIn } from './driver/database.ts';
import { beginPack } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { emptyPhone, type Phone, strangers } from './driver/phone.ts';
import { saved } from './driver/save.ts';
import { button, expectTitle, goTo, tapButton, tapLink } from './driver/screen.ts';

let browser: Browser;
let phone: Phone;
let thirdId: string;
beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
  await tapButton(phone.page, benchWords.demoIn);
  await button(phone.page, benchWords.demoOut).waitFor();
});
afterAll(() => browser.close());

const paper = () => phone.page.getByRole('article');
/** The text of a row of the grid, cell by cell. */
async function row(label: string): Promise<string[]> {
  const csv = await comparison();
  const found = csv.find((cells) => cells[1] === label);
  if (found === undefined) throw new Error(`row: no ${label} in the comparison`);
  return found.slice(2);
}
async function comparison(): Promise<string[][]> {
  const file = await saved(phone.page, say.csv);
  const { data } = Papa.parse(new TextDecoder().decode(file.bytes), { header: false, skipEmptyLines: true });
  // As many cells in every line as there are packs, after its group and label.
  expect(new Set(data.map(({ length }) => length)).size).toBe(1);
  return data;
}
async function unfold(part: string): Promise<void> {
  const fold = phone.page.locator(`details[data-part="${part}"]`);
  if ((await fold.getAttribute('open')) === null) await fold.locator(':scope > summary').tap();
}

it('stands the two packs of the demo bench side by side at one tap, ranked, with the order weighed', async () => {
  const { page } = phone;
  await tapLink(page, benchWords.sideBySide);
  await expectTitle(page, say.title);
  await paper().getByText('Dipper 24 leads in every weighting.').waitFor();
  expect(await row(sideBySideWords.labels.rank)).toEqual(['1 of 2', '2 of 2']);
  expect(await row(sideBySideWords.labels.verdict)).toEqual(['No serious finding, mind the list', 'Workshop first']);
  expect(phone.complaints).toEqual([]);
});

it('shows only what differs and all 6 protections when that is ticked, says how many lines it hides, and keeps it so', async () => {
  const { page } = phone;
  const label = sideBySideWords.labels.checklist;
  expect(await paper().getByText(label, { exact: true }).count()).toBe(1);
  await page.getByLabel(say.onlyDiffering).check();
  expect(await paper().getByText(label, { exact: true }).count()).toBe(0);
  expect(await paper().getByText(sideBySideWords.labels.verdict, { exact: true }).count()).toBe(1);
  for (const protection of Object.values(sideBySideWords.protections)) {
    expect(await paper().getByText(protection, { exact: true }).count()).toBe(1);
  }
  const shownCount = await paper().locator('tr.label').count();
  // All but the names, the marks, the disclosures and the cautions.
  const lines = (await comparison()).filter(([group]) => group !== sideBySideWords.csv.caution);
  const hiddenCount = lines.length - 3 - shownCount;
  expect(hiddenCount).toBeGreaterThan(1);
  await paper().getByText(sideBySideWords.countHidden('2 packs', hiddenCount), { exact: true }).waitFor();
  await page.reload();
  await paper().waitFor();
  expect(await page.getByLabel(say.onlyDiffering).isChecked()).toBe(true);
  expect(await row(label)).toHaveLength(2);
  await page.getByLabel(say.onlyDiffering).uncheck();
});

it('counts with a later price and an option: EUR 589 + 48 in place of 649, and no sheet is touched', async () => {
  const { page } = phone;
  const [, before] = await row(sideBySideWords.labels.cost);
  await unfold('prices');
  await page.getByRole('radio', { name: /^EUR.589/ }).tap();
  await page.getByLabel(/heating mat/).check();
  const [, price] = await row(sideBySideWords.labels.price);
  expect(price?.replaceAll('\u00a0', ' ')).toContain('EUR 637.00');
  expect(price).toContain('heating mat');
  const [, after] = await row(sideBySideWords.labels.cost);
  const figure = (text = '') => Number(/[\d.]+\d/.exec(text)?.[0]);
  expect(figure(after) / figure(before)).toBeCloseTo(637 / 649, 3);
});

it('writes the comparison as a PDF whose text another reader finds', async () => {
  const { page } = phone;
  await tapButton(page, sheetScreenWords.pdf(sheetScreenWords.papers.a4));
  const file = await saved(page, sheetScreenWords.save);
  expect(file.name).toMatch(/\.pdf$/);
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const read = await getDocument({ data: file.bytes, verbosity: 0 }).promise;
  const first = await (await read.getPage(1)).getTextContent();
  const text = first.items.map((item) => ('str' in item ? item.str : '')).join(' ');
  expect(text).toContain('Dipper 24 and Wren 24');
  expect(text).toContain(words.inventedDemo);
  expect(text).toContain('Workshop first');
});

it('lets nothing of the page through behind what it says of the saved PDF, 390 and 320 px wide', async () => {
  const { page } = phone;
  const size = page.viewportSize();
  const line = page.locator('.dock-line');
  await line.waitFor();
  for (const width of [390, 320]) {
    await page.setViewportSize({ width, height: 700 });
    await page.evaluate(() => window.scrollTo(0, 1500));
    const seen = await line.screenshot({ animations: 'disabled' });
    await page.evaluate(() => document.querySelector('article')?.style.setProperty('background', 'magenta'));
    expect((await line.screenshot({ animations: 'disabled' })).equals(seen)).toBe(true);
    await page.evaluate(() => document.querySelector('article')?.style.removeProperty('background'));
    const [dock, box] = [await page.locator('.dock').boundingBox(), await line.boundingBox()];
    expect(box?.width).toBeLessThanOrEqual(dock?.width ?? 0);
  }
  if (size !== null) await page.setViewportSize(size);
});

it('takes in a third pack of which nothing is known yet, and lets one be left out: 3 columns, then 2', async () => {
  const { page } = phone;
  thirdId = await beginPack(page, { name: 'Third', price: '400', currency: 'EUR' });
  await goTo(page, '#/side-by-side');
  await unfold('which');
  await page.getByLabel(/^Third/).check();
  await expect.poll(async () => (await row(sideBySideWords.labels.verdict)).length).toBe(3);
  await page.getByLabel(/^Wren 24/).uncheck();
  await expect.poll(async () => (await row(sideBySideWords.labels.verdict)).length).toBe(2);
  await page.getByLabel(/^Third/).uncheck();
  await page.getByText(say.pick).waitFor();

  await goTo(page, `#/${thirdId}/prices`);
  await tapButton(page, pricesWords.addPrice);
  await page.getByLabel(pricesWords.dialog.price.amount, { exact: true }).and(page.locator('input')).fill('380');
  await tapButton(page, pricesWords.save);
  await page.getByText(/EUR.380/).waitFor();
  expect(strangers(phone)).toEqual([]);
  expect(phone.complaints).toEqual([]);
});

it('keeps a closed sheet as it was sealed, at EUR 400, though EUR 300 came in past it; what is open follows: 410', async () => {
  const { page } = phone;
  await goTo(page, `#/${thirdId}/sheet`);
  await tapButton(page, closingWords.close);
  await tapButton(page, closingWords.dialog.now);
  await page.locator('[data-standing="closed"]').waitFor();
  const openId = await beginPack(page, { name: 'Fourth', price: '500', currency: 'EUR' });
  await slipIn(page, [thirdId, 'nameplate', 'price'], 300);
  await slipIn(page, [openId, 'nameplate', 'price'], 410);
  await goTo(page, '#/side-by-side');
  await page.reload();
  await unfold('which');
  await page.getByLabel(/^Third/).check();
  await page.getByLabel(/^Fourth/).check();
  await expect.poll(async () => (await row(sideBySideWords.labels.price)).length).toBe(3);
  const names = (await comparison())[0]?.slice(2) ?? [];
  const prices = await row(sideBySideWords.labels.price);
  const sheets = await row(sideBySideWords.labels.sheet);
  expect(prices[names.indexOf('Third')]).toContain('400');
  expect(sheets[names.indexOf('Third')]).toBe('Closed, revision 1');
  expect(prices[names.indexOf('Fourth')]).toContain('410');
  expect(sheets[names.indexOf('Fourth')]).toBe('Not closed');
  expect(phone.complaints).toEqual([]);
});

/** Words of the grid that stand on more than one line. */
const brokenWords = () =>
  phone.page.locator('.sheet-grid').evaluate((grid) => {
    const found: string[] = [];
    const texts = document.createTreeWalker(grid, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node !== null; node = texts.nextNode()) {
      for (const word of (node.textContent ?? '').matchAll(/[^\s\u2013-]+/g)) {
        const range = document.createRange();
        range.setStart(node, word.index);
        range.setEnd(node, word.index + word[0].length);
        if (new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size > 1) found.push(word[0]);
      }
    }
    return found;
  });
const columnsShown = () =>
  phone.page
    .locator('.sheet-grid')
    .evaluate((grid) => grid.clientWidth / (grid.querySelector('thead th')?.clientWidth ?? Number.NaN));

it('breaks no word: 3 packs fit 390 px whole, 2½ show of 4 packs and of 3 on 320 px, and it says that it scrolls', async () => {
  const { page } = phone;
  const size = page.viewportSize();
  await page.getByLabel(/^Fourth/).uncheck();
  await page.getByLabel(/^Wren 24/).check();
  await page.getByLabel(/^Dipper 24/).check();
  await page.getByLabel(/^Third/).uncheck();
  await page.getByLabel(/^Third/).check();
  const shows = async (width: number, count: number, columns: number) => {
    await page.setViewportSize({ width, height: 844 });
    await expect.poll(() => paper().locator('thead th').count()).toBe(count);
    await expect.poll(columnsShown).toBeCloseTo(columns, 1);
    await expect.poll(() => page.getByText(gridWords.more(count)).count()).toBe(columns < count ? 1 : 0);
    expect(await brokenWords()).toEqual([]);
  };
  await shows(390, 3, 3);
  await shows(320, 3, 2.5);
  await page.getByLabel(/^Fourth/).check();
  await shows(390, 4, 2.5);
  if (size !== null) await page.setViewportSize(size);
});
