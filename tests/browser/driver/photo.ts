import type { Page } from 'playwright-core';
import { calloutWords } from '../../../src/text/callouts.ts';
import { itemWords } from '../../../src/text/item.ts';
import { photoWords } from '../../../src/text/photo-screens.ts';
import { words } from '../../../src/text/words.ts';
import { tapButton } from './screen.ts';

/** Opens the tray by the button `by` and hands a file over as the camera, or the phone's gallery, would. */
export async function photograph(
  page: Page,
  paths: string | string[],
  { by, from = photoWords.camera }: { by: string; from?: string },
): Promise<void> {
  await tapButton(page, by);
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), tapButton(page, from)]);
  await chooser.setFiles(paths);
}

/** On an item's screen: photographs it, waits until the photo lies open to be drawn on and is called saved. */
export async function photographItem(page: Page, path: string, from = photoWords.camera): Promise<string> {
  await photograph(page, path, { by: itemWords.photo, from });
  return openPhotoId(page);
}

/** The photo that lies open to be drawn on. */
export async function openPhotoId(page: Page): Promise<string> {
  await page.waitForURL(/\/photo\/[0-9a-f]{64}/);
  await untilCalloutsSaved(page);
  await page.locator('.callout-plane > img').waitFor();
  return /\/photo\/([0-9a-f]{64})/.exec(page.url())?.[1] ?? '';
}

export async function untilCalloutsSaved(page: Page): Promise<void> {
  await page.getByRole('region', { name: calloutWords.editor }).getByText(`✓ ${words.saved}`).waitFor();
}

export async function leaveCallouts(page: Page): Promise<void> {
  await tapButton(page, calloutWords.done);
}
