import { mkdirSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { tooSmall, tooWide, violations } from './driver/access-checks.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { savedAs } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { LIVE_TEST_LINES } from './driver/live-screens.ts';
import { emptyPhone, type Phone } from './driver/phone.ts';
import { atRest, goTo, untilSaved } from './driver/screen.ts';
import { chooseTheme, everyScreen, type PackInHand, packInHand, type Theme } from './driver/screens.ts';

/** Pictures of screens with a fault, and of every screen where UNDERLID_SHOTS is set: taking them is slow. Not kept. */
const SHOTS = new URL('./shots/', import.meta.url).pathname;

const roll = cameraRoll();
let browser: Browser;
let phone: Phone;
let pack: PackInHand;

beforeAll(async () => {
  mkdirSync(SHOTS, { recursive: true });
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
  pack = await packInHand(phone.page, roll);
});
afterAll(() => browser.close());

async function picture(name: string, isFaulty: boolean): Promise<void> {
  const isWanted = isFaulty || (process.env.UNDERLID_SHOTS ?? '') !== '';
  if (isWanted) await phone.page.screenshot({ path: `${SHOTS}${name}.png` });
}

/** What is wrong with the screen at rest. A fault is looked for again: one that was gone by then nobody met. */
async function lasting(look: () => Promise<string[]>): Promise<string[]> {
  await atRest(phone.page);
  const first = await look();
  if (first.length === 0) return [];
  await atRest(phone.page, 500);
  return look();
}

it('the screens looked at leave out no line of the Live tests', async () => {
  const { page } = phone;
  await goTo(page, `#/${pack.packId}/live-tests`);
  const lines = page.locator('.lines a.line[href*="/live-test/"]');
  const steps = await lines.evaluateAll((links) => links.map((link) => link.getAttribute('href')?.split('/').at(-1)));
  expect(steps).toEqual(LIVE_TEST_LINES);
});

describe.each(['bench', 'paper'] as const)('in the %s theme', (theme: Theme) => {
  it('no screen has a serious or critical fault by axe, at 390 px can be pushed sideways, or has anything to tap under 44 px', async () => {
    const { page } = phone;
    await chooseTheme(page, theme);
    const found: Record<string, string[]> = {};
    for (const [name, go] of everyScreen(pack)) {
      await go(page);
      const here = await lasting(async () => [
        ...(await violations(page)),
        ...(await tooWide(page)),
        ...(await tooSmall(page)),
      ]);
      if (here.length > 0) found[name] = here;
      await picture(`${theme}-${name}`, here.length > 0);
    }
    expect(found).toEqual({});
  });
});

it('at 320 × 568 px no screen can be pushed sideways, and nothing to tap is smaller than 44 px', async () => {
  const { page } = phone;
  await page.setViewportSize({ width: 320, height: 568 });
  const found: Record<string, string[]> = {};
  for (const [name, go] of everyScreen(pack)) {
    await go(page);
    const here = await lasting(async () => [...(await tooWide(page)), ...(await tooSmall(page))]);
    if (here.length > 0) found[name] = here;
    await picture(`narrow-${name}`, here.length > 0);
  }
  await page.setViewportSize({ width: 390, height: 844 });
  expect(found).toEqual({});
});

it('nothing under the finger moves when an answer is saved, the first time or after', async () => {
  const { page } = phone;
  await goTo(page, `#/${pack.packId}/item/terminal-caps`);
  const places = () =>
    page.evaluate(() => {
      const boxes = [...document.querySelectorAll('h1, .answer, .dock .button, .saved-line')];
      return boxes.map((element) => {
        const { x, y, width, height } = element.getBoundingClientRect();
        return `${element.getAttribute('data-grade') ?? element.textContent?.slice(0, 12)}: ${[x, y, width, height].map(Math.round).join(' ')}`;
      });
    });
  const before = await places();
  for (const grade of ['passable', 'weak', 'sound'] as const) {
    await page.locator(`[data-grade="${grade}"]`).tap();
    await untilSaved(page, savedAs('terminal-caps', grade));
    const after = await places();
    const moved = after.filter((place, index) => place !== before[index] && !place.startsWith('✓'));
    expect(moved, grade).toEqual([]);
  }
});
