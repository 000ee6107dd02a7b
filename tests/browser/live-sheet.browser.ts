import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { benchWords } from '../../src/text/bench.ts';
import { editingWords } from '../../src/text/live-tests/editing.ts';
import { leadWords } from '../../src/text/live-tests/lead.ts';
import { costWords } from '../../src/text/live-tests/results/cost.ts';
import { deliveredResultWords } from '../../src/text/live-tests/results/delivered.ts';
import { fuseWords } from '../../src/text/live-tests/results/fuse.ts';
import { runPlotWords } from '../../src/text/live-tests/results/run.ts';
import { runEndSentences, runWords } from '../../src/text/live-tests/run.ts';
import { tripWords } from '../../src/text/live-tests/trip.ts';
import { logWords } from '../../src/text/logs/log.ts';
import { mappingWords } from '../../src/text/logs/mapping.ts';
import { sheetWords } from '../../src/text/sheet.ts';
import { readPdf } from '../sheet/read-pdf.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { beginTest, pickOne, typeIn } from './driver/fill.ts';
import { beginPack, packIdOn } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { madeRunLog } from './driver/made-run-log.ts';
import { hasSignal, loseSignal } from './driver/offline.ts';
import { emptyPhone, type Phone, strangers } from './driver/phone.ts';
import { savePdf } from './driver/save.ts';
import { button, expectTitle, goTo, tapButton, untilSaved } from './driver/screen.ts';

const roll = cameraRoll();
let browser: Browser;
let phone: Phone;

beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
});
afterAll(() => browser.close());

const plain = (text: string | null) => (text ?? '').normalize('NFKC').replace(/\s+/g, ' ');

/** The live tests on the Sheet of a pack; ends on it. */
async function testsOnSheet(page: Page, packId: string) {
  await goTo(page, `#/${packId}/sheet`);
  const section = page.locator('#sheet-tests');
  await section.getByRole('heading', { name: sheetWords.sections.tests }).waitFor();
  return section;
}

/** One result of the live tests: its figure and its rows. */
async function result(page: Page, packId: string, title: string): Promise<string> {
  const section = await testsOnSheet(page, packId);
  return plain(await section.getByRole('region', { name: title, exact: true }).first().textContent());
}

async function pdfText(page: Page, packId: string): Promise<string> {
  return (await readPdf((await savePdf(page, packId)).bytes.buffer)).text;
}

it('works without a signal from the first reload on', async () => {
  await loseSignal(phone);
  expect(await hasSignal(phone.page)).toBe(false);
});

it('a log of 100 Ah that does not say how full it began is "at least 100 Ah" on the Sheet and in the PDF, with no cost', async () => {
  const { page } = phone;
  const packId = await beginPack(page, {
    name: 'Grebe 12',
    nominalVoltageV: '12.8',
    ratedCapacityAh: '100',
    cellsInSeries: '4',
    price: '400',
    currency: 'EUR',
  });
  await goTo(page, `#/${packId}/live-test/log`);
  const path = roll.put('bench-run.csv', new TextEncoder().encode(madeRunLog()));
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), tapButton(page, logWords.pick)]);
  await chooser.setFiles(path);
  await page.getByText(mappingWords.change).tap();
  await page.getByLabel(mappingWords.timeFormat).selectOption('minutes');
  await page
    .locator('.found .title')
    .getByText(/100\sAh/)
    .waitFor();
  await tapButton(page, logWords.keep(1));
  await expectTitle(page, runWords.title);
  await untilSaved(page, logWords.kept('bench-run.csv', 1));

  expect(await result(page, packId, deliveredResultWords.title)).toContain('at least 100 Ah');
  const cost = await result(page, packId, costWords.title);
  expect(cost).toContain(costWords.none);
  expect(cost).toContain(costWords.missing.run);
  const text = await pdfText(page, packId);
  expect(text).toContain('at least 100 Ah');
  expect(text).toContain(costWords.missing.run);
});

it('400 for a complete run of 292.2 Ah is 106.95 per kWh on nominal voltage; 100 A and AWG 2 leads at 105 °C ask for a 125 A fuse', async () => {
  const { page } = phone;
  const packId = await beginPack(page, {
    name: 'Heron 12',
    nominalVoltageV: '12.8',
    ratedCapacityAh: '300',
    cellsInSeries: '4',
    continuousCurrentA: '100',
    chargeVoltageV: '14.6',
    price: '400',
    currency: 'EUR',
  });
  await beginTest(page, packId, { part: 'run', one: runWords.one });
  const { labels } = runWords;
  await typeIn(page, labels.chargeAh, '292.2');
  await typeIn(page, labels.currentA, '60');
  await pickOne(page, runEndSentences.lowVoltage);
  await typeIn(page, labels.chargedToV, '14.6');
  await typeIn(page, labels.taperA, '3');
  await typeIn(page, labels.restMin, '60');
  await untilSaved(page, editingWords.changed(runWords.one, labels.restMin));
  await beginTest(page, packId, { part: 'trip', one: tripWords.one });
  await typeIn(page, tripWords.labels.currentA, '220');
  await typeIn(page, tripWords.labels.heldForS, '4');
  await pickOne(page, tripWords.opened);
  await beginTest(page, packId, { part: 'lead', one: leadWords.one });
  await pickOne(page, leadWords.places.main);
  await pickOne(page, leadWords.forms.cable);
  await pickOne(page, leadWords.ways.printed);
  await typeIn(page, leadWords.labels.printedAwg, '2');
  await pickOne(page, leadWords.metals.copper);
  await typeIn(page, leadWords.labels.insulationDegC, '105');
  await untilSaved(page, editingWords.changed(leadWords.one, leadWords.labels.insulationDegC));

  // 400 ÷ (292.2 Ah × 12.8 V) = 106.95 per kWh.
  const cost = await result(page, packId, costWords.title);
  expect(cost).toContain('EUR 106.95 per kWh');
  expect(cost).toContain(costWords.nominalMark);
  // 1.25 × 100 A (NEC 210.20(A)); 33 CFR 183.425 allows AWG 2 at 105 °C 210 A, 183.455 a fuse of 150 % of it.
  const fuse = await result(page, packId, fuseWords.title);
  expect(fuse).toContain(plain(fuseWords.fits('125 A', '14.6 V')));
  expect(fuse).toContain(`${fuseWords.labels.most}315 A`);
  const text = await pdfText(page, packId);
  expect(text).toContain('EUR 106.95 per kWh');
  expect(text).toContain(costWords.nominal);
  expect(text).toContain(plain(fuseWords.fits('125 A', '14.6 V')));
  expect(text).toContain('opened after 4 s');
});

it('every plot of the demo bench on the Sheet is a picture with its own text, and the PDF has its caption', async () => {
  const { page } = phone;
  await goTo(page, '#/');
  await tapButton(page, benchWords.demoIn);
  await button(page, benchWords.demoOut).waitFor({ timeout: 20_000 });
  await page.locator('.bench-card', { hasText: 'Dipper' }).tap();
  await page.locator('.line').first().waitFor();
  const packId = packIdOn(page);
  const section = await testsOnSheet(page, packId);
  const plots = section.locator('.sheet-plot > svg');
  const told = await plots.evaluateAll((all) =>
    all.map((svg) => ({ role: svg.getAttribute('role'), text: svg.getAttribute('aria-label') ?? '' })),
  );
  // Delivered, runs by time and by charge, trips, cell voltages and resistances.
  expect(told.length).toBe(6);
  expect(told.map(({ role }) => role)).toEqual(told.map(() => 'img'));
  expect(new Set(told.map(({ text }) => text)).size).toBe(6);
  const alts = plain(told.map(({ text }) => text).join('\n'));
  expect(alts).toContain(runPlotWords.byTime.both);
  // As the trips were typed.
  expect(alts).toContain('155 A: opened after 8.5 s');
  for (const { text } of told) expect(text.length).toBeGreaterThan(40);

  // 519 over the energy of the gentle run, which the result shows among what goes into it.
  const cost = await result(page, packId, costWords.title);
  const [, perKwh = ''] = /EUR ([\d.]+) per kWh/.exec(cost) ?? [];
  const [, energyWh = ''] = new RegExp(`${costWords.inputs.energy}(\\d+) Wh`).exec(cost) ?? [];
  expect((Number(perKwh) * Number(energyWh)) / 1000 / 519).toBeCloseTo(1, 3);

  const text = await pdfText(page, packId);
  expect(text).toContain(`EUR ${perKwh} per kWh`);
  expect(text).toContain(costWords.measured);
  expect(text).toContain(fuseWords.title);
  const captions = await section.locator('.sheet-plot figcaption').allTextContents();
  expect(captions.length).toBe(6);
  for (const caption of captions) expect(text).toContain(plain(caption));
});

it('asked no other host for anything, and nothing was refused by the policy', async () => {
  expect(await hasSignal(phone.page)).toBe(false);
  expect(phone.requests.length).toBeGreaterThan(20);
  expect(strangers(phone)).toEqual([]);
  expect(phone.complaints).toEqual([]);
});
