import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { benchWords, packWords } from '../../src/text/bench.ts';
import { keepWords } from '../../src/text/keep.ts';
import { nameplateWords } from '../../src/text/nameplate.ts';
import { retestWords as say } from '../../src/text/retest.ts';
import { sheetWords } from '../../src/text/sheet.ts';
import { sinceWords } from '../../src/text/since.ts';
import { readPdf } from '../sheet/read-pdf.ts';
import { tooSmall, tooWide, violations } from './driver/access-checks.ts';
import { storedEntries, storedValue } from './driver/database.ts';
import { typeIn } from './driver/fill.ts';
import { answer, beginPack, packIdOn } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { emptyPhone, type Phone } from './driver/phone.ts';
import { savePdf } from './driver/save.ts';
import { button, goTo, tapButton, tapLink, untilSaved } from './driver/screen.ts';

let browser: Browser;
let phone: Phone;
let first: string;
let second: string;
let third: string;

beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
});
afterAll(() => browser.close());

const storedOf = async (packId: string, subject: string, part: string) =>
  storedValue(
    (await storedEntries(phone.page)).filter(({ key }) => key[0] === packId),
    subject,
    part,
  );

async function testAgain(packId: string, kind: keyof typeof say.kinds): Promise<string> {
  const { page } = phone;
  // From elsewhere: the same address again would leave the last dialog open.
  await goTo(page, '#/');
  await goTo(page, `#/${packId}`);
  await tapButton(page, say.button);
  await page.getByRole('radio', { name: say.kinds[kind].title }).tap();
  await tapButton(page, say.begin);
  await page.waitForURL((url) => url.hash.endsWith('/nameplate') && !url.hash.includes(packId));
  return packIdOn(page);
}

it('an empty pack offers nothing to test again; one with a nameplate does, and its dialog has no fault at 320 px', async () => {
  const { page } = phone;
  first = await beginPack(page, {});
  await goTo(page, `#/${first}`);
  await button(page, packWords.takeOff).waitFor();
  expect(await button(page, say.button).count()).toBe(0);
  await tapButton(page, packWords.takeOff);
  first = await beginPack(page, {
    name: 'Grebe 24',
    maker: 'Grebe Works',
    nominalVoltageV: '25.6',
    ratedCapacityAh: '100',
    massKg: '19.8',
    serial: 'G-0001',
    price: '499',
    currency: 'EUR',
  });
  await answer(page, { packId: first, itemId: 'terminal-posts' }, 'sound');
  await answer(page, { packId: first, itemId: 'rating-label' }, 'failed');
  await answer(page, { packId: first, itemId: 'handles' }, 'weak');
  await goTo(page, `#/${first}`);
  await tapButton(page, say.button);
  await page.setViewportSize({ width: 320, height: 568 });
  expect([...(await violations(page)), ...(await tooWide(page)), ...(await tooSmall(page))]).toEqual([]);
  await page.setViewportSize({ width: 390, height: 844 });
});

it('another sample takes over the claims and the currency, is sample 2, and leaves price, mass and serial empty', async () => {
  const { page } = phone;
  second = await testAgain(first, 'sample');
  await page.getByText(say.begunFrom('Grebe 24 · sample 1'), { exact: true }).waitFor();
  const values = Object.fromEntries(
    (await storedEntries(page))
      .filter(({ key }) => key[0] === second && key[1] === 'nameplate')
      .map(({ key, v }) => [key[2], v]),
  );
  expect(values).toEqual({
    name: 'Grebe 24',
    sample: '2',
    maker: 'Grebe Works',
    nominalVoltageV: 25.6,
    ratedCapacityAh: 100,
    currency: 'EUR',
  });
  expect(await storedOf(second, 'pack', 'retestOf')).toEqual({
    packId: first,
    kind: 'sample',
    label: 'Grebe 24 · sample 1',
  });
  expect(await storedOf(second, 'answer', 'handles')).toBeUndefined();
});

it('what changed since: one new, one gone, one not looked at again, and another rated capacity', async () => {
  const { page } = phone;
  await goTo(page, `#/${second}/nameplate`);
  await typeIn(page, nameplateWords.labels.ratedCapacityAh, '105');
  await untilSaved(page, nameplateWords.labels.ratedCapacityAh);
  await answer(page, { packId: second, itemId: 'terminal-posts' }, 'weak');
  await answer(page, { packId: second, itemId: 'handles' }, 'sound');
  await goTo(page, `#/${second}`);
  await tapLink(page, sinceWords.link('Grebe 24 · sample 1'));
  await page.getByRole('heading', { level: 1, name: sinceWords.title('Grebe 24 · sample 1') }).waitFor();
  await page.getByRole('heading', { name: sinceWords.items.appeared, exact: true }).waitFor();
  const text = (await page.locator('main').textContent()) ?? '';
  expect(text.match(/weak now, sound then/g)).toHaveLength(1);
  expect(text.match(/sound now, weak then/g)).toHaveLength(1);
  expect(text).toContain(`${sinceWords.items.isOpen('not answered')}, ${sinceWords.items.wasThen('failed')}`);
  expect(text).toContain(sinceWords.scores.went.cannotTell);
  expect(text.replaceAll('\u00a0', ' ')).toContain(sinceWords.both('100 Ah', '105 Ah'));
  expect(text).not.toContain(nameplateWords.labels.massKg);
  for (const [width, height] of [[320, 568] as const, [390, 844] as const]) {
    await page.setViewportSize({ width, height });
    expect([...(await violations(page)), ...(await tooWide(page)), ...(await tooSmall(page))]).toEqual([]);
  }
});

it('the sheet and its PDF carry the section “Since the earlier sample”; the first pack’s sheet does not', async () => {
  const { page } = phone;
  await goTo(page, `#/${second}/sheet`);
  await page.locator('#sheet-since').getByRole('heading', { name: sheetWords.sections.since }).waitFor();
  const pdf = await readPdf((await savePdf(page, second)).bytes.buffer);
  expect(pdf.bookmarks).toContain(sheetWords.sections.since);
  expect(pdf.pages.map(({ text }) => text).join(' ')).toContain('weak now, sound then');
  await goTo(page, `#/${first}/sheet`);
  await page.locator('#sheet-result').waitFor();
  expect(await page.locator('#sheet-since').count()).toBe(0);
});

it('a chain: a new revision begun from sample 2 is sample 3 and looks back at sample 2', async () => {
  const { page } = phone;
  third = await testAgain(second, 'productRevision');
  await page.getByText(say.begunFrom('Grebe 24 · sample 2'), { exact: true }).waitFor();
  expect(await storedOf(third, 'nameplate', 'sample')).toBe('3');
  await goTo(page, `#/${third}/since`);
  await page.getByText(sinceWords.lead.productRevision('Grebe 24 · sample 2'), { exact: true }).waitFor();
});

it('with the earlier pack put away the comparison still stands; erased, it is named and nothing is compared', async () => {
  const { page } = phone;
  await goTo(page, `#/${second}`);
  await tapButton(page, packWords.putAway);
  await tapButton(page, packWords.putAwayNow);
  await button(page, benchWords.newPack).waitFor();
  await goTo(page, `#/${third}/since`);
  await page.getByRole('heading', { name: sinceWords.scores.subhead }).waitFor();
  await goTo(page, '#/keep');
  await tapButton(page, keepWords.removeForGood);
  await page.getByRole('dialog').getByRole('button', { name: keepWords.removeForGood }).tap();
  await page.getByText(keepWords.isRemoved('Grebe 24 · sample 2'), { exact: true }).waitFor();
  await goTo(page, `#/${third}/since`);
  await page.getByText(sinceWords.notHere.absent('Grebe 24 · sample 2'), { exact: true }).waitFor();
  expect(await page.getByRole('heading', { name: sinceWords.scores.subhead }).count()).toBe(0);
  expect(phone.complaints).toEqual([]);
});
