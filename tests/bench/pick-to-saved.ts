import type { Browser } from 'playwright-core';
import { itemWords } from '../../src/text/item.ts';
import { photoWords } from '../../src/text/photo-screens.ts';
import { beginPack } from '../browser/driver/job.ts';
import { PHONE } from '../browser/driver/launch.ts';
import { openPhotoId, photograph } from '../browser/driver/photo.ts';
import { expectTitle, goTo } from '../browser/driver/screen.ts';
import type {} from '../browser/photographs/photo-page.ts';
import { builtIn } from '../checklists/built-in.ts';
import { nextSave, watchSaves } from './watch-saves.ts';

export interface PickTimes {
  /** From the file's being picked to its photo's being saved, in the app. */
  savedMs: number[];
  /** Decode, resize and encode by the browser alone, in turns with the app. */
  browserAloneMs: number[];
}

/**
 * Picks photographs one after the other on an item of the closed pack; the first warms both sides up and is not
 * counted. `photoPageUrl` is the page that does no more than the browser must.
 */
export async function pickToSaved(
  browser: Browser,
  { photoPageUrl, photoPaths }: { photoPageUrl: string; photoPaths: string[] },
): Promise<PickTimes> {
  const context = await browser.newContext(PHONE);
  context.setDefaultTimeout(60_000);
  const item = builtIn.items.find(({ state }) => state === 'arrival');
  if (item === undefined) throw new Error('pickToSaved: the checklist asks nothing on Arrival');
  try {
    const bare = await context.newPage();
    await bare.goto(photoPageUrl);
    const page = await context.newPage();
    await watchSaves(page);
    const packId = await beginPack(page, { name: 'Grebe 24' });
    const savedMs: number[] = [];
    const browserAloneMs: number[] = [];
    for (const path of photoPaths) {
      await page.bringToFront();
      await goTo(page, `#/${packId}/item/${item.id}`);
      await expectTitle(page, item.ask);
      const save = await nextSave(page, () =>
        photograph(page, path, { by: itemWords.photo, from: photoWords.fromPhone }),
      );
      savedMs.push(save.savedMs);
      await openPhotoId(page);
      await bare.bringToFront();
      await bare.setInputFiles('#pick', path);
      browserAloneMs.push(await bare.evaluate(async () => (await photoPage.timeBrowserAlone()).tookMs));
    }
    return { savedMs: savedMs.slice(1), browserAloneMs: browserAloneMs.slice(1) };
  } finally {
    await context.close();
  }
}
