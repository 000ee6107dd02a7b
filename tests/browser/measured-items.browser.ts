import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { itemWords } from '../../src/text/item.ts';
import { editingWords } from '../../src/text/live-tests/editing.ts';
import { tripWords } from '../../src/text/live-tests/trip.ts';
import { measuredWords as say } from '../../src/text/measured.ts';
import { sheetWords } from '../../src/text/sheet.ts';
import { builtInItem } from '../checklists/built-in.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { storedEntries, storedValue } from './driver/database.ts';
import { beginTest, pickOne, typeIn } from './driver/fill.ts';
import { beginPack, makeSafe, savedAs } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { emptyPhone, type Phone } from './driver/phone.ts';
import { goTo, tapButton, tapLink, untilSaved } from './driver/screen.ts';

const REASON = say.overruleReasons[0] ?? '';
const roll = cameraRoll();
let browser: Browser;
let phone: Phone;
let packId: string;

beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
  packId = await beginPack(phone.page, {
    name: 'Grebe 12',
    nominalVoltageV: '12.8',
    ratedCapacityAh: '100',
    // 10 % above what four cells of 100 Ah at 3.2 V hold: 1280 Wh.
    ratedEnergyWh: '1408',
    cellsInSeries: '4',
    continuousCurrentA: '100',
    peakCurrentA: '250',
  });
  await makeSafe(phone.page, packId, roll.shot('covered.jpg'));
});
afterAll(() => browser.close());

const item = (page: Page, itemId: string) => goTo(page, `#/${packId}/item/${itemId}`);
const status = (page: Page, title: string) => page.getByRole('region', { name: title }).getByRole('status');
const chosen = (page: Page) => page.locator('[role="radio"][data-grade][aria-checked="true"]');
const answerOf = async (page: Page, itemId: string) => storedValue(await storedEntries(page), 'answer', itemId);

/** The line of an item among every answer of the Sheet, blanks that do not break made plain. */
async function onSheet(page: Page, itemId: string): Promise<string> {
  await goTo(page, `#/${packId}/sheet`);
  const row = page.locator('.sheet-answers > li').filter({ hasText: builtInItem(itemId).title });
  return ((await row.textContent()) ?? '').replace(/\u00a0/g, ' ');
}

it('a trip at 220 A that opened after 4 s, 2.2 times the claim, grades the cutoff sound, and the Sheet says as measured', async () => {
  const { page } = phone;
  await item(page, 'overcurrent-cutoff');
  expect(await status(page, say.fromTests).textContent()).toBe(say.notTested);
  await tapLink(page, say.openTests);
  await beginTest(page, packId, { part: 'trip', one: tripWords.one });
  await typeIn(page, tripWords.labels.currentA, '220');
  await typeIn(page, tripWords.labels.heldForS, '4');
  await pickOne(page, tripWords.opened);
  await untilSaved(page, editingWords.changed(tripWords.one, tripWords.labels.opened));
  await item(page, 'overcurrent-cutoff');
  await status(page, say.fromTests).getByText('Opened after 4\u00a0s: sound.', { exact: true }).waitFor();
  expect(await chosen(page).getAttribute('data-grade')).toBe('sound');
  expect(await answerOf(page, 'overcurrent-cutoff')).toBeUndefined();
  expect(await onSheet(page, 'overcurrent-cutoff')).toContain(`sound · ${say.asMeasured} · opened after 4 s`);
});

it('overruled with a reason it is failed; the screen and the Sheet say both, and it is measured again once cleared', async () => {
  const { page } = phone;
  await item(page, 'overcurrent-cutoff');
  await page.locator('[data-grade="failed"]').tap();
  await page.getByRole('dialog', { name: say.overruleTitle }).waitFor();
  expect(await answerOf(page, 'overcurrent-cutoff')).toBeUndefined();
  await tapButton(page, REASON);
  await untilSaved(page, savedAs('overcurrent-cutoff', 'failed'));
  const both = `Opened after 4\u00a0s: sound. ${say.overruled(REASON)}`;
  await status(page, say.fromTests).getByText(both, { exact: true }).waitFor();
  expect(await chosen(page).getAttribute('data-grade')).toBe('failed');

  const because = say.overruledBecause(['sound'], REASON);
  expect(await onSheet(page, 'overcurrent-cutoff')).toContain(`failed · ${because} · opened after 4 s`);
  const { title } = builtInItem('overcurrent-cutoff');
  await page.locator('.sheet-finding h3', { hasText: `${title}: failed` }).waitFor();
  await page.locator('#sheet-open').getByRole('heading', { name: sheetWords.open.overruled }).waitFor();

  await item(page, 'overcurrent-cutoff');
  await tapButton(page, itemWords.whyItMatters);
  await tapButton(page, itemWords.clear);
  await status(page, say.fromTests).getByText('Opened after 4\u00a0s: sound.', { exact: true }).waitFor();
  expect(await chosen(page).getAttribute('data-grade')).toBe('sound');
});

it('a gap of 3.5 mm over the vents is weak; 2000 mm is out of reach and changes nothing; emptied, it is open again', async () => {
  const { page } = phone;
  await item(page, 'vent-headroom');
  expect(await status(page, say.title).textContent()).toBe(say.notYet);
  const box = page.getByLabel('Least gap', { exact: true });
  await typeIn(page, 'Least gap', '3,5');
  await untilSaved(page, `${builtInItem('vent-headroom').title}: ${say.title}`);
  await status(page, say.title).getByText('3.5\u00a0mm: weak.', { exact: true }).waitFor();
  expect(await chosen(page).getAttribute('data-grade')).toBe('weak');
  expect(await onSheet(page, 'vent-headroom')).toContain(`weak · ${say.asMeasured} · 3.5 mm`);

  await item(page, 'vent-headroom');
  await typeIn(page, 'Least gap', '2000');
  await page.getByText(say.outOfReach(0, 1000), { exact: true }).waitFor();
  await goTo(page, `#/${packId}/lid-off`);
  await item(page, 'vent-headroom');
  await page.getByText(say.outOfReach(0, 1000), { exact: true }).waitFor();
  expect(await box.inputValue()).toBe('2000');
  expect(await answerOf(page, 'vent-headroom')).toMatchObject({ kind: 'readings', values: { gap: 3.5 } });

  await typeIn(page, 'Least gap', '');
  await status(page, say.title).getByText(say.notYet, { exact: true }).waitFor();
  await expect.poll(() => answerOf(page, 'vent-headroom')).toBeUndefined();
  expect(await chosen(page).count()).toBe(0);
});

it('100 Ah on a cell is no grade until 4 cells are counted: then 1408 Wh are 10 % above 1280 Wh, weak', async () => {
  const { page } = phone;
  await item(page, 'energy-claim');
  await typeIn(page, 'Printed on one cell', '100');
  await untilSaved(page, `${builtInItem('energy-claim').title}: ${say.title}`);
  expect(await status(page, say.title).textContent()).toBe(say.notYet);
  expect(await chosen(page).count()).toBe(0);
  await typeIn(page, 'Cells in the pack', '4');
  await status(page, say.title).getByText('10\u00a0%: weak.', { exact: true }).waitFor();
  expect(await chosen(page).getAttribute('data-grade')).toBe('weak');
  expect(phone.complaints).toEqual([]);
});
