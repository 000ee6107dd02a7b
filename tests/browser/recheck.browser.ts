import { createHash } from 'node:crypto';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { SealedSheet } from '../../src/schema/sealed-sheet.ts';
import { type SealInput, sealedText } from '../../src/sheet/model/sealed/sealed-text.ts';
import { benchWords } from '../../src/text/bench.ts';
import { recheckWords as say } from '../../src/text/recheck.ts';
import { builtIn } from '../checklists/built-in.ts';
import { cameraRoll } from './driver/camera-roll.ts';
import { everythingStored, storedEntries } from './driver/database.ts';
import { packIdOn } from './driver/job.ts';
import { launchBrowser } from './driver/launch.ts';
import { loseSignal } from './driver/offline.ts';
import { emptyPhone, type Phone } from './driver/phone.ts';
import { button, goTo, keepPart, tapButton } from './driver/screen.ts';

const roll = cameraRoll();
let browser: Browser;
/** A second phone that holds no pack and has no signal. */
let other: Phone;
/** The sealed JSON of a pack of the demo bench, from the entries as the first phone has stored them. */
let text: string;
let seal: SealInput;
let sha256: string;

beforeAll(async () => {
  browser = await launchBrowser();
  const first = await emptyPhone(browser);
  await tapButton(first.page, benchWords.demoIn);
  await button(first.page, benchWords.demoOut).waitFor();
  await first.page.locator('.bench-card').first().tap();
  await first.page.locator('.line').first().waitFor();
  seal = {
    packId: packIdOn(first.page),
    entries: await storedEntries(first.page),
    definition: builtIn,
    earlier: null,
    appVersion: '0.1.0',
    revision: 1,
    closedAtMs: Date.UTC(2026, 10, 25, 14),
  };
  text = sealedText(seal);
  sha256 = createHash('sha256').update(text).digest('hex');
  await first.context.close();

  other = await emptyPhone(browser);
  await loseSignal(other);
});
afterAll(() => browser.close());

const report = (page: Page) => page.locator('[data-recheck]');

/** Hands a file over as a person chooses it, and waits for what the phone says of it. */
async function recheckFile(name: string, content: string): Promise<string> {
  const { page } = other;
  await goTo(page, '#/');
  await goTo(page, '#/keep');
  await keepPart(page, 'recheck');
  const path = roll.put(name, Buffer.from(content, 'utf8'));
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), tapButton(page, say.choose)]);
  await chooser.setFiles(path);
  return ((await report(page).textContent()) ?? '').replaceAll('\u00a0', ' ');
}

function edited(change: (sealed: SealedSheet) => void): string {
  const sealed = JSON.parse(text) as SealedSheet;
  change(sealed);
  return JSON.stringify(sealed);
}

it('comes out the same on an empty phone without a signal, by a checklist that came with the app, and stores nothing', async () => {
  const before = (await everythingStored(other.page)).text;
  const said = await recheckFile('sealed.json', text);
  const count = Object.keys((JSON.parse(text) as SealedSheet).figures).length;
  expect(count).toBeGreaterThan(1000);
  expect(said).toContain(say.same(count));
  expect(said.replaceAll(' ', '')).toContain(sha256);
  expect(said).toContain(say.known.builtIn);
  expect(said).toContain(say.nothingStored);
  expect((await everythingStored(other.page)).text).toBe(before);
});

it('is compared with the SHA-256 printed on the sheet: its first digits, however they are written, or another', async () => {
  const { page } = other;
  await recheckFile('sealed.json', text);
  expect(await report(page).textContent()).toContain(say.notCompared);
  const box = page.getByLabel(say.printed);
  await box.fill(`${sha256.slice(0, 4).toUpperCase()}-${sha256.slice(4, 12)} `);
  await report(page).getByText(say.match(12)).waitFor();
  await box.fill(sha256.toUpperCase().replace(/.{8}/g, '$& '));
  await report(page).getByText(say.match(64)).waitFor();
  await box.fill(`${sha256.slice(0, 11)}${sha256[11] === '0' ? '1' : '0'}`);
  await report(page).getByText(say.noMatch(12)).waitFor();
  await box.fill('ba78O');
  await page.getByText(say.printedWrong.notHex('o')).waitFor();
});

it('is no confirmation without the printed digits, nor by 12 of them; by all 64 it is', async () => {
  const { page } = other;
  const isCalm = () => report(page).evaluate((box) => box.classList.contains('calm'));
  const box = page.getByLabel(say.printed);
  // Changed and worked out anew, every figure and entry: it agrees with itself.
  const changed = sealedText({ ...seal, closedAtMs: seal.closedAtMs + 1 });
  const said = await recheckFile('changed.json', changed);
  expect(said).toMatch(/^Same: /);
  expect(said).toContain(`${say.onlyItself}${say.notCompared}`);
  expect(await isCalm()).toBe(false);
  await box.fill(sha256);
  await report(page).getByText(say.noMatch(64)).waitFor();
  expect(await isCalm()).toBe(false);
  await recheckFile('sealed.json', text);
  await box.fill(sha256.slice(0, 12));
  await report(page).getByText(say.fewDigits(12)).waitFor();
  expect(await isCalm()).toBe(false);
  await box.fill(sha256);
  await report(page).getByText(say.match(64)).waitFor();
  expect(await isCalm()).toBe(true);
});

it('says first that a gentler checklist under the name of one on this phone is not that one, though all digits agree', async () => {
  const { page } = other;
  const definition = { ...builtIn, k: { high: 1, serious: 1, medium: 1, low: 1 } };
  const gentler = sealedText({ ...seal, definition });
  const said = await recheckFile('gentler.json', gentler);
  expect(said).toMatch(/^Not the checklist it calls itself: this phone has lfp-drop-in 1\.1\.1,/);
  await page.getByLabel(say.printed).fill(createHash('sha256').update(gentler).digest('hex'));
  await report(page).getByText(say.match(64)).waitFor();
  expect(await report(page).evaluate((box) => box.classList.contains('calm'))).toBe(false);
});

it('names the line of a figure that was changed, sealed and worked out again: Build low', async () => {
  const said = await recheckFile(
    'changed.json',
    edited(({ figures }) => Object.assign(figures, { 'grading/build/low': 99 })),
  );
  expect(said).toMatch(/1 of [\d\u202f]+ lines differs\./);
  expect(said).toMatch(/Build low\s*sealed 99\.00, worked out again \d\d\.\d/);
});

it('names the lines that an answer changed by hand moves', async () => {
  const said = await recheckFile(
    'answer.json',
    edited(({ entries }) => {
      const answer = entries.find(({ key, v }) => key[1] === 'answer' && (v as { grade?: string }).grade === 'weak');
      Object.assign(answer?.v as object, { grade: 'sound' });
    }),
  );
  expect(said).toMatch(/lines differ\./);
  expect(said).toContain('Build low');
});

it('says that a file laid out anew is not the sealed one, and gives the SHA-256 of the sealed form', async () => {
  const said = await recheckFile('pretty.json', JSON.stringify(JSON.parse(text), null, 2));
  expect(said).toContain(say.laidOutAnew);
  expect(said.replaceAll(' ', '')).toContain(sha256);
});

it.each([
  ['cut short', () => text.slice(0, 1000), say.damaged.json],
  ['another JSON', () => '{"a":1}', say.refused.notOurs],
  ['of a newer schema', () => edited((sealed) => Object.assign(sealed, { schemaVersion: 99 })), say.refused.newer],
])('refuses a file that is %s with a sentence', async (_, content, sentence) => {
  expect(await recheckFile('odd.json', content())).toContain(sentence);
});

it('made no complaint and asked nobody', () => {
  expect(other.complaints).toEqual([]);
});
