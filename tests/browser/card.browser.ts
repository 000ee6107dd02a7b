import type { Browser, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { benchWords } from '../../src/text/bench.ts';
import { cardWords as say } from '../../src/text/card.ts';
import { answer, beginPack } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { emptyPhone, type Phone, strangers } from './driver/phone.ts';
import { saved } from './driver/save.ts';
import { button, goTo, tapButton } from './driver/screen.ts';

let browser: Browser;
let phone: Phone;
beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
});
afterAll(() => browser.close());

const choose = (page: Page, text: string) => page.getByRole('radio', { name: text, exact: true }).tap();

async function cardOf(page: Page, shape: string, ground: string) {
  await choose(page, shape);
  await choose(page, ground);
  const { name, bytes } = await saved(page, say.make);
  const png = PNG.sync.read(Buffer.from(bytes));
  const at = (x: number, y: number) => [...png.data.subarray((y * png.width + x) * 4, (y * png.width + x) * 4 + 4)];
  const count = (isIt: (red: number, green: number, blue: number, alpha: number) => boolean) => {
    let found = 0;
    for (let place = 0; place < png.data.length; place += 4) {
      const [red = 0, green = 0, blue = 0, alpha = 0] = png.data.subarray(place, place + 4);
      if (isIt(red, green, blue, alpha)) found++;
    }
    return found;
  };
  return { name, size: [png.width, png.height], at, count };
}

async function openDemoCard(page: Page): Promise<void> {
  await goTo(page, '#/');
  await tapButton(page, benchWords.demoIn);
  await button(page, benchWords.demoOut).waitFor({ timeout: 20_000 });
  const href = await page.locator('a[href^="#/3e64"]').first().getAttribute('href');
  if (href === null) throw new Error('the demo bench has no first pack');
  await goTo(page, `${href}/card`);
  await page.locator('.card-preview img').waitFor();
}

it('gives a wide card of 1920 × 1080 on paper: opaque paper in its corner, ink and the orange of a failed lid on it', async () => {
  const { page } = phone;
  await openDemoCard(page);
  const card = await cardOf(page, say.shape.landscape, say.ground.paper);
  expect(card.name).toBe('underlid-Wren-24-sample-1-card-landscape-paper.png');
  expect(card.size).toEqual([1920, 1080]);
  // #F6F2E7, #1B1E20 and #D55E00 of the palette.
  expect(card.at(2, 2)).toEqual([0xf6, 0xf2, 0xe7, 255]);
  expect(card.count((red, green, blue) => red === 0x1b && green === 0x1e && blue === 0x20)).toBeGreaterThan(5000);
  expect(card.count((red, green, blue) => red === 0xd5 && green === 0x5e && blue === 0)).toBeGreaterThan(100);
  expect(card.count((_red, _green, _blue, alpha) => alpha < 255)).toBe(0);
});

it('gives a tall see-through card of 1080 × 1350: alpha 0 in its corners, and opaque under its words', async () => {
  const { page } = phone;
  const card = await cardOf(page, say.shape.portrait, say.ground.clear);
  expect(card.size).toEqual([1080, 1350]);
  for (const [x, y] of [
    [0, 0],
    [1079, 0],
    [0, 1349],
    [1079, 1349],
  ] as const)
    expect(card.at(x, y)[3]).toBe(0);
  // #16191C, the ground of the bench, at the edge of the first strip.
  expect(card.at(540, 66)).toEqual([0x16, 0x19, 0x1c, 255]);
  expect(card.count((red, green, blue) => red === 0xf3 && green === 0xef && blue === 0xe4)).toBeGreaterThan(5000);
  await page.locator('.card-preview.clear.portrait img').waitFor();
});

it('takes a finding off the card, and lets no fourth on', async () => {
  const { page } = phone;
  const boxes = page.getByRole('checkbox');
  await expect
    .poll(() => boxes.evaluateAll((all) => all.filter((one) => (one as HTMLInputElement).checked).length))
    .toBe(3);
  expect(await boxes.nth(3).isDisabled()).toBe(true);
  await boxes.first().tap();
  await page.getByRole('heading', { name: say.findings(2) }).waitFor();
  expect(await boxes.nth(3).isDisabled()).toBe(false);
});

it('draws a pack whose name is 120 letters without a space, with no photo, in both shapes', async () => {
  const { page } = phone;
  const packId = await beginPack(page, { name: 'W'.repeat(120) });
  await answer(page, { packId, itemId: 'case-damage' }, 'weak');
  await goTo(page, `#/${packId}/card`);
  await page.locator('.card-preview img').waitFor();
  const wide = await cardOf(page, say.shape.landscape, say.ground.bench);
  expect(wide.size).toEqual([1920, 1080]);
  expect(wide.at(2, 2)).toEqual([0x16, 0x19, 0x1c, 255]);
  const tall = await cardOf(page, say.shape.portrait, say.ground.bench);
  expect(tall.size).toEqual([1080, 1350]);
  // Nothing but ground within 24 px of the right edge.
  for (let y = 0; y < 1350; y += 3) expect(tall.at(1066, y)).toEqual([0x16, 0x19, 0x1c, 255]);
  expect(phone.complaints).toEqual([]);
  expect(strangers(phone)).toEqual([]);
});
