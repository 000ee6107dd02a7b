import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { DIPPER } from '../../src/app/demo/dipper.ts';
import { WREN } from '../../src/app/demo/wren.ts';
import { benchWords } from '../../src/text/bench.ts';
import { ownerWords } from '../../src/text/owner.ts';
import { remedyWords as say } from '../../src/text/remedies.ts';
import { sheetScreenWords } from '../../src/text/sheet-screen.ts';
import { words } from '../../src/text/words.ts';
import { builtIn } from '../checklists/built-in.ts';
import { readPdf } from '../sheet/read-pdf.ts';
import { tooSmall, tooWide, violations } from './driver/access-checks.ts';
import { storedEntries, storedValue } from './driver/database.ts';
import { answer, beginPack } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { emptyPhone, type Phone } from './driver/phone.ts';
import { saved } from './driver/save.ts';
import { atRest, button, expectTitle, goTo, tapButton, tapLink, untilSaved } from './driver/screen.ts';
import { chooseTheme } from './driver/screens.ts';

let browser: Browser;
let phone: Phone;
beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
  await tapButton(phone.page, benchWords.demoIn);
  await button(phone.page, benchWords.demoOut).waitFor({ timeout: 60_000 });
});
afterAll(() => browser.close());

const notesOf = async (page: Page, packId: string, remedyId: string) =>
  storedValue(
    (await storedEntries(page)).filter(({ key }) => key[0] === packId),
    'remedyNote',
    remedyId,
  );
const costs = (page: Page) => page.locator('.body > section').last();

it('lists Wren’s remedies in order, each after-score no lower than the one before, the fewest named at the top', async () => {
  const { page } = phone;
  await goTo(page, `#/${WREN.packId}/remedies`);
  await expectTitle(page, say.title);
  const cards = page.locator('.remedy');
  await cards.first().waitFor();
  const reaches = await cards.locator('.tag').allTextContents();
  expect(reaches).toEqual(reaches.toSorted((a, b) => (a === b ? 0 : a === 'from outside' ? -1 : 1)));
  const rules = await page
    .locator('section:has(.remedies) .rule svg')
    .evaluateAll((all) => all.map((one) => Number(/[\d.]+/.exec(one.getAttribute('aria-label') ?? '')?.[0])));
  // As found, after each, after outside, after all.
  expect(rules).toHaveLength((await cards.count()) + 3);
  const steps = rules.slice(0, -2);
  expect(steps).toEqual(steps.toSorted((a, b) => a - b));
  expect(rules.at(-1)).toBe(steps.at(-1));
  expect(await page.locator('.smallest').textContent()).toMatch(/Remed(y|ies) \d+/);
  await page.getByText(say.caution, { exact: true }).waitFor();
});

it('takes a cost, shows it in the sum and on the sheet, and takes it back', async () => {
  const { page } = phone;
  await goTo(page, `#/${DIPPER.packId}/remedies`);
  await page.locator('.remedy').first().waitFor();
  const [first] = await page.evaluate(() =>
    [...document.querySelectorAll('.remedy')].map((one) => one.querySelector('button')?.getAttribute('aria-label')),
  );
  const before = await costs(page).textContent();
  await tapButton(page, first ?? '');
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel(say.dialog.price, { exact: true }).fill('31.5');
  await dialog.getByLabel(say.dialog.note, { exact: true }).fill('From the spares box.');
  await tapButton(page, say.dialog.save);
  await untilSaved(page, say.dialog.undoLabel(1));
  expect(await page.locator('.remedy').first().textContent()).toContain('EUR\u00a031.50');
  expect(await costs(page).textContent()).not.toBe(before);
  const remedyId = (await storedEntries(page)).flatMap(({ key, v }) =>
    key[0] === DIPPER.packId && key[1] === 'remedyNote' && JSON.stringify(v).includes('31.5') ? [key[2]] : [],
  )[0];
  expect(await notesOf(page, DIPPER.packId, remedyId ?? '')).toMatchObject({ price: 31.5, currency: 'EUR' });
  await goTo(page, `#/${DIPPER.packId}/sheet`);
  await page.locator('#sheet-remedies').getByText('From the spares box.').waitFor();
  expect(await page.locator('#sheet-remedies').textContent()).toContain(say.costs.title);
  await goTo(page, `#/${DIPPER.packId}/remedies`);
  await tapButton(page, words.undo);
  await expect.poll(() => costs(page).textContent()).toBe(before);
});

it('has no fault by axe, is not pushed sideways at 390 and 320 px, in both themes, on both screens and in the dialog', async () => {
  const { page } = phone;
  for (const theme of ['paper', 'bench'] as const) {
    await chooseTheme(page, theme);
    for (const place of ['remedies', 'owner'] as const) {
      await goTo(page, `#/${WREN.packId}/${place}`);
      await expectTitle(page, place === 'owner' ? ownerWords.title : say.title);
      for (const width of [390, 320]) {
        await page.setViewportSize({ width, height: 844 });
        await atRest(page);
        expect([...(await violations(page)), ...(await tooWide(page)), ...(await tooSmall(page))]).toEqual([]);
      }
      await page.setViewportSize({ width: 390, height: 844 });
    }
  }
  await goTo(page, `#/${WREN.packId}/remedies`);
  await tapButton(page, say.changeOf(1));
  await page.getByRole('dialog').waitFor();
  expect([...(await violations(page)), ...(await tooWide(page)), ...(await tooSmall(page))]).toEqual([]);
  await tapButton(page, words.cancel);
});

it('gives the owner’s page as a PDF of 1 page with every heading and the disclosure', async () => {
  const { page } = phone;
  await goTo(page, `#/${WREN.packId}/remedies`);
  await tapLink(page, say.toOwner);
  await expectTitle(page, ownerWords.title);
  await tapButton(page, sheetScreenWords.pdf(sheetScreenWords.papers.a4));
  const file = await saved(page, sheetScreenWords.save);
  const pdf = await readPdf(file.bytes.buffer);
  expect(pdf.pages).toHaveLength(1);
  for (const said of [
    ...Object.values(ownerWords.sections),
    'Wren 24',
    words.inventedDemo,
    'Local codes',
    'commission',
  ]) {
    expect(pdf.text).toContain(said);
  }
});

it('withholds remedies of a pack with a stop sign, and says of one with nothing answered what may be', async () => {
  const { page } = phone;
  const packId = await beginPack(page, { name: 'Coot 24' });
  await goTo(page, `#/${packId}/remedies`);
  await page.locator('.remedy').first().waitFor();
  const stopId = builtIn.items.find(({ stop, state }) => stop && state === 'arrival')?.id ?? '';
  await answer(page, { packId, itemId: stopId }, 'failed');
  await goTo(page, `#/${packId}/remedies`);
  await page.getByText(say.withheld, { exact: true }).waitFor();
  expect(await page.locator('.remedy').count()).toBe(0);
  expect(await button(page, say.change).count()).toBe(0);
});
