import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cameraRoll } from './driver/camera-roll.ts';
import { savedAs } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { emptyPhone, type Phone } from './driver/phone.ts';
import { goTo, untilSaved } from './driver/screen.ts';
import { chooseTheme, everyScreen, type PackInHand, packInHand, type Theme } from './driver/screens.ts';

/** Pictures of every screen to look at, where the reader of a failure wants them. Not kept. */
const SHOTS = new URL('./shots/', import.meta.url).pathname;
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

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

/** What WCAG calls serious or critical, as "rule: element". */
async function violations(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  const { violations: found } = await page.evaluate(() =>
    (Reflect.get(globalThis, 'axe') as typeof axe).run(document, { resultTypes: ['violations'] }),
  );
  return found
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
}

/** Elements that reach past the right edge, if the screen can be pushed sideways. */
function tooWide(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const wide = document.documentElement.scrollWidth > document.documentElement.clientWidth;
    const named = (element: Element) => `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''}`;
    return wide
      ? [...document.querySelectorAll('body *')]
          .filter((element) => element.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
          .map(named)
      : [];
  });
}

/** Whatever a finger is meant to hit and is smaller than 44 px; links in running text are left out, as WCAG 2.5.8 does. */
function tooSmall(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [
      ...document.querySelectorAll(
        'button, a[href], summary, select, label.tick, input:not([type="file"], [type="checkbox"])',
      ),
    ]
      .filter(
        (element) => element.closest('p') === null && element.checkVisibility() && !element.matches('.callout-mark'),
      )
      .map((element) => ({ element, box: element.getBoundingClientRect() }))
      .filter(({ box }) => box.width < 43.5 || box.height < 43.5)
      .map(
        ({ element, box }) => `${element.outerHTML.slice(0, 80)} ${Math.round(box.width)} × ${Math.round(box.height)}`,
      ),
  );
}

describe.each(['bench', 'paper'] as const)('in the %s theme', (theme: Theme) => {
  it('no screen has a serious or critical fault by axe', async () => {
    const { page } = phone;
    await chooseTheme(page, theme);
    const found: Record<string, string[]> = {};
    for (const [name, go] of everyScreen(pack)) {
      await go(page);
      await page.screenshot({ path: `${SHOTS}${theme}-${name}.png` });
      const here = await violations(page);
      if (here.length > 0) found[name] = here;
    }
    expect(found).toEqual({});
  });
});

it.each([
  [320, 568],
  [390, 844],
] as const)(
  'at %i × %i px no screen can be pushed sideways, and nothing to tap is smaller than 44 px',
  async (width, height) => {
    const { page } = phone;
    await page.setViewportSize({ width, height });
    const found: Record<string, string[]> = {};
    for (const [name, go] of everyScreen(pack)) {
      await go(page);
      const here = [...(await tooWide(page)), ...(await tooSmall(page))];
      if (here.length > 0) found[name] = here;
      if (width === 320) await page.screenshot({ path: `${SHOTS}narrow-${name}.png` });
    }
    await page.setViewportSize({ width: 390, height: 844 });
    expect(found).toEqual({});
  },
);

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
