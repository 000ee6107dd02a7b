import type { Page } from 'playwright-core';
import type { CalloutKind } from '../../../src/schema/callout.ts';
import { calloutWords } from '../../../src/text/callouts.ts';

type Spot = readonly [u: number, v: number];

/** A finger comes to rest before it is lifted. Lifted at speed it flings, and the browser swallows the next tap. */
const REST_MS = 150;

/** Draws with one finger on the photo that lies open, through places given 0–1 of the picture. */
export async function drawByTouch(page: Page, kind: CalloutKind, spots: readonly Spot[]): Promise<void> {
  const tools = page.getByRole('group', { name: calloutWords.tools });
  const name = calloutWords.kinds[kind];
  await tools.getByRole('button', { name, exact: true }).tap();
  await tools.getByRole('button', { name, exact: true, pressed: true }).waitFor();
  const box = await page.locator('.callout-plane > img').boundingBox();
  if (box === null) throw new Error('drawByTouch: no photo on the stage');
  const places = spots.map(([u, v]) => ({ x: box.x + u * box.width, y: box.y + v * box.height }));
  await touch(page, places);
}

/** Words for the callout in hand. */
export async function writeOnCallout(page: Page, kind: 'leader' | 'text', text: string): Promise<void> {
  const box = page.getByLabel(calloutWords.wordsOf(kind), { exact: true });
  await box.fill(text);
  await box.blur();
}

async function touch(page: Page, [first, ...rest]: { x: number; y: number }[]): Promise<void> {
  if (first === undefined) throw new Error('touch: needs at least one place');
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [first] });
  for (const place of rest) await cdp.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [place] });
  await page.waitForTimeout(REST_MS);
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await cdp.detach();
}
