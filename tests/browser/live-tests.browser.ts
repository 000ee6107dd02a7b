import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { fieldWords } from '../../src/text/fields.ts';
import { cutOffWords } from '../../src/text/live-tests/cut-off.ts';
import { drainWords } from '../../src/text/live-tests/drain.ts';
import { editingWords as say } from '../../src/text/live-tests/editing.ts';
import { instrumentWords } from '../../src/text/live-tests/instrument.ts';
import { leadWords } from '../../src/text/live-tests/lead.ts';
import { liveTestsWords } from '../../src/text/live-tests/live-tests.ts';
import { resistanceWords } from '../../src/text/live-tests/resistance.ts';
import { SENSOR_CAUTIONS, sensorWords } from '../../src/text/live-tests/sensor.ts';
import { tripWords } from '../../src/text/live-tests/trip.ts';
import { stopWords } from '../../src/text/stop.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { beginTest, pickOne, typeIn } from './driver/fill.ts';
import { beginPack, goLive, makeSafe } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { emptyPhone, type Phone } from './driver/phone.ts';
import { button, expectTitle, goTo, tapButton, tapLink, untilSaved } from './driver/screen.ts';

const roll = cameraRoll();
let browser: Browser;
let phone: Phone;
let packId: string;

beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
});
beforeEach(async () => {
  packId = await beginPack(phone.page, { name: 'Grebe 24', continuousCurrentA: '100', peakCurrentA: '200' });
});
afterEach(() => expect(phone.complaints).toEqual([]));
afterAll(() => browser.close());

/** In a list of tests: results beneath it say the same again. */
const listed = (page: Page, text: string) => page.locator('.lines').getByText(text, { exact: true });

async function typeTrip(page: Page): Promise<void> {
  await beginTest(page, packId, { part: 'trip', one: tripWords.one });
  await typeIn(page, tripWords.labels.currentA, '220');
  await typeIn(page, tripWords.labels.heldForS, '4');
  await pickOne(page, tripWords.opened);
  await untilSaved(page, say.changed(tripWords.one, tripWords.labels.opened));
}

it('a trip, an instrument and a cut-off are there after a reload, with their day', async () => {
  const { page } = phone;
  await typeTrip(page);
  await pickOne(page, say.addInstrument);
  await page.getByLabel(say.instrumentName).fill('Clamp meter');
  await tapButton(page, say.keepInstrument);
  await untilSaved(page, say.changed(tripWords.one, say.standard.instrumentId));
  await beginTest(page, packId, { part: 'cut-off', one: cutOffWords.one });
  await pickOne(page, cutOffWords.kinds.highVoltage);
  await pickOne(page, cutOffWords.acted);
  await typeIn(page, cutOffWords.highestCell, '3,71');
  await untilSaved(page, say.changed(cutOffWords.one, cutOffWords.labels.worstCellVoltageV));

  await goTo(page, `#/${packId}/live-tests`);
  await page.reload();
  const line = (title: string) => page.locator('.line', { hasText: title });
  await line(tripWords.title).getByText('220\u00a0A: opened after 4\u00a0s', { exact: true }).waitFor();
  await line(cutOffWords.title).getByText('High voltage: cut off at 3.71\u00a0V', { exact: true }).waitFor();
  await line(instrumentWords.title).getByText(`Clamp meter: ${instrumentWords.noAccuracy}`, { exact: true }).waitFor();
  await line(tripWords.title).tap();
  await page
    .locator('.line', { hasText: 'Clamp meter' })
    .filter({ hasText: /20\d\d/ })
    .tap();
  await expectTitle(page, say.numbered(tripWords.one, 1));
  expect(await page.getByLabel(tripWords.labels.currentA, { exact: true }).inputValue()).toBe('220');
  expect(await page.getByRole('radio', { name: tripWords.opened }).getAttribute('aria-checked')).toBe('true');
  expect(await page.getByRole('radio', { name: 'Clamp meter' }).getAttribute('aria-checked')).toBe('true');
});

it('a deleted trip is back after Undo, with every figure', async () => {
  const { page } = phone;
  await typeTrip(page);
  await tapButton(page, say.delete);
  await expectTitle(page, tripWords.title);
  await page.getByText(say.none, { exact: true }).waitFor();
  await tapButton(page, 'Undo');
  await listed(page, '220\u00a0A: opened after 4\u00a0s').waitFor();
  await page.reload();
  await listed(page, '220\u00a0A: opened after 4\u00a0s').waitFor();
});

it('a trip that lacks what makes it one says so, outlives a reload, and is stored once it is complete', async () => {
  const { page } = phone;
  await beginTest(page, packId, { part: 'trip', one: tripWords.one });
  await typeIn(page, tripWords.labels.currentA, '220');
  const still = say.stillMissing([tripWords.labels.heldForS, tripWords.labels.opened].join(', '));
  await page.getByText(still, { exact: true }).waitFor();
  await page.getByText(tripWords.abovePeak('220\u00a0A', '200\u00a0A'), { exact: true }).waitFor();
  await page.reload();
  await page.getByText(still, { exact: true }).waitFor();
  await tapLink(page, say.done);
  await page.locator('.line', { hasText: '220' }).filter({ hasText: say.unfinished }).tap();
  await typeIn(page, tripWords.labels.heldForS, '4');
  await pickOne(page, tripWords.notOpened);
  await untilSaved(page, say.changed(tripWords.one, tripWords.labels.opened));
  await tapLink(page, say.done);
  await listed(page, '220\u00a0A: carried for 4\u00a0s, did not open').waitFor();
  expect(await page.getByText(say.unfinished, { exact: true }).count()).toBe(0);
});

it('what cannot be kept stays in its box with a sentence, and what was stored before stays stored', async () => {
  const { page } = phone;
  await beginTest(page, packId, { part: 'drain', one: drainWords.one });
  await typeIn(page, drainWords.labels.currentMa, '12');
  await untilSaved(page, say.changed(drainWords.one, drainWords.labels.currentMa));
  const box = page.getByLabel(drainWords.labels.currentMa, { exact: true });
  await box.fill('');
  await box.blur();
  await page.getByText(fieldWords.stillNeeded, { exact: true }).waitFor();
  await box.fill('12 or so');
  await box.blur();
  await page.getByText(fieldWords.notANumber('12 or so'), { exact: true }).waitFor();
  expect(await box.inputValue()).toBe('12 or so');
  await tapLink(page, say.done);
  await listed(page, '12\u00a0mA').waitFor();

  await beginTest(page, packId, { part: 'lead', one: leadWords.one });
  await pickOne(page, leadWords.places.main);
  await pickOne(page, leadWords.forms.cable);
  await pickOne(page, leadWords.ways.printed);
  await typeIn(page, leadWords.labels.printedAwg, 'AWG 99');
  await page.getByText(leadWords.awgWrong, { exact: true }).waitFor();
  await typeIn(page, leadWords.labels.printedAwg, 'AWG 00');
  await untilSaved(page, say.changed(leadWords.one, leadWords.labels.printedAwg));
  await tapLink(page, say.done);
  await listed(page, `${leadWords.places.main} · ${leadWords.awg('2/0')}`).waitFor();
});

it('two figures typed one straight after the other are both kept', async () => {
  const { page } = phone;
  await beginTest(page, packId, { part: 'resistance', one: resistanceWords.one });
  await pickOne(page, resistanceWords.methods.pulse);
  await pickOne(page, resistanceWords.of.pack);
  for (const [label, text] of [
    [resistanceWords.beforeA, '0'],
    [resistanceWords.beforeV, '26.40'],
    [resistanceWords.pulseA, '50'],
    [resistanceWords.pulseV, '26.05'],
  ] as const) {
    await page.getByLabel(label, { exact: true }).fill(text);
  }
  await tapLink(page, say.done);
  await page.locator('.line', { hasText: '0\u00a0A to 50\u00a0A' }).tap();
  expect(await page.getByLabel(resistanceWords.beforeV, { exact: true }).inputValue()).toBe('26.4');
  expect(await page.getByLabel(resistanceWords.pulseV, { exact: true }).inputValue()).toBe('26.05');
});

it('a failed stop item shuts the station; what was typed can still be corrected, what was run earlier still written down', async () => {
  const { page } = phone;
  await typeTrip(page);
  await goTo(page, `#/${packId}/item/case-damage`);
  await page.locator('[data-grade="failed"]').tap();
  await page.getByRole('dialog').waitFor();
  await goTo(page, `#/${packId}/live-tests`);
  await expectTitle(page, stopWords.title);
  await page.getByRole('heading', { name: liveTestsWords.correct }).waitFor();
  await page.locator('.line', { hasText: tripWords.title }).tap();
  await page.getByText(say.stopped, { exact: true }).waitFor();
  expect(await button(page, say.add(tripWords.one)).count()).toBe(0);
  await button(page, say.addEarlier(tripWords.one)).waitFor();
  await page.locator('.line', { hasText: '220' }).tap();
  await typeIn(page, tripWords.labels.heldForS, '5');
  await untilSaved(page, say.changed(tripWords.one, tripWords.labels.heldForS));
  expect(await button(page, say.another).count()).toBe(0);
});

it('hot and cold stand behind Make safe, the live and open state, and seven cautions', async () => {
  const { page } = phone;
  await makeSafe(page, packId, roll.shot('covered.jpg'));
  await goTo(page, `#/${packId}/live-test/sensor`);
  await page.getByText(sensorWords.onlyLive, { exact: true }).waitFor();
  await goLive(page, packId);
  await page.locator('.line', { hasText: sensorWords.title }).tap();
  await expectTitle(page, sensorWords.gateTitle);
  await button(page, sensorWords.gatePass).tap({ force: true });
  await page.getByRole('alert').getByText(sensorWords.gateMissing(7), { exact: true }).waitFor();
  expect(SENSOR_CAUTIONS).toHaveLength(7);
  for (const { text } of SENSOR_CAUTIONS) await page.getByRole('checkbox', { name: text }).tap();
  await tapButton(page, sensorWords.gatePass);
  await expectTitle(page, sensorWords.title);
  await tapButton(page, say.add(sensorWords.one));
  await pickOne(page, cutOffWords.kinds.coldCharge);
  await pickOne(page, sensorWords.notActed);
  await typeIn(page, sensorWords.reached, '-12');
  await page.getByText(cutOffWords.pastSensor('\u221212\u00a0°C', '\u221210\u00a0°C'), { exact: true }).waitFor();
  await tapLink(page, say.done);
  await listed(page, 'Cold, charging: did not cut off, reached \u221212\u00a0°C').waitFor();
  await goTo(page, `#/${packId}/live-tests`);
  expect(await page.locator('.line', { hasText: sensorWords.title }).count()).toBe(0);
});
