import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { carryOverWords as say } from '../../src/text/carry-over.ts';
import { sheetWords } from '../../src/text/sheet.ts';
import { words } from '../../src/text/words.ts';
import { earlierVersion } from '../storage/earlier-versions.ts';
import { tooSmall, tooWide, violations } from './driver/access-checks.ts';
import { storedEntries, storedValue } from './driver/database.ts';
import { launchBrowser } from './driver/launch.ts';
import { emptyPhone, type Phone } from './driver/phone.ts';
import { restoreBundles } from './driver/save.ts';
import { button, goTo, tapButton, untilSaved } from './driver/screen.ts';

/** Dipper 24 as version 1 of the app wrote it: by checklist 1.0.0 one of 79 answers was deleted again, so 78 are settled. */
const DIPPER = '94c07b3ad15e4f28a6e2b9037d1c8f24';
const [OLD, NEW] = ['1.0.0', '1.1.1'] as const;

const RANGE = /^\d+\.\d–\d+\.\d$/;

let browser: Browser;
let phone: Phone;
let scoreByOld: string;
let scoreByNew: string;

beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
  await restoreBundles(phone.page, fileURLToPath(earlierVersion(1).bundleUrl));
  await phone.page.locator('[role="status"]', { hasText: 'Dipper 24' }).waitFor();
});
afterAll(() => browser.close());

/** The figures under the labels Score and the like on the Sheet. */
async function sheetFigures(page: Page): Promise<Record<string, string>> {
  await goTo(page, `#/${DIPPER}/sheet`);
  const figures = page.locator('#sheet-result .sheet-figures > div');
  await figures.first().waitFor();
  return Object.fromEntries(
    await figures.evaluateAll((all) =>
      all.map((one) => [one.querySelector('dt')?.textContent ?? '', one.querySelector('dd')?.textContent ?? '']),
    ),
  );
}

/** What the Bench shows of its score. */
async function scoreOnBench(page: Page): Promise<string> {
  await goTo(page, '#/');
  const card = page.locator('.bench-card', { hasText: 'Dipper 24' });
  return (await card.locator('.rule svg').getAttribute('aria-label')) ?? '';
}

const checklistOf = async (page: Page) =>
  storedValue(
    (await storedEntries(page)).filter(({ key }) => key[0] === DIPPER),
    'pack',
    'checklist',
  );

it('a pack begun on 1.0.0 opens graded by 1.0.0, and is offered 1.1.1 with both scores: 78 of 79 settled, and fewer of 85', async () => {
  const { page } = phone;
  const before = await sheetFigures(page);
  scoreByOld = before[sheetWords.figures.score] ?? '';
  expect(scoreByOld).toMatch(RANGE);
  expect(Object.keys(before)).not.toContain(say.sheetFigure(OLD));

  await goTo(page, `#/${DIPPER}`);
  await page.getByText(say.onBoard(OLD, NEW), { exact: true }).waitFor();
  await tapButton(page, say.look);
  const dialog = page.getByRole('dialog', { name: say.title(NEW) });
  await dialog.waitFor();
  const [byOld = '', byNew = ''] = await dialog.locator('p:has(strong)').allTextContents();
  expect(byOld).toContain(`${say.by(OLD)}: ${scoreByOld}`);
  expect(byOld).toContain(say.asked(78, 79));
  const [, shown = '', settled = ''] = /^By 1\.1\.1: (.+?\d)[A-Z].* · (\d+) of 85 settled$/.exec(byNew) ?? [];
  expect(Number(settled)).toBeLessThan(85);
  expect(shown).toMatch(RANGE);
  expect(shown).not.toBe(scoreByOld);
  scoreByNew = shown;
});

it('the offer has no fault by axe, is not pushed sideways at 320 px, and stays away when it is turned down', async () => {
  const { page } = phone;
  await page.setViewportSize({ width: 320, height: 568 });
  expect([...(await violations(page)), ...(await tooWide(page)), ...(await tooSmall(page))]).toEqual([]);
  await page.setViewportSize({ width: 390, height: 844 });
  await tapButton(page, say.stay(OLD));
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  expect(await checklistOf(page)).toMatchObject({ version: OLD });
});

it('carried over, the pack is graded by 1.1.1 after a reload too, and the Bench says so, and both scores stand on the Sheet', async () => {
  const { page } = phone;
  await tapButton(page, say.look);
  await tapButton(page, say.carry);
  await page.getByText(say.carried(OLD), { exact: true }).waitFor();
  await untilSaved(page, say.undo(NEW));
  expect(await checklistOf(page)).toMatchObject({ version: NEW });
  expect(await scoreOnBench(page)).toContain(scoreByNew);
  await goTo(page, `#/${DIPPER}`);
  await page.reload();
  await page.getByText(say.carried(OLD), { exact: true }).waitFor();
  expect(await button(page, say.look).count()).toBe(0);
  const figures = await sheetFigures(page);
  expect(figures[sheetWords.figures.score]).toBe(scoreByNew);
  expect(figures[say.sheetFigure(OLD)]).toBe(scoreByOld);
});

it('an older backup, restored once more, leaves it carried over and graded by 1.1.1', async () => {
  const { page } = phone;
  await restoreBundles(page, fileURLToPath(earlierVersion(1).bundleUrl));
  await page.locator('[role="status"]', { hasText: 'Dipper 24' }).waitFor();
  expect(await checklistOf(page)).toMatchObject({ version: NEW });
  expect(await scoreOnBench(page)).toContain(scoreByNew);
});

it('undone, it is graded by 1.0.0 as before, and offered again', async () => {
  const { page } = phone;
  await goTo(page, `#/${DIPPER}`);
  await tapButton(page, words.undo);
  await page.getByText(say.onBoard(OLD, NEW), { exact: true }).waitFor();
  expect(await checklistOf(page)).toMatchObject({ version: OLD });
  const figures = await sheetFigures(page);
  expect(figures[sheetWords.figures.score]).toBe(scoreByOld);
  expect(Object.keys(figures)).not.toContain(say.sheetFigure(OLD));
  expect(await scoreOnBench(page)).toContain(scoreByOld);
  await page.reload();
  expect((await sheetFigures(page))[sheetWords.figures.score]).toBe(scoreByOld);
  expect(phone.complaints).toEqual([]);
});
