import type { Page } from 'playwright-core';
import type { Grade } from '../../../src/schema/grade.ts';
import type { NameplateField } from '../../../src/schema/nameplate.ts';
import { benchWords, packWords } from '../../../src/text/bench.ts';
import { GRADE_WORDS } from '../../../src/text/grades.ts';
import { itemWords, lidOffWords } from '../../../src/text/item.ts';
import { CAUTIONS, makeSafeWords } from '../../../src/text/make-safe.ts';
import { nameplateWords } from '../../../src/text/nameplate.ts';
import { builtIn, builtInItem } from '../../checklists/built-in.ts';
import { photograph } from './photo.ts';
import { button, expectTitle, goTo, tapButton, untilSaved } from './screen.ts';

/** Begins a pack from the Bench and fills in fields of its Nameplate. Returns the pack's id; ends on the Nameplate. */
export async function beginPack(page: Page, fields: Partial<Record<NameplateField, string>> = {}): Promise<string> {
  await goTo(page, '#/');
  await tapButton(page, benchWords.newPack);
  await page.waitForURL(/#\/[0-9a-f]{32}\/nameplate$/);
  for (const [field, value] of Object.entries(fields) as [NameplateField, string][]) {
    const label = nameplateWords.labels[field];
    const box = page.getByLabel(label, { exact: true });
    await box.fill(value);
    await box.blur();
    await untilSaved(page, label);
  }
  return packIdOn(page);
}

export function packIdOn(page: Page): string {
  const packId = /#\/([0-9a-f]{32})/.exec(page.url())?.[1];
  if (packId === undefined) throw new Error(`packIdOn: no pack in ${page.url()}`);
  return packId;
}

export async function chooseShortRoute(page: Page): Promise<void> {
  const count = builtIn.items.filter(({ route }) => route === 'short').length;
  await page.getByRole('radio', { name: packWords.shortRoute(count) }).tap();
  await untilSaved(page, packWords.route);
}

/** On an item's screen: chooses a sentence and waits until it is called saved. */
export async function choose(page: Page, grade: Grade, itemId: string): Promise<void> {
  await page.locator(`[data-grade="${grade}"]`).tap();
  await untilSaved(page, savedAs(itemId, grade));
}

/** What the screen says of an answer once it is saved. */
export function savedAs(itemId: string, grade: Grade): string {
  return `${builtInItem(itemId).title}: ${GRADE_WORDS[grade]}`;
}

export async function answer(page: Page, place: { packId: string; itemId: string }, grade: Grade): Promise<void> {
  await goTo(page, `#/${place.packId}/item/${place.itemId}`);
  await choose(page, grade, place.itemId);
}

/** On an item's screen. */
export async function writeNote(page: Page, itemId: string, note: string): Promise<void> {
  await tapButton(page, itemWords.note);
  await page.getByLabel(itemWords.noteHint).fill(note);
  await tapButton(page, itemWords.keepNote);
  await untilSaved(page, `${builtInItem(itemId).title}: ${itemWords.note}`);
}

/** Fills the gate in and passes it; ends on Lid off. */
export async function makeSafe(page: Page, packId: string, photoPath: string): Promise<void> {
  const say = makeSafeWords;
  await goTo(page, `#/${packId}/make-safe`);
  await expectTitle(page, say.title);
  await page.getByLabel(say.voltage, { exact: true }).fill('26.4');
  await page.getByLabel(say.voltage, { exact: true }).blur();
  await page.getByRole('radio', { name: say.chargeStates.low }).tap();
  await page.getByRole('radio', { name: say.companies['second-person'] }).tap();
  await photograph(page, photoPath, { by: say.photoTake });
  await button(page, say.photoAgain).waitFor();
  for (const { text } of CAUTIONS.filter(({ above50V }) => !above50V)) {
    await page.getByRole('checkbox', { name: text }).tap();
  }
  await tapButton(page, say.pass);
  await expectTitle(page, lidOffWords.title);
}

/** Leaves the first state of Lid off behind, whatever it still asks; ends on Lid off, live and open. */
export async function goLive(page: Page, packId: string): Promise<void> {
  await goTo(page, `#/${packId}/before`);
  await page.locator('.dock .button').last().tap();
  await expectTitle(page, lidOffWords.title);
}
