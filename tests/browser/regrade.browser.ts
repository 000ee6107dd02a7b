import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Closing } from '../../src/schema/closing.ts';
import { carryOverWords } from '../../src/text/carry-over.ts';
import { regradeWords as say } from '../../src/text/regrade.ts';
import { words } from '../../src/text/words.ts';
import { earlierVersion } from '../storage/earlier-versions.ts';
import { tooSmall, tooWide, violations } from './driver/access-checks.ts';
import { storedEntries, storedValue } from './driver/database.ts';
import { beginPack } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { emptyPhone, type Phone } from './driver/phone.ts';
import { restoreBundles } from './driver/save.ts';
import { button, goTo, tapButton } from './driver/screen.ts';

/** Dipper 24 as version 1 of the app wrote it, graded by checklist 1.0.0. */
const DIPPER = '94c07b3ad15e4f28a6e2b9037d1c8f24';
/** Wren 24 lies in the same bundle. */
const WREN = '3e64f1d27a9b4c05b8d1e6a2c4f70924';
const [OLD, NEW] = ['1.0.0', '1.1.1'] as const;
/** Any hash: nobody opens the sealed JSON here. */
const SEALED = '5'.repeat(64);
const CLOSING: Closing = {
  revision: 1,
  closedAtMs: 1,
  appVersion: '0.0.0',
  byteCount: 2,
  entriesSha256: SEALED,
  score: null,
  verdict: { low: 'mindTheList', high: 'mindTheList' },
  settled: true,
};

let browser: Browser;
let phone: Phone;

beforeAll(async () => {
  browser = await launchBrowser();
  phone = await emptyPhone(browser);
  await restoreBundles(phone.page, fileURLToPath(earlierVersion(1).bundleUrl));
  await phone.page.locator('[role="status"]', { hasText: 'Dipper 24' }).waitFor();
});
afterAll(() => browser.close());

const packOn = (label: string | RegExp) => phone.page.locator('.regrade-pack', { hasText: label });

async function storedOf(packId: string, subject: string, part: string): Promise<unknown> {
  const entries = await storedEntries(phone.page);
  return storedValue(
    entries.filter(({ key }) => key[0] === packId),
    subject,
    part,
  );
}
/** All that is stored of the records, as text. */
async function allEntries(): Promise<string> {
  return JSON.stringify((await storedEntries(phone.page)).map(({ key, at, v }) => [key, at, v]));
}

/** Opens the screen and waits until every pack was looked at. */
async function look(): Promise<void> {
  await goTo(phone.page, '#/');
  await goTo(phone.page, '#/keep');
  await phone.page.getByRole('link', { name: say.link }).tap();
  await phone.page.getByText(say.lead, { exact: true }).waitFor();
  await button(phone.page, say.stop).waitFor({ state: 'detached' });
}

it('lists Dipper by 1.0.0 and 1.1.1 with what moves it, shown tenths adding up, and changes no entry', async () => {
  const { page } = phone;
  // One on the newest already, which must not be listed.
  await beginPack(page, { name: 'New one' });
  const before = await allEntries();
  await look();
  const dipper = packOn('Dipper 24');
  await dipper.waitFor();
  expect(await packOn('New one').count()).toBe(0);
  const [byOld = '', byNew = ''] = await dipper.locator('p:has(strong)').allTextContents();
  expect(byOld).toContain(carryOverWords.asked(78, 79));
  expect(byNew).toMatch(/ of 85 settled$/);
  await dipper.locator('summary').tap();
  await dipper.locator('.sheet-ledger').waitFor();
  const rows = await dipper.locator('.sheet-ledger tr').evaluateAll((all) =>
    all.map((row) => ({
      total: row.classList.contains('total'),
      text: row.querySelector('td')?.textContent ?? '',
      tenths: Math.round(
        Number((row.lastElementChild?.textContent ?? '').replace('\u2212', '-').replace('+', '')) * 10,
      ),
    })),
  );
  const [first, ...rest] = rows;
  const last = rest.pop();
  expect(first).toMatchObject({ total: true, text: say.moves.was(OLD) });
  expect(last).toMatchObject({ total: true, text: say.moves.now(NEW) });
  const moved = rest.reduce((sum, { tenths }) => sum + tenths, 0);
  expect((first?.tenths ?? Number.NaN) + moved).toBe(last?.tenths);
  expect(rest.filter(({ text }) => text.includes('added')).length).toBe(6);
  expect(await allEntries()).toBe(before);
});

it('has no fault by axe and is not pushed sideways, at 390 and at 320 px, with the lines of a pack open', async () => {
  const { page } = phone;
  for (const [width, height] of [[390, 844] as const, [320, 568] as const]) {
    await page.setViewportSize({ width, height });
    expect([...(await violations(page)), ...(await tooWide(page)), ...(await tooSmall(page))]).toEqual([]);
  }
  await page.setViewportSize({ width: 390, height: 844 });
});

it('carries over only what is ticked, by one change that its own screen can undo', async () => {
  const { page } = phone;
  expect(await button(page, say.tickFirst).isDisabled()).toBe(true);
  await packOn('Dipper 24').getByRole('checkbox').tap();
  await tapButton(page, say.carry(1));
  await page.getByText(say.carried(1), { exact: true }).waitFor();
  expect(await storedOf(DIPPER, 'pack', 'checklist')).toMatchObject({ version: NEW });
  expect(await storedOf(DIPPER, 'pack', 'carriedFrom')).toMatchObject({ version: OLD });
  expect(await storedOf(WREN, 'pack', 'checklist')).toMatchObject({ version: OLD });
  expect(await packOn('Dipper 24').count()).toBe(0);
  await goTo(page, `#/${DIPPER}`);
  await page.getByText(carryOverWords.carried(OLD), { exact: true }).waitFor();
  await tapButton(page, words.undo);
  await page.getByText(carryOverWords.onBoard(OLD, NEW), { exact: true }).waitFor();
  expect(await storedOf(DIPPER, 'pack', 'checklist')).toMatchObject({ version: OLD });
});

it('a pack with a closed sheet becomes a revision, with the reason in the box, in the same change', async () => {
  const { page } = phone;
  await page.evaluate(
    async ([packId, sha256, closing]) => {
      const open = indexedDB.open('underlid');
      await new Promise((resolve) => open.addEventListener('success', resolve));
      const writing = open.result.transaction('entries', 'readwrite');
      const by = '1'.repeat(32);
      const at = `${String(Date.now()).padStart(15, '0')}.000000.${by}`;
      writing
        .objectStore('entries')
        .put({ key: [packId, 'closing', sha256], v: closing, at, by }, [packId, 'closing', sha256]);
      await new Promise((resolve) => writing.addEventListener('complete', resolve));
      open.result.close();
    },
    [DIPPER, SEALED, CLOSING] as const,
  );
  await page.reload();
  await look();
  await packOn('Dipper 24').getByText(say.becomesRevision, { exact: true }).waitFor();
  await packOn('Dipper 24').getByRole('checkbox').tap();
  const box = page.getByLabel(say.reason);
  expect(await box.inputValue()).toBe('graded by checklist 1.1.1');
  await box.fill('new limits for the cut-offs');
  await box.blur();
  await tapButton(page, say.carry(1));
  await page.getByText(say.carried(1), { exact: true }).waitFor();
  const entries = (await storedEntries(page)).filter(({ key }) => key[0] === DIPPER);
  const reopening = entries.find(({ key }) => key[1] === 'reopening');
  expect(reopening?.v).toMatchObject({ after: SEALED, reason: 'new limits for the cut-offs' });
  expect(storedValue(entries, 'pack', 'checklist')).toMatchObject({ version: NEW });
  // One change: stamps of one millisecond, drawn one after the other.
  const checklist = entries.find(({ key }) => key[1] === 'pack' && key[2] === 'checklist');
  expect(checklist?.at.slice(0, 15)).toBe(reopening?.at.slice(0, 15));
});

it('sixty packs are graded twice with no stall over 200 ms, and can be stopped on the way', async () => {
  const { page } = phone;
  const records = (await storedEntries(page)).filter(({ key }) => key[0] === DIPPER && key[1] !== 'closing');
  await page.evaluate(
    async ({ rows, packId, old }) => {
      const open = indexedDB.open('underlid');
      await new Promise((resolve) => open.addEventListener('success', resolve));
      const writing = open.result.transaction(['entries', 'cards'], 'readwrite');
      const [entries, cards] = [writing.objectStore('entries'), writing.objectStore('cards')];
      const asked = cards.get(packId);
      await new Promise((resolve) => asked.addEventListener('success', resolve));
      for (let place = 0; place < 60; place++) {
        const id = String(place).padStart(32, '0');
        cards.put({ ...asked.result, packId: id, name: `Copy ${place}` }, id);
        for (const row of rows) {
          const [, subject, part] = row.key;
          const v = subject === 'pack' && part === 'checklist' ? old : row.v;
          entries.put({ ...row, v, key: [id, subject, part] }, [id, subject, part]);
        }
      }
      await new Promise((resolve) => writing.addEventListener('complete', resolve));
      open.result.close();
    },
    { rows: records, packId: DIPPER, old: await storedOf(WREN, 'pack', 'checklist') },
  );
  await page.reload();
  await goTo(page, '#/');
  await page.evaluate(() => {
    const stalls: number[] = [];
    Object.assign(window, { stalls });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) stalls.push(duration);
    }).observe({ type: 'longtask' });
  });
  const begun = Date.now();
  await look();
  await page.getByText(say.newer(61)).waitFor();
  const tookMs = Date.now() - begun;
  const stalls = await page.evaluate(() => (window as unknown as { stalls: number[] }).stalls);
  expect(Math.max(0, ...stalls), `longest of ${stalls.length} stalls; all took ${tookMs} ms`).toBeLessThan(200);

  await tapButton(page, say.all);
  await button(page, say.carry(61)).waitFor();
  await tapButton(page, say.carry(61));
  await tapButton(page, say.stop);
  await page.getByText(/^Stopped: \d+ of 61 packs were carried over/).waitFor();
  expect(phone.complaints).toEqual([]);
});
