import type { Page } from 'playwright-core';
import { editingWords } from '../../../src/text/live-tests/editing.ts';
import { expectTitle, goTo, tapButton } from './screen.ts';

/** Begins a live test of a kind; ends on its empty screen. */
export async function beginTest(page: Page, packId: string, kind: { part: string; one: string }): Promise<void> {
  await goTo(page, `#/${packId}/live-test/${kind.part}`);
  await tapButton(page, editingWords.add(kind.one));
  await expectTitle(page, editingWords.newOne(kind.one));
}

/** Types into a box and leaves it. */
export async function typeIn(page: Page, label: string, text: string): Promise<void> {
  const box = page.getByLabel(label, { exact: true });
  await box.fill(text);
  await box.blur();
}

/** Taps one of several choices by its words. */
export async function pickOne(page: Page, text: string): Promise<void> {
  await page.getByRole('radio', { name: text, exact: true }).tap();
}
