import type { Browser, Page } from 'playwright-core';
import type { Item } from '../../src/schema/checklist.ts';
import { GRADES, type Grade } from '../../src/schema/grade.ts';
import { factWords } from '../../src/text/item.ts';
import { photoWords } from '../../src/text/photo-screens.ts';
import { storedEntries } from '../browser/driver/database.ts';
import { beginPack, makeSafe } from '../browser/driver/job.ts';
import { PHONE } from '../browser/driver/launch.ts';
import { photograph } from '../browser/driver/photo.ts';
import { expectTitle, goTo, untilSaved } from '../browser/driver/screen.ts';
import { builtIn } from '../checklists/built-in.ts';
import { bareTransactionMs } from './bare-transaction.ts';
import { nextSave, watchSaves } from './watch-saves.ts';

export interface TapTimes {
  /** What the record held in the end, read past the app. */
  itemCount: number;
  photoCount: number;
  /** Each item's first answer, while the record fills up. */
  firstMs: number[];
  /** Another answer on each item of the full record. */
  changedMs: number[];
  /** After each tap: one row written by the browser alone in the same page. */
  bareMs: number[];
}

/**
 * Fills a pack through the real screens, the photos first, then every item, then another answer on each; times every
 * tap from the finger's lifting to the mark that says saved, with the page's CPU slowed down `slowdown` times.
 */
export async function tapToSaved(
  browser: Browser,
  { slowdown, photoPaths }: { slowdown: number; photoPaths: string[] },
): Promise<TapTimes> {
  const context = await browser.newContext(PHONE);
  context.setDefaultTimeout(60_000);
  try {
    const page = await context.newPage();
    await watchSaves(page);
    const packId = await beginPack(page, { name: 'Grebe 24', nominalVoltageV: '25.6', cellsInSeries: '8' });
    const [covered = '', ...others] = photoPaths;
    await takePhotos(page, packId, others);
    await makeSafe(page, packId, covered);
    await answerFacts(page, packId);

    const cdp = await context.newCDPSession(page);
    await cdp.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
    const first = await tapEveryItem(page, packId, 0);
    const changed = await tapEveryItem(page, packId, 1);
    const entries = (await storedEntries(page)).filter(({ gone }) => !gone);
    return {
      itemCount: entries.filter(({ key }) => key[1] === 'answer').length,
      photoCount: entries.filter(({ key }) => key[1] === 'photo').length,
      firstMs: first.tapMs,
      changedMs: changed.tapMs,
      bareMs: [...first.bareMs, ...changed.bareMs],
    };
  } finally {
    await context.close();
  }
}

async function takePhotos(page: Page, packId: string, paths: string[]): Promise<void> {
  await goTo(page, `#/${packId}/photos`);
  await photograph(page, paths, { by: photoWords.add, from: photoWords.fromPhone });
  await page
    .locator('.thumb')
    .nth(paths.length - 1)
    .waitFor({ timeout: 120_000 });
}

/** The first choice each time: with it nearly every item applies. */
async function answerFacts(page: Page, packId: string): Promise<void> {
  for (const { id, ask, choices } of builtIn.facts) {
    await goTo(page, `#/${packId}/fact/${id}`);
    await expectTitle(page, ask);
    const text = choices[0]?.text ?? '';
    await page.getByRole('radio', { name: text, exact: true }).tap();
    await untilSaved(page, factWords.answered(ask, text));
  }
}

async function tapEveryItem(page: Page, packId: string, round: number) {
  const tapMs: number[] = [];
  const bareMs: number[] = [];
  for (const [place, item] of builtIn.items.entries()) {
    const grades = gradesOf(item);
    await goTo(page, `#/${packId}/item/${item.id}`);
    await expectTitle(page, item.ask);
    const grade = grades[(place + round) % grades.length] ?? 'sound';
    const { savedMs } = await nextSave(page, () => page.locator(`[data-grade="${grade}"]`).tap());
    tapMs.push(savedMs);
    bareMs.push(await bareTransactionMs(page));
  }
  return { tapMs, bareMs };
}

/** All grades that an item offers, so that the record has findings; but no stop, which would close Lid off. */
function gradesOf(item: Item): Grade[] {
  return GRADES.filter((grade) => item.grades[grade] !== undefined && !(item.stop && grade === 'failed'));
}
