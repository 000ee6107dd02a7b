import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { keepWords } from '../../../src/text/keep.ts';
import { sheetScreenWords } from '../../../src/text/sheet-screen.ts';
import { goTo, tapButton } from './screen.ts';

export interface SavedFile {
  name: string;
  path: string;
  bytes: Uint8Array<ArrayBuffer>;
}

/** Writes the PDF of a pack's sheet and saves it. */
export async function savePdf(page: Page, packId: string): Promise<SavedFile> {
  await goTo(page, `#/${packId}/sheet`);
  await tapButton(page, sheetScreenWords.pdf(sheetScreenWords.papers.a4));
  return saved(page, sheetScreenWords.save);
}

/** Saves everything as one bundle, as a phone does whose browser has no save picker. */
export async function saveBundle(page: Page): Promise<SavedFile> {
  await goTo(page, '#/keep');
  await page.evaluate(() => Reflect.set(globalThis, 'showSaveFilePicker', undefined));
  await tapButton(page, keepWords.save);
  return saved(page, /^Save underlid-.*\.zip$/);
}

/** Hands bundles over to be restored; what the phone says of them is for the caller to wait for. */
export async function restoreBundles(page: Page, ...paths: string[]): Promise<void> {
  await goTo(page, '#/keep');
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), tapButton(page, keepWords.choose)]);
  await chooser.setFiles(paths);
}

/** Taps what saves a file, and reads the file. */
export async function saved(page: Page, name: string | RegExp): Promise<SavedFile> {
  const download = page.waitForEvent('download');
  const save = page.getByRole('button', { name, exact: true });
  await save.waitFor({ timeout: 60_000 });
  await save.tap();
  const file = await download;
  const path = await file.path();
  return { name: file.suggestedFilename(), path, bytes: new Uint8Array(await readFile(path)) };
}
