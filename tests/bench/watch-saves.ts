import type { Page } from 'playwright-core';
import { words } from '../../src/text/words.ts';

/** One change as the page saw it, in ms from the finger's lifting or the file's being picked. */
export interface SeenSave {
  /** Until the screen showed it as chosen or as on its way: the word "saving". */
  savingMs: number;
  /** Until the transaction had completed: the word "saved" after "saving". */
  savedMs: number;
}

interface Watch {
  seen: SeenSave[];
}

declare global {
  var saveWatch: Watch;
}

/**
 * Makes every page of this one watch its saved mark: a change counts only once the mark has said "saving" after the
 * event and then "saved" again, so an older "saved" is never taken for it. Call before the page is opened.
 */
export async function watchSaves(page: Page): Promise<void> {
  await page.addInitScript(installWatch, { saved: `✓ ${words.saved}`, saving: words.saving });
}

/** The next change seen since the last call; `doIt` is what causes it. */
export async function nextSave(page: Page, doIt: () => Promise<void>): Promise<SeenSave> {
  await page.evaluate(() => {
    saveWatch.seen = [];
  });
  await doIt();
  await page.waitForFunction(() => saveWatch.seen.length > 0);
  const seen = await page.evaluate(() => saveWatch.seen);
  const [save] = seen;
  if (save === undefined || seen.length !== 1) throw new Error(`nextSave: one change was made, ${seen.length} seen`);
  return save;
}

/** Runs in the page, so it may use nothing from outside itself. */
function installWatch(mark: { saved: string; saving: string }): void {
  globalThis.saveWatch = { seen: [] };
  let begunAt: number | null = null;
  let savingMs: number | null = null;
  const begin = (event: Event, what: string) => {
    if (!(event.target instanceof Element) || event.target.closest(what) === null) return;
    begunAt = event.timeStamp;
    savingMs = null;
  };
  addEventListener('pointerup', (event) => begin(event, '[data-grade]'), { capture: true });
  addEventListener('change', (event) => begin(event, '[data-photo]'), { capture: true });
  const look = () => {
    if (begunAt === null) return;
    const text = document.querySelector('.saved-line .saved')?.textContent;
    const sinceMs = performance.now() - begunAt;
    if (text === mark.saving) savingMs ??= sinceMs;
    if (text !== mark.saved || savingMs === null) return;
    saveWatch.seen.push({ savingMs, savedMs: sinceMs });
    begunAt = null;
  };
  new MutationObserver(look).observe(document, { subtree: true, childList: true, characterData: true });
}
