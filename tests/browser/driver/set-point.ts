import type { Page } from 'playwright-core';

/** A finger comes to rest before it is lifted. */
const REST_MS = 120;

/** Presses on a place of the photo on the stage, 0–1 of it, to whole pixels of the screen as a finger would. */
export async function pressOnPhoto(page: Page, [u, v]: readonly [u: number, v: number]): Promise<void> {
  const box = await page.locator('.callout-plane > img').boundingBox();
  if (box === null) throw new Error('pressOnPhoto: no photo on the stage');
  const at = { x: Math.round(box.x + u * box.width), y: Math.round(box.y + v * box.height) };
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [at] });
  await page.waitForTimeout(REST_MS);
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await cdp.detach();
}
